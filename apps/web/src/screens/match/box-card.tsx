import type { Act, JobState } from '@tubwright/records'
import { childrenOf, fieldAt, isSame } from '@tubwright/records'
import { figure, say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useState } from 'react'
import { useApp, useJob, useJobView, useRole, useWeb } from '../../app/context.ts'
import { Working } from '../../app/frame.tsx'
import { useAsk } from '../../app/use-ask.ts'
import { surveyDigest } from '../../parts/plan-age.tsx'
import { useDocument } from '../survey/use-survey.ts'
import type { BoxLine } from './box-lines.ts'

/** One box: its verdict, why, and what can be done with it. */
export function BoxCard({
  line,
  isCompared,
  compare,
}: {
  readonly line: BoxLine
  readonly isCompared: boolean
  readonly compare: () => void
}): ReactNode {
  const web = useWeb()
  const { match, verdict } = line
  const isGood = verdict === 'serves' || verdict === 'serves-provided'
  return (
    <article className="card" data-box={match.box} data-verdict={verdict}>
      <h2>
        {match.label} <span className="quiet">{match.maker}</span>
      </h2>
      <p>
        <span className={isGood ? 'holds' : 'breaks'}>{web[`match.${verdict}`]}</span>{' '}
        <Stock line={line} />
      </p>
      <Reasons line={line} />
      <p className="row">
        {line.plan && line.plan.changed === 0 && <Take line={line} />}
        <label className="chip">
          <input type="checkbox" checked={isCompared} onChange={compare} />
          <span>
            {web['match.compare']}
            <span className="unseen"> {match.label}</span>
          </span>
        </label>
      </p>
      {verdict === 'cannot' && <Changes line={line} />}
    </article>
  )
}

function Stock({ line }: { readonly line: BoxLine }): ReactNode {
  const web = useWeb()
  if (line.stock === undefined) return undefined
  return (
    <span className="quiet">
      {line.stock > 0
        ? say(web['match.in-stock'], { count: String(line.stock) })
        : web['match.not-in-stock']}
    </span>
  )
}

/** What speaks for a box and what against it, in sentences. */
export function useReasons(): (line: BoxLine) => readonly string[] {
  const web = useWeb()
  const { words } = useApp()
  const counted = (key: 'adapters' | 'dangers' | 'warnings' | 'changes-count', count: number) =>
    count > 0 ? [say(web[`match.${key}`], { count: String(count) })] : []
  return ({ match, plan, failure }) => [
    ...(plan
      ? [
          say(web['match.margin'], { margin: `${figure(plan.margin * 100)} %` }),
          ...counted('dangers', plan.dangers),
          ...counted('warnings', plan.warnings),
          ...counted('adapters', plan.adapters),
          ...counted('changes-count', plan.changed),
        ]
      : []),
    ...match.shortfalls.map(words.tellMatch),
    ...match.open.map(each => say(web['match.open-question'], { question: words.tellMatch(each) })),
    ...(failure ? [...tellFailure(failure)] : []),
  ]
  function tellFailure(failed: NonNullable<BoxLine['failure']>): readonly string[] {
    switch (failed.reason) {
      case 'no-plan':
        return [
          web['match.no-plan'],
          ...new Set(
            (failed.closest?.findings ?? [])
              .filter(each => each.verdict === 'breaks')
              .map(each => words.tellFinding(each)),
          ),
        ]
      case 'limit-reached':
        return [say(web['match.stopped'], { limit: String(failed.limit) })]
      case 'open':
        return [say(web['match.open-question'], { question: words.tellMatch(failed.question) })]
      case 'cannot':
        return [say(words.cannot[failed.message], failed.params)]
    }
  }
}

function Reasons({ line }: { readonly line: BoxLine }): ReactNode {
  const reasons = useReasons()(line)
  return (
    <ul>
      {reasons.map(each => (
        <li key={each}>{each}</li>
      ))}
    </ul>
  )
}

/** On another box nothing was found otherwise yet: what was found on the one before is of that one. */
const foundNothing = (state: JobState): readonly Act[] =>
  ['ends', 'jumpers'].flatMap(of =>
    childrenOf(state, ['asBuilt', of]).map(({ path }): Act => ({ do: 'clear', path })),
  )

/** Takes the plan: from here on it is what the wires are landed by. */
function Take({ line }: { readonly line: BoxLine }): ReactNode {
  const web = useWeb()
  const job = useJob()
  const role = useRole()
  const { state } = useJobView()
  const document = useDocument()
  const { plan } = line
  if (!plan) return undefined
  const value = { box: plan.box, landing: plan.landing, of: surveyDigest(document) } as never
  const taken = fieldAt(state, ['plan', 'taken'])
  const isTaken = taken.kind === 'set' && isSame(taken.value, value)
  const wasTaken =
    taken.kind === 'set' && (taken.value as { readonly box?: unknown } | null)?.box === plan.box
  if (isTaken) return <strong className="holds">{web['match.taken']}</strong>
  return (
    <button
      type="button"
      className="main"
      disabled={role !== 'writes'}
      onClick={() =>
        void job
          .append(...(wasTaken ? [] : foundNothing(state)), {
            do: 'set',
            path: ['plan', 'taken'],
            value,
          })
          .catch(() => undefined)
      }
    >
      {wasTaken ? web['match.take-again'] : web['match.take']}
      <span className="unseen"> {line.match.label}</span>
    </button>
  )
}

/** What would have to change at the tub before this box serves: worked out when it is asked for. */
function Changes({ line }: { readonly line: BoxLine }): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const document = useDocument()
  const [isAsked, setIsAsked] = useState(false)
  const { answer, progress, isWorking, cancel } = useAsk(
    'match',
    isAsked ? { document, withChanges: true, box: line.match.box } : undefined,
  )
  const changes = answer?.match.boxes[0]?.changes
  if (!isAsked)
    return (
      <button type="button" onClick={() => setIsAsked(true)}>
        {web['match.ask-changes']}
        <span className="unseen"> {line.match.label}</span>
      </button>
    )
  return (
    <>
      {isWorking && (
        <Working {...(progress === undefined ? {} : { detail: progress })} cancel={cancel} />
      )}
      {changes && (
        <>
          <h3>{web['match.changes']}</h3>
          <ul>
            {words.tellOutcome(changes).map(each => (
              <li key={each}>{each}</li>
            ))}
            {changes.outcome === 'found' &&
              words
                .tellChanges([...changes.changes, ...changes.along])
                .map(each => <li key={each.told}>{each.told}</li>)}
          </ul>
        </>
      )}
    </>
  )
}
