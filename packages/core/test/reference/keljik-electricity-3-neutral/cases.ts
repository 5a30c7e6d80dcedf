import type { Printed } from '../../engines/circuit/support/printed.ts'

export interface NeutralCase extends Printed {
  /** Amps of each leg, in the order of their angles. */
  readonly legAmps: readonly number[]
  readonly legDegrees: readonly number[]
  readonly neutralAmps: number
}

export const CASES: readonly NeutralCase[] = [
  {
    id: 'neutral-wye-5-8-10',
    found: 'page',
    why: 'three unequal legs of a wye',
    legAmps: [5, 8, 10],
    legDegrees: [0, -120, 120],
    neutralAmps: 4.36,
  },
  {
    id: 'neutral-split-basic',
    found: 'derived',
    why: 'the neutral of split phase carries the difference',
    legAmps: [20, 12],
    legDegrees: [0, 180],
    neutralAmps: 8,
  },
]
