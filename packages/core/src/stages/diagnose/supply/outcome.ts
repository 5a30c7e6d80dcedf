import type { Outcome } from '../../../base/outcome.ts'
import type { SupplyReport } from '../../verify/artifact.ts'
import type { ConditionFailure, SupplyCondition } from './artifact.ts'

/** Whether a supply may serve: by its rules, and by what was read at the tub. */
export type SupplyOutcome = 'holds' | 'breaks' | 'open'

/**
 * What rules and readings come to together: readings that show a fault outweigh whatever was surveyed.
 *
 * @param condition - of the survey's readings; undefined where it has none
 */
export function supplyOutcome(
  { findings }: SupplyReport,
  condition?: Outcome<SupplyCondition, ConditionFailure>,
): SupplyOutcome {
  const read = condition === undefined ? 'holds' : readOutcome(condition)
  if (read === 'breaks' || findings.some(each => each.verdict === 'breaks')) return 'breaks'
  return read === 'open' || findings.some(each => each.verdict !== 'holds') ? 'open' : 'holds'
}

function readOutcome(condition: Outcome<SupplyCondition, ConditionFailure>): SupplyOutcome {
  if (!condition.ok) return 'open'
  const { named, fits, dangers } = condition.value
  const isShown = dangers.some(each => each.certainty === 'shown' && each.severity === 'danger')
  const isFault = named !== undefined && named !== 'sound'
  const isNever = fits.length > 0 && fits.every(each => each.fault.kind !== 'sound')
  if (isShown || isFault || isNever) return 'breaks'
  return named === 'sound' ? 'holds' : 'open'
}
