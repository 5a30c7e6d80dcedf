import { ambientFactor } from './table-310-15-b-1.ts'
import { adjustmentFactor } from './table-310-15-c-1.ts'
import type { HeatColumn, Metal } from './table-310-16.ts'
import { necAmps } from './table-310-16.ts'

/** A conductor as it lies, and the column that its terminals allow. */
export interface CorrectedConductor {
  readonly metal: Metal
  readonly size: string
  readonly insulation: HeatColumn
  readonly terminals: HeatColumn
  /** Of the air [°C]. */
  readonly ambient: number
  /** Current-carrying conductors in the raceway or cable. */
  readonly loaded: number
}

/**
 * What a conductor carries where it lies: corrected in the column of its insulation, and never over
 * the column of its terminals.
 *
 * @returns [A]; undefined where a table has no such row, or the air is too hot for the insulation
 * @source [NEC-310.15-B-1] 310.15(B); [NEC-310.15-C-1] 310.15(C); [NEC-110.14-C] 110.14(C)
 */
export function correctedAmps(laid: CorrectedConductor): number | undefined {
  const printed = necAmps(laid.metal, laid.size, laid.insulation)
  const ambient = ambientFactor(laid.ambient, laid.insulation)
  const adjustment = adjustmentFactor(laid.loaded)
  const terminals = necAmps(laid.metal, laid.size, laid.terminals)
  if (printed === undefined || ambient === undefined) return undefined
  if (adjustment === undefined || terminals === undefined) return undefined
  return Math.min(printed * ambient * adjustment, terminals)
}
