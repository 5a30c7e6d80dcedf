import { fieldAt } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useMemo, useState } from 'react'
import { Link } from 'wouter'
import { useApp, useJobView, useWeb } from '../../app/context.ts'
import { Screen, Working } from '../../app/frame.tsx'
import { shelfTexts } from '../../app/shelf.ts'
import { useAsk } from '../../app/use-ask.ts'
import type { BoxChoice } from '../../ask/protocol.ts'
import { HeldBack, isOfPlan, useHolds } from '../../parts/held-back.tsx'
import { SupplyBar } from '../../parts/supply-bar.tsx'
import { NotUsed } from '../survey/not-used.tsx'
import { OpenList } from '../survey/open-list.tsx'
import { useDraft } from '../survey/use-draft.ts'
import { useDocument } from '../survey/use-survey.ts'
import { BoxCard } from './box-card.tsx'
import type { BoxLine } from './box-lines.ts'
import { boxLines } from './box-lines.ts'
import { BoxTable } from './box-table.tsx'

/** How many of each box lie in stock; a box that nobody counted has no entry. */
function useStock(): ReadonlyMap<string, number> {
  const { space } = useApp()
  const [stock, setStock] = useState<ReadonlyMap<string, number>>(new Map())
  useEffect(() => {
    void shelfTexts(space).then(all =>
      setStock(
        new Map(
          all.flatMap(each =>
            each.kind === 'control-box' && each.inStock !== undefined
              ? [[each.id, each.inStock] as const]
              : [],
          ),
        ),
      ),
    )
  }, [space])
  return stock
}

function useBoxes(): readonly BoxChoice[] | undefined {
  const { shelf } = useApp()
  const [boxes, setBoxes] = useState<readonly BoxChoice[]>()
  useEffect(() => void shelf().then(found => setBoxes(found.boxes)), [shelf])
  return boxes
}

/** The box that the job began with, where it did. */
function useNamedBox(): string | undefined {
  const { state } = useJobView()
  const named = fieldAt(state, ['box'])
  return named.kind === 'set' ? String(named.value) : undefined
}

/** Which box serves this tub and why, which does not and why not; what lies in stock first. */
export function MatchScreen(): ReactNode {
  const web = useWeb()
  const holds = useHolds()
  const boxes = useBoxes()
  const draft = useDraft()
  return (
    <Screen heading={web['match.title']}>
      <SupplyBar />
      <NotUsed />
      {holds.length > 0 && <HeldBack holds={holds} />}
      {holds.some(each => !isOfPlan(each)) ? undefined : boxes?.length === 0 ? (
        <p>
          {web['match.no-boxes']}{' '}
          <Link className="button" href="/shelf">
            {web['shell.shelf']}
          </Link>
        </p>
      ) : draft.isRead && !draft.isSurvey ? (
        <div className="card">
          <p>
            {say(web['match.open'], {
              count: String(draft.open.length + draft.diagnostics.length),
            })}
          </p>
          <OpenList />
        </div>
      ) : draft.isSurvey ? (
        <Verdicts />
      ) : (
        <Working />
      )}
    </Screen>
  )
}

function Verdicts(): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const document = useDocument()
  const box = useNamedBox()
  const stock = useStock()
  const [compared, setCompared] = useState<readonly string[]>([])
  const { answer, progress, isWorking, failure, cancel } = useAsk('match', {
    document,
    withChanges: false,
    ...(box === undefined ? {} : { box }),
  })
  const lines = useMemo(() => (answer ? boxLines(answer, stock) : []), [answer, stock])
  const toggle = (id: string): void =>
    setCompared(before =>
      before.includes(id) ? before.filter(each => each !== id) : [...before, id],
    )
  const chosen = lines.filter(each => compared.includes(each.match.box))
  return (
    <>
      {box !== undefined && <p>{say(web['match.only'], { box: labelOf(lines, box) })}</p>}
      {isWorking && (
        <Working {...(progress === undefined ? {} : { detail: progress })} cancel={cancel} />
      )}
      {failure && (
        <p className="wrong" role="alert">
          {failure.detail === 'cancelled'
            ? web['match.cancelled']
            : say(web['shell.fault'], { detail: failure.detail })}
        </p>
      )}
      {answer && answer.match.conflict.length > 0 && (
        <section className="card">
          <p>{web['match.conflict']}</p>
          <ul>
            {answer.match.conflict.map(each => (
              <li key={each.id}>{words.tellMatch(each)}</li>
            ))}
          </ul>
        </section>
      )}
      {answer && answer.madeUp.length > 0 && (
        <p className="card" data-made-up>
          {say(web['match.made-up'], { boxes: answer.madeUp.join(', ') })}
        </p>
      )}
      {chosen.length > 1 && <BoxTable lines={chosen} />}
      <ol className="plain">
        {lines.map(line => (
          <li key={line.match.box}>
            <BoxCard
              line={line}
              isCompared={compared.includes(line.match.box)}
              compare={() => toggle(line.match.box)}
            />
          </li>
        ))}
      </ol>
    </>
  )
}

const labelOf = (lines: readonly BoxLine[], id: string): string =>
  lines.find(each => each.match.box === id)?.match.label ?? id
