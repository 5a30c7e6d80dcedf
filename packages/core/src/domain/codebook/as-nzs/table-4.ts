import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/** In conduit in air; the same with thermal insulation on one side; the same all round. */
export type EnclosedColumn = 'enclosed' | 'partly insulated' | 'wholly insulated'

/**
 * What two single cores with thermoplastic insulation carry in conduit: V-75, and V-90 in normal
 * use.
 *
 * For 75 °C in air of 40 °C: not the base of the other books.
 *
 * @source [ASNZS3008-4] copper, solid or stranded
 */
export const TABLE_4: PrintedTable<EnclosedColumn> = {
  standard: 'AS/NZS 3008.1.1',
  edition: '2017',
  clause: 'table 4',
  read: 'page',
  unit: 'A',
  columns: ['enclosed', 'partly insulated', 'wholly insulated'],
  rows: {
    '1': [13, 11, 6],
    '1.5': [18, 14, 8],
    '2.5': [24, 20, 12],
    '4': [32, 25, 16],
    '6': [41, 33, 20],
    '10': [54, 44, 27],
    '16': [70, 56, 36],
    '25': [94, 75, 48],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1 to 25 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [ASNZS3008-4] copper, solid or stranded
 */
export const ampsTable4 = (mm2: number, column: EnclosedColumn): number | undefined =>
  cellOf(TABLE_4, String(mm2), column)
