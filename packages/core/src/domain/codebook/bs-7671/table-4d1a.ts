import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/**
 * Reference method, and how many of its conductors are loaded: two, or the three of three phases.
 */
export type Column4D1A = `${'A' | 'B' | 'C'} ${2 | 3}`

/**
 * What single-core cables with 70 °C thermoplastic insulation carry, at 30 °C ambient.
 *
 * A in conduit in an insulated wall, B in conduit on a wall or in trunking, C clipped. The 2018
 * edition is taken to print the same.
 *
 * @source [BS7671-4D1A] copper, unarmoured
 */
export const TABLE_4D1A: PrintedTable<Column4D1A> = {
  standard: 'BS 7671',
  edition: '2008',
  clause: 'table 4D1A',
  read: 'page',
  unit: 'A',
  columns: ['A 2', 'A 3', 'B 2', 'B 3', 'C 2', 'C 3'],
  rows: {
    '1': [11, 10.5, 13.5, 12, 15.5, 14],
    '1.5': [14.5, 13.5, 17.5, 15.5, 20, 18],
    '2.5': [20, 18, 24, 21, 27, 25],
    '4': [26, 24, 32, 28, 37, 33],
    '6': [34, 31, 41, 36, 47, 43],
    '10': [46, 42, 57, 50, 65, 59],
    '16': [61, 56, 76, 68, 87, 79],
    '25': [80, 73, 101, 89, 114, 104],
    '35': [99, 89, 125, 110, 141, 129],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1 to 35 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [BS7671-4D1A] copper, unarmoured
 */
export const amps4D1A = (mm2: number, column: Column4D1A): number | undefined =>
  cellOf(TABLE_4D1A, String(mm2), column)
