import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'
import type { EnclosedColumn } from './table-4.ts'

/**
 * What two single cores with X-90 insulation carry in conduit.
 *
 * For 90 °C in air of 40 °C: not the base of the other books.
 *
 * @source [ASNZS3008-5] copper, solid or stranded
 */
export const TABLE_5: PrintedTable<EnclosedColumn> = {
  standard: 'AS/NZS 3008.1.1',
  edition: '2017',
  clause: 'table 5',
  read: 'page',
  unit: 'A',
  columns: ['enclosed', 'partly insulated', 'wholly insulated'],
  rows: {
    '1': [16, 13, 8],
    '1.5': [21, 16, 10],
    '2.5': [30, 24, 14],
    '4': [38, 30, 19],
    '6': [47, 38, 24],
    '10': [65, 52, 32],
    '16': [84, 67, 43],
    '25': [113, 90, 58],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1 to 25 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [ASNZS3008-5] copper, solid or stranded
 */
export const ampsTable5 = (mm2: number, column: EnclosedColumn): number | undefined =>
  cellOf(TABLE_5, String(mm2), column)
