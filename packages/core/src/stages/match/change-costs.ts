import { invariant } from '../../base/invariant.ts'
import type { LoadKind } from '../../domain/load/load.ts'

/** What changes cost: another load by its kind, and whatever is no load. */
export type ChangeCosts = Readonly<
  Record<LoadKind | 'adapter' | 'blanking-plate' | 'from-carton' | 'leave-out', number>
>

/**
 * Relative units: what is bought and the work to fit it, against one plug adapter.
 *
 * Common practice, no source. Only their order counts; a caller may give others.
 */
export const CHANGE_COSTS: ChangeCosts = {
  adapter: 1,
  'blanking-plate': 1,
  'from-carton': 1,
  probe: 2,
  ozonator: 4,
  light: 4,
  keypad: 4,
  audio: 6,
  'circulation-pump': 8,
  sanitiser: 10,
  blower: 10,
  heater: 12,
  pump: 20,
  'leave-out': 50,
}

/** The table with what a caller has otherwise. A cost below 0 would make the search wrong. */
export function costsWith(others: Partial<ChangeCosts> = {}): ChangeCosts {
  const costs = { ...CHANGE_COSTS, ...others }
  for (const [kind, cost] of Object.entries(costs))
    invariant(Number.isFinite(cost) && cost >= 0, `the cost of ${kind} is ${cost}`)
  return costs
}
