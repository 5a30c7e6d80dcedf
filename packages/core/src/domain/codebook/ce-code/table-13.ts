import type { Banded } from '../nec/banded.ts'
import { bandIn } from '../nec/banded.ts'
import type { Metal } from '../nec/table-310-16.ts'
import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/** The breaker by what the conductor carries; beyond 600 A it was not found. */
export const CE_TABLE_13: Banded<{ readonly upTo: number; readonly breaker: number }> = {
  standard: 'CE Code',
  edition: '2018 or 2021',
  clause: 'table 13',
  read: 'page',
  bandUnit: 'A',
  unit: 'A',
  bands: [
    { upTo: 15, breaker: 15 },
    { upTo: 20, breaker: 20 },
    { upTo: 25, breaker: 25 },
    { upTo: 30, breaker: 30 },
    { upTo: 35, breaker: 35 },
    { upTo: 40, breaker: 40 },
    { upTo: 45, breaker: 45 },
    { upTo: 50, breaker: 50 },
    { upTo: 60, breaker: 60 },
    { upTo: 70, breaker: 70 },
    { upTo: 80, breaker: 80 },
    { upTo: 90, breaker: 90 },
    { upTo: 100, breaker: 100 },
    { upTo: 110, breaker: 110 },
    { upTo: 125, breaker: 125 },
    { upTo: 150, breaker: 150 },
    { upTo: 175, breaker: 175 },
    { upTo: 200, breaker: 200 },
    { upTo: 225, breaker: 225 },
    { upTo: 250, breaker: 250 },
    { upTo: 275, breaker: 300 },
    { upTo: 300, breaker: 300 },
    { upTo: 325, breaker: 350 },
    { upTo: 350, breaker: 350 },
    { upTo: 400, breaker: 400 },
    { upTo: 450, breaker: 450 },
    { upTo: 500, breaker: 500 },
    { upTo: 525, breaker: 600 },
    { upTo: 550, breaker: 600 },
    { upTo: 600, breaker: 600 },
  ],
}

/** Greatest breaker before a small conductor. */
export const CE_RULE_14_104: PrintedTable<Metal> = {
  standard: 'CE Code',
  edition: '2024',
  clause: 'rule 14-104 2)',
  read: 'page',
  unit: 'A',
  columns: ['copper', 'aluminium'],
  rows: { '14 AWG': [15, undefined], '12 AWG': [20, 15], '10 AWG': [30, 25] },
}

/**
 * The greatest breaker before a conductor.
 *
 * Where the load is calculated by section 8; heating and motor circuits have rules of their own.
 *
 * @param amps - what the conductor carries, after every correction [A]
 * @returns [A]; undefined beyond 600 A
 * @source [CEC-14-104] rule 14-104 and table 13
 */
export function ceGreatestBreaker(conductor: {
  readonly metal: Metal
  readonly size: string
  readonly amps: number
}): number | undefined {
  const breaker = bandIn(CE_TABLE_13, conductor.amps)?.breaker
  const small = cellOf(CE_RULE_14_104, conductor.size, conductor.metal)
  return breaker === undefined ? undefined : Math.min(breaker, small ?? breaker)
}
