import type { Finding, Trip } from '@tubwright/core'
import { isToHeed } from '@tubwright/core'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { Link, useParams } from 'wouter'
import { useApp, useWeb } from '../../app/context.ts'
import type { Verdict } from '../../ask/protocol.ts'
import { HeldBack, useHolds } from '../../parts/held-back.tsx'
import { Signal } from '../../parts/signal.tsx'
import { differing } from './as-built.ts'
import { refusalText } from './refusal.tsx'
import { shortName } from './rows.ts'
import type { VerdictView } from './use-live.ts'
import { useWiring } from './wiring-context.ts'

const SHOWN = 3 // findings told in full here: the others stand on their own screen

const breaking = ({ findings }: Verdict): readonly Finding[] =>
  findings.filter(each => each.verdict === 'breaks' && each.severity !== 'notice')

/**
 * Whether the landing holds as it is now; where somebody has to decide first, why it is not said.
 *
 * @param isBrief - what would happen is told elsewhere on the screen
 */
export function VerdictLine({
  view,
  isBrief = false,
}: {
  readonly view: VerdictView
  readonly isBrief?: boolean
}): ReactNode {
  const web = useWeb()
  const holds = useHolds()
  const { taken } = useWiring()
  if (holds.length > 0) return <HeldBack holds={holds} />
  if (view.refusal)
    return (
      <p className="card breaks" role="alert">
        {refusalText(web, view.refusal)}
      </p>
    )
  if (!view.verdict || !view.isFresh)
    return (
      <p className="card verdict-line" role="status">
        {web['wiring.judging']}
      </p>
    )
  return (
    <section
      className="card verdict-line"
      role={isBrief ? undefined : view.verdict.holds ? 'status' : 'alert'}
      data-holds={view.verdict.holds && !taken.isContested}
      data-verdict-ms={view.tookMs?.toFixed(1)}
    >
      {taken.isContested ? (
        <p className="breaks">{web['wiring.plan-contested']}</p>
      ) : (
        <Judged verdict={view.verdict} isBrief={isBrief} />
      )}
      <NotAsPlanned />
    </section>
  )
}

function NotAsPlanned(): ReactNode {
  const web = useWeb()
  const { taken } = useWiring()
  const { planned, asBuilt } = taken
  const count =
    differing(planned.ends, asBuilt.ends).length +
    differing(planned.jumpers, asBuilt.jumpers).length
  if (count === 0) return undefined
  return <p className="look">{say(web['wiring.moved-count'], { count: String(count) })}</p>
}

function Judged({
  verdict,
  isBrief,
}: {
  readonly verdict: Verdict
  readonly isBrief: boolean
}): ReactNode {
  const web = useWeb()
  const isProvided = verdict.findings.some(isToHeed)
  if (verdict.holds)
    return <p className="holds">{web[isProvided ? 'wiring.holds-provided' : 'wiring.holds']}</p>
  return (
    <>
      <p className="breaks">{web['wiring.breaks']}</p>
      {!isBrief && <Consequences verdict={verdict} />}
    </>
  )
}

/** What would happen if it were powered: what trips first, then what breaks, danger first. */
function Consequences({ verdict }: { readonly verdict: Verdict }): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const { id = '' } = useParams()
  const { wired } = useWiring()
  const found = breaking(verdict)
  const more = found.length - SHOWN
  const nameOf = (command: string): string => wired.commandLabels[command] ?? command
  return (
    <>
      <p>{web['wiring.if-powered']}</p>
      <ul className="consequences">
        <Trips verdict={verdict} />
        {found.slice(0, SHOWN).map(each => (
          <li key={`${each.rule} ${each.message} ${each.subjects.join(' ')}`}>
            <Signal severity={each.severity} />
            {words.tellFinding(each, nameOf)}
          </li>
        ))}
      </ul>
      <p>
        <Link className="button" href={`/job/${id}/findings`}>
          {more > 0
            ? say(web['wiring.more-findings'], { count: String(more) })
            : web['wiring.all-findings']}
        </Link>
      </p>
    </>
  )
}

/** What clears the supply or a part of it with everything off. */
function Trips({ verdict: { trip, blown, opened } }: { readonly verdict: Verdict }): ReactNode {
  const web = useWeb()
  const { wired } = useWiring()
  const sentence = (
    key: 'trip-overcurrent' | 'trip-ground-fault' | 'blows' | 'opens',
    each: Trip,
  ) => {
    const board = each.part.slice(0, each.part.indexOf('.'))
    const label = wired.sheet.panels.find(panel => panel.id === board)?.label ?? board
    const { amps, rated } = each
    return say(web[`wiring.${key}`], { part: shortName(each.part), board: label, amps, rated })
  }
  const all = [
    ...(trip ? [sentence(`trip-${trip.kind}`, trip)] : []),
    ...blown.map(each => sentence('blows', each)),
    ...opened.map(each => sentence('opens', each)),
  ]
  return all.map(each => (
    <li key={each}>
      <Signal severity="danger" />
      {each}
    </li>
  ))
}
