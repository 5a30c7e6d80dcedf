import type { Finding } from '@tubwright/core'
import { bySeverity, isToHeed } from '@tubwright/core'
import { historyOf } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { Link, useParams } from 'wouter'
import { useApp, useJob, useWeb } from '../../app/context.ts'
import { Screen, Working } from '../../app/frame.tsx'
import { useAsk } from '../../app/use-ask.ts'
import type { Judged } from '../../ask/protocol.ts'
import { HeldBack, useHolds } from '../../parts/held-back.tsx'
import { NoAnswerHere } from '../../parts/no-answer.tsx'
import { PlanAge } from '../../parts/plan-age.tsx'
import { Signal } from '../../parts/signal.tsx'
import { SupplyBar } from '../../parts/supply-bar.tsx'
import { STOPS, stopPath } from '../../store/stops.ts'
import { differing } from '../wiring/as-built.ts'
import { useOfLanding, useTaken } from '../wiring/use-landing.ts'

/** What the landing as it is breaks or asks to be heeded, danger first. */
export function FindingsScreen(): ReactNode {
  const web = useWeb()
  const { id = '' } = useParams()
  const holds = useHolds()
  const of = useOfLanding()
  const { answer, isWorking, failure, cancel } = useAsk('judge', of, { keepsLast: true })
  return (
    <Screen heading={web['findings.title']}>
      <SupplyBar />
      {holds.length > 0 && <HeldBack holds={holds} />}
      <PlanAge />
      {!of && (
        <p>
          {web['findings.no-plan']}{' '}
          <Link className="button main" href={`/job/${id}/match`}>
            {web['findings.to-match']}
          </Link>
        </p>
      )}
      {of && isWorking && !answer && <Working cancel={cancel} />}
      {failure && <NoAnswerHere refusal={failure} />}
      {of && answer && <Verdict judged={answer} isHeld={holds.length > 0 || isWorking} />}
      <StopsSoFar />
    </Screen>
  )
}

function Verdict({
  judged,
  isHeld,
}: {
  readonly judged: Judged
  readonly isHeld: boolean
}): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const taken = useTaken()
  const { holds, findings, proof, boxLabel } = judged
  const isProvided = findings.some(isToHeed)
  const moved = taken
    ? differing(taken.planned.ends, taken.asBuilt.ends).length +
      differing(taken.planned.jumpers, taken.asBuilt.jumpers).length
    : 0
  const said = holds
    ? isProvided
      ? 'findings.holds-provided'
      : 'findings.holds'
    : 'findings.breaks'
  return (
    <>
      {(!isHeld || !holds) && (
        <p className="lead" data-holds={holds}>
          <strong className={holds ? 'holds' : 'breaks'}>{web[said]}</strong>
        </p>
      )}
      <p>
        {moved === 0
          ? say(web['findings.as-planned'], { box: boxLabel })
          : say(web['findings.as-built'], { count: String(moved) })}
      </p>
      {words.hasUnreviewed && <p className="card">{words.unreviewedNotice}</p>}
      {findings.length === 0 && <p>{web['findings.none']}</p>}
      <ul className="plain">
        {[...findings].sort(bySeverity).map((each, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: findings have no id, and the list is made anew
          <li key={index}>
            <FindingCard
              finding={each}
              nameOf={command => judged.commandLabels[command] ?? command}
            />
          </li>
        ))}
      </ul>
      <p className="quiet">
        {say(web['findings.proof'], {
          modes: String(proof.modes),
          transitions: String(proof.transitions),
          solves: String(proof.solves),
          kcl: proof.worstKcl.toExponential(0),
        })}
      </p>
      <p className="quiet">{web['shell.authority']}</p>
    </>
  )
}

function FindingCard({
  finding,
  nameOf,
}: {
  readonly finding: Finding
  readonly nameOf: (command: string) => string
}): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  return (
    <div className="card" data-severity={finding.severity}>
      <p>
        <Signal severity={finding.severity} />
        {words.tellFinding(finding, nameOf)}
        {words.isUnreviewed(`verify/${finding.message}`) && <em> ({words.unreviewedMark})</em>}
      </p>
      <p className="quiet">{say(web['findings.rule'], { rule: finding.rule })}</p>
    </div>
  )
}

/** Every stop that was ever raised in this job, and what was found. */
function StopsSoFar(): ReactNode {
  const web = useWeb()
  const { language } = useApp()
  const job = useJob()
  const words = STOPS.flatMap(stop =>
    historyOf(job.entries, stopPath(stop)).map(word => ({ stop, ...word })),
  )
  if (words.length === 0) return undefined
  return (
    <section>
      <h2>{web['stop.history']}</h2>
      <ul>
        {words.map(({ stop, by, at, entry, value: what }) => {
          const value = what as { readonly found?: unknown } | null | undefined
          const said = { what: web[`stop.${stop}`], by, at: new Date(at).toLocaleString(language) }
          return (
            <li key={entry}>
              {typeof value?.found === 'string'
                ? say(web['stop.cleared'], { ...said, found: value.found })
                : say(web['stop.raised'], said)}
            </li>
          )
        })}
      </ul>
    </section>
  )
}
