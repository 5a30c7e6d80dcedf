import type { CircuitReport, CodeFinding, SegmentReport } from '@tubwright/core'
import { BOX } from '@tubwright/core'
import { figure, say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { useDeviceLabel } from '../survey/protection-group.tsx'
import { useSurvey } from '../survey/use-survey.ts'
import { useRuleTitle } from './finding-card.tsx'
import { sortFindings } from './sort-findings.ts'

const between = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? `${figure(from)} A` : `${figure(from)} … ${figure(to)} A`

/** One circuit from the panel to the tub: what stands in it, and each piece with its verdicts. */
export function RunLine({
  circuit,
  isOnly,
}: {
  readonly circuit: CircuitReport
  readonly isOnly: boolean
}): ReactNode {
  const web = useWeb()
  const { supplyPage } = useApp().words
  const nameOf = useDeviceLabel()
  const { index, breaker, demand, segments, findings } = circuit
  const placeName = (id: string): string => (id === BOX ? web['supply.tub'] : nameOf(id))
  const takes = demand.isKnown
    ? say(supplyPage.takes, { amps: between(demand.everything) })
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
          </li>
        )}
        {segments.map(segment => [
          <li key={segment.cable} className="run-piece" data-cable={segment.cable}>
            <Segment segment={segment} />
          </li>,
          <li key={`${segment.cable} end`} className="run-place">
            <strong>{placeName(segment.to)}</strong>
            {segment.to === BOX && <span>{takes}</span>}
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

function Segment({ segment }: { readonly segment: SegmentReport }): ReactNode {
  const web = useWeb()
  const { supplyPage } = useApp().words
  const { value } = useSurvey()
  const { cable, label, metres, carries, findings } = segment
  // As it was entered: a length in feet is no length in metres to who reads it.
  const entered = value(['supply', 'cables', cable, 'length'])
  const length = typeof entered === 'string' ? entered : `${figure(metres)} m`
  return (
    <>
      <p>
        <strong>{label}</strong>{' '}
        <span>
          {say(web['supply.length'], { length })},{' '}
          {carries
            ? say(supplyPage.carries, { amps: between(carries) })
            : supplyPage['carries-unknown']}
        </span>
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
