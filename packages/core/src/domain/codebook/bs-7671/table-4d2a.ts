import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/**
 * Reference method, and how many of its conductors are loaded: two, or the three of three phases.
 */
export type Column4D2A = `${'A' | 'B' | 'C' | 'E'} ${2 | 3}`

/**
 * What multicore cables with 70 °C thermoplastic insulation carry, unarmoured, at 30 °C ambient.
 *
 * A in conduit in an insulated wall, B in conduit on a wall or in trunking, C clipped, E in free
 * air. The 2018 edition is taken to print the same.
 *
 * @source [BS7671-4D2A] copper, unarmoured
 */
export const TABLE_4D2A: PrintedTable<Column4D2A> = {
  standard: 'BS 7671',
  edition: '2008',
  clause: 'table 4D2A',
  read: 'page',
  unit: 'A',
  columns: ['A 2', 'A 3', 'B 2', 'B 3', 'C 2', 'C 3', 'E 2', 'E 3'],
  rows: {
    '1': [11, 10, 13, 11.5, 15, 13.5, 17, 14.5],
    '1.5': [14, 13, 16.5, 15, 19.5, 17.5, 22, 18.5],
    '2.5': [18.5, 17.5, 23, 20, 27, 24, 30, 25],
    '4': [25, 23, 30, 27, 36, 32, 40, 34],
    '6': [32, 29, 38, 34, 46, 41, 51, 43],
    '10': [43, 39, 52, 46, 63, 57, 70, 60],
    '16': [57, 52, 69, 62, 85, 76, 94, 80],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1 to 16 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [BS7671-4D2A] copper, unarmoured
 */
export const amps4D2A = (mm2: number, column: Column4D2A): number | undefined =>
  cellOf(TABLE_4D2A, String(mm2), column)
