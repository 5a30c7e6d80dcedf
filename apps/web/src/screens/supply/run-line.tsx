import type { CircuitReport, CodeFinding, SegmentReport } from '@tubwright/core'
import { BOX } from '@tubwright/core'
import type { RunTold } from '@tubwright/documents'
import { figure, say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { useDeviceLabel } from '../survey/use-devices.ts'
import { useRuleTitle } from './finding-card.tsx'
import { sortFindings } from './sort-findings.ts'

const between = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? `${figure(from)} A` : `${figure(from)} … ${figure(to)} A`

/** One circuit from the panel to the tub: what stands in it, and each piece with its verdicts. */
export function RunLine({
  circuit,
  told,
  isOnly,
}: {
  readonly circuit: CircuitReport
  readonly told: RunTold
  readonly isOnly: boolean
}): ReactNode {
  const web = useWeb()
  const { supplyPage } = useApp().words
  const nameOf = useDeviceLabel()
  const { index, breaker, draws, segments, findings } = circuit
  const placeName = (id: string): string => (id === BOX ? web['supply.tub'] : nameOf(id))
  const takes = draws
    ? say(supplyPage.takes, { amps: between(draws) })
    : supplyPage['takes-unknown']
  return (
    <>
      {!isOnly && <h3>{say(supplyPage.circuit, { index: index + 1 })}</h3>}
      <ol className="run-line plain">
        <li className="run-place">
          <strong>{web['supply.panel']}</strong>
          <span>
            {breaker
              ? say(supplyPage.breaker, { amps: between(breaker) })
              : supplyPage['breaker-unknown']}
          </span>
        </li>
        {segments[0] && (
          <li className="run-place">
            <strong>{placeName(segments[0].from)}</strong>
            <span>{told.devices[segments[0].from]}</span>
          </li>
        )}
        {segments.map(segment => [
          <li key={segment.cable} className="run-piece" data-cable={segment.cable}>
            <Segment segment={segment} told={told.pieces[segment.cable]} />
          </li>,
          <li key={`${segment.cable} end`} className="run-place">
            <strong>{placeName(segment.to)}</strong>
            <span>{segment.to === BOX ? takes : told.devices[segment.to]}</span>
          </li>,
        ])}
      </ol>
      {findings.length > 0 && (
        <div className="run-whole">
          <p>{web['supply.whole-circuit']}</p>
          <Verdicts findings={findings} />
        </div>
      )}
    </>
  )
}

function Segment({
  segment: { label, findings },
  told,
}: {
  readonly segment: SegmentReport
  readonly told: string | undefined
}): ReactNode {
  return (
    <>
      <p>
        <strong>{label}</strong> <span>{told}</span>
      </p>
      <Verdicts findings={findings} />
    </>
  )
}

/** What stands against it and what is open, by name; what holds, by number. */
function Verdicts({ findings }: { readonly findings: readonly CodeFinding[] }): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const titleOf = useRuleTitle()
  const { breaks, differ, open, holds } = sortFindings(findings)
  const lines = [...breaks, ...differ, ...open].map(each => ({
    verdict: each.verdict,
    title: titleOf(each.rule),
  }))
  const once = [...new Map(lines.map(each => [`${each.verdict} ${each.title}`, each])).values()]
  return (
    <ul className="verdicts plain">
      {once.map(({ verdict, title }) => (
        <li key={`${verdict} ${title}`} data-verdict={verdict}>
          {title}: {words.verdicts[verdict]}
        </li>
      ))}
      {holds.length > 0 && (
        <li data-verdict="holds">
          {say(web['supply.these-hold'], { count: String(holds.length) })}
        </li>
      )}
    </ul>
  )
}
