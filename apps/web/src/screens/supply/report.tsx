import { supplyOutcome } from '@tubwright/core'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { Link, useParams } from 'wouter'
import { useApp, useWeb } from '../../app/context.ts'
import type { JudgedSupply } from '../../ask/protocol.ts'
import { useDocument } from '../survey/use-survey.ts'
import { Asks } from './asks.tsx'
import { Condition, isShownDanger } from './condition.tsx'
import { Drawing } from './drawing.tsx'
import { ElectricianPage } from './electrician-page.tsx'
import { FindingGroup } from './finding-card.tsx'
import { RunLine } from './run-line.tsx'
import { sortFindings } from './sort-findings.ts'
import { Ways } from './ways.tsx'

/** Verdict first and what breaks, then the run, what can be done and what to ask. */
export function Report({ judged }: { readonly judged: JudgedSupply }): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const { report, told, drawings } = judged
  const sorted = sortFindings(report.findings)
  return (
    <>
      <Lead judged={judged} />
      {judged.condition && <Condition found={judged.condition} />}
      {words.hasUnreviewed && <p className="card">{words.unreviewedNotice}</p>}
      <FindingGroup title={web['supply.breaks-title']} findings={sorted.breaks} />
      <section aria-label={web['supply.run']}>
        <h2>{web['supply.run']}</h2>
        {drawings.run && (
          <div className="roomy">
            <Drawing name={web['supply.run-drawing']} svg={drawings.run} />
          </div>
        )}
        {report.circuits.map(each => (
          <RunLine
            key={each.index}
            circuit={each}
            told={told}
            isOnly={report.circuits.length === 1}
          />
        ))}
      </section>
      <FindingGroup title={web['supply.differ-title']} findings={sorted.differ} />
      <Ways circuits={report.circuits} />
      <Asks
        asks={report.asks}
        hasNext={judged.condition?.ok === true && judged.condition.value.next !== undefined}
      />
      <FindingGroup title={web['supply.open-title']} findings={sorted.open} />
      <Place judged={judged} />
      {!judged.condition && <Condition found={undefined} />}
      {sorted.holds.length > 0 && (
        <details className="holding">
          <summary>
            {say(web['supply.holds-title'], { count: String(sorted.holds.length) })}
          </summary>
          <FindingGroup findings={sorted.holds} />
        </details>
      )}
      <ElectricianPage />
      <p className="quiet foot">{web['shell.authority']}</p>
    </>
  )
}

/** The verdict on the whole, and how much of what it rests on. */
function Lead({ judged: { report, condition } }: { readonly judged: JudgedSupply }): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  // What a meter shows breaks, whatever the figures say.
  const outcome = supplyOutcome(report, condition)
  const { breaks, differ, open, holds } = sortFindings(report.findings)
  const counted = (key: 'breaks' | 'differ' | 'open' | 'holds', count: number) =>
    count > 0 ? [say(web[`supply.count-${key}`], { count: String(count) })] : []
  const isDangerous = isShownDanger(condition) || breaks.some(each => each.severity === 'danger')
  return (
    <section className="card supply-lead" role="status" data-supply={outcome}>
      <p className="lead">
        <strong className={outcome}>{words.supplyPage[outcome]}</strong>
        {isDangerous && ` ${web['supply.no-power']}`}
      </p>
      <p>
        {[
          ...counted('breaks', breaks.length),
          ...counted('differ', differ.length),
          ...counted('open', open.length),
          ...counted('holds', holds.length),
        ].join(' ')}
      </p>
      <p className="quiet">
        {report.book
          ? say(words.supplyPage.book, { book: report.book.name })
          : words.supplyPage['no-book']}
        {report.fitted && ` ${words.tellFitted(report.fitted)}`}
      </p>
    </section>
  )
}

/** The place as it was surveyed, or the way to say what stands there. */
function Place({ judged: { drawings } }: { readonly judged: JudgedSupply }): ReactNode {
  const web = useWeb()
  const { id = '' } = useParams()
  const isSurveyed = useDocument()['yard'] !== undefined
  if (isSurveyed && !drawings.yard) return undefined
  return (
    <section aria-label={web['supply.yard']}>
      <h2>{web['supply.yard']}</h2>
      {drawings.yard && <Drawing name={web['supply.yard-drawing']} svg={drawings.yard} />}
      {!isSurveyed && (
        <>
          <p>{web['supply.no-yard']}</p>
          <Link className="button" href={`/job/${id}/survey/yard`}>
            {web['supply.to-yard']}
          </Link>
        </>
      )}
    </section>
  )
}
