import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/**
 * Reference method, and how many of its conductors are loaded: two, or the three of three phases.
 */
export type Column4E1A = `${'A' | 'B' | 'C'} ${2 | 3}`

/**
 * What single-core cables with 90 °C thermosetting insulation carry, at 30 °C ambient.
 *
 * Not at terminals for 70 °C: there table 4D1A holds, see section 512. The 2018 edition is taken to
 * print the same.
 *
 * @source [BS7671-4E1A] copper, unarmoured
 */
export const TABLE_4E1A: PrintedTable<Column4E1A> = {
  standard: 'BS 7671',
  edition: '2008',
  clause: 'table 4E1A',
  read: 'page',
  unit: 'A',
  columns: ['A 2', 'A 3', 'B 2', 'B 3', 'C 2', 'C 3'],
  rows: {
    '1': [14, 13, 17, 15, 19, 17.5],
    '1.5': [19, 17, 23, 20, 25, 23],
    '2.5': [26, 23, 31, 28, 34, 31],
    '4': [35, 31, 42, 37, 46, 41],
    '6': [45, 40, 54, 48, 59, 54],
    '10': [61, 54, 75, 66, 81, 74],
    '16': [81, 73, 100, 88, 109, 99],
    '25': [106, 95, 133, 117, 143, 130],
    '35': [131, 117, 164, 144, 176, 161],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1 to 35 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [BS7671-4E1A] copper, unarmoured
 */
export const amps4E1A = (mm2: number, column: Column4E1A): number | undefined =>
  cellOf(TABLE_4E1A, String(mm2), column)
