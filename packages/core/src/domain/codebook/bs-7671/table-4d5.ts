import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/**
 * Reference method: A in conduit in an insulated wall; C clipped; 100 and 101 above a ceiling,
 * under up to 100 mm of insulation and under more; 102 and 103 in an insulated stud wall, touching
 * its inner surface and not.
 */
export type Column4D5 = 'A' | 'C' | '100' | '101' | '102' | '103'

/**
 * What flat cable with a protective conductor (twin and earth) carries, at 30 °C ambient.
 *
 * Thermal insulation is in the columns: no factor of table 52.2 on top of them.
 *
 * @source [BS7671-4D5] copper, 70 °C thermoplastic
 */
export const TABLE_4D5: PrintedTable<Column4D5> = {
  standard: 'BS 7671',
  edition: '2018',
  clause: 'table 4D5',
  read: 'page',
  unit: 'A',
  columns: ['A', 'C', '100', '101', '102', '103'],
  rows: {
    '1': [11.5, 16, 13, 10.5, 13, 8],
    '1.5': [14.5, 20, 16, 13, 16, 10],
    '2.5': [20, 27, 21, 17, 21, 13.5],
    '4': [26, 37, 27, 22, 27, 17.5],
    '6': [32, 47, 34, 27, 35, 23.5],
    '10': [44, 64, 45, 36, 47, 32],
    '16': [57, 85, 57, 46, 63, 42.5],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1 to 16 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [BS7671-4D5] copper, 70 °C thermoplastic
 */
export const amps4D5 = (mm2: number, column: Column4D5): number | undefined =>
  cellOf(TABLE_4D5, String(mm2), column)
