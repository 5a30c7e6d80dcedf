import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'
import type { Metal } from './table-310-16.ts'

/** 18 and 16 AWG are for limited uses only. Copper-clad 14 AWG, new in 2023, is left out. */
export const SECTION_240_4_D: PrintedTable<Metal> = {
  standard: 'NEC',
  edition: '2023',
  clause: '240.4(D)',
  read: 'page',
  unit: 'A',
  columns: ['copper', 'aluminium'],
  rows: {
    '18 AWG': [7, undefined],
    '16 AWG': [10, undefined],
    '14 AWG': [15, undefined],
    '12 AWG': [20, 15],
    '10 AWG': [30, 25],
  },
}

/**
 * The greatest breaker before a small conductor, whatever it carries.
 *
 * Motor and air-conditioning circuits are excepted, 240.4(E) and (G).
 *
 * @returns [A]; undefined for larger sizes, to which the rule does not apply
 * @source [NEC-240.4-D] 240.4(D)
 */
export const smallConductorBreaker = (metal: Metal, size: string): number | undefined =>
  cellOf(SECTION_240_4_D, size, metal)
