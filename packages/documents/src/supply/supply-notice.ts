import type { ConditionFailure, Outcome, SupplyCondition, SupplyReport } from '@tubwright/core'
import { supplyOutcome } from '@tubwright/core'
import type { Words } from '@tubwright/words'

/** What the check of a supply says of it, for a page that is about something else. */
export interface SupplyNotice {
  readonly outcome: ReturnType<typeof supplyOutcome>
  /** Its outcome in words. */
  readonly lead: string
  /** What is dangerous about it, as far as it is shown: a sentence each. */
  readonly dangers: readonly string[]
  /** Points that are not shown. */
  readonly open: number
}

/** Sums up a check of a supply: its dangers whole, all else by number. */
export function supplyNotice(
  report: SupplyReport,
  condition: Outcome<SupplyCondition, ConditionFailure> | undefined,
  words: Words,
): SupplyNotice {
  const nameOf = (id: string): string => report.names[id] ?? id
  const outcome = supplyOutcome(report, condition)
  const found = report.findings.filter(
    each => each.verdict === 'breaks' && each.severity === 'danger',
  )
  const read = condition?.ok ? words.tellDangers(condition.value) : []
  const shown = condition?.ok
    ? condition.value.dangers.filter(each => each.certainty === 'shown').map(each => each.reason)
    : []
  return {
    outcome,
    lead: words.supplyPage[outcome],
    dangers: [
      ...read.flatMap(({ reason, severity, text }) =>
        severity === 'danger' && shown.includes(reason) ? [text] : [],
      ),
      ...found.map(each => words.tellCode(each, nameOf)),
    ],
    open: report.findings.filter(each => each.verdict !== 'breaks' && each.verdict !== 'holds')
      .length,
  }
}
