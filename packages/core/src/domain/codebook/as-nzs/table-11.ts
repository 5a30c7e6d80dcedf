import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'
import type { TwoCoreColumn } from './table-10.ts'

/**
 * What two-core sheathed cable with X-90 insulation carries.
 *
 * For 90 °C in air of 40 °C and soil of 25 °C: not the base of the other books. Read in one place
 * only.
 *
 * @source [ASNZS3008-11] copper
 */
export const TABLE_11: PrintedTable<TwoCoreColumn> = {
  standard: 'AS/NZS 3008.1.1',
  edition: '2017',
  clause: 'table 11',
  read: 'page',
  unit: 'A',
  columns: [
    'spaced',
    'touching',
    'in the sun',
    'enclosed',
    'partly insulated',
    'wholly insulated',
    'buried',
    'buried duct',
    'flexible, spaced',
    'flexible, enclosed',
  ],
  rows: {
    '1': [18, 17, 15, 16, 14, 9, 19, 19, 19, 16],
    '1.5': [24, 22, 19, 20, 18, 11, 24, 24, 24, 20],
    '2.5': [34, 31, 27, 28, 25, 16, 34, 34, 32, 27],
    '4': [45, 42, 36, 37, 33, 21, 45, 45, 43, 35],
    '6': [57, 53, 46, 46, 42, 27, 56, 56, 55, 44],
    '10': [78, 73, 63, 63, 58, 36, 75, 75, 78, 62],
    '16': [104, 97, 83, 82, 78, 49, 132, 98, 103, 80],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1 to 16 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [ASNZS3008-11] copper
 */
export const ampsTable11 = (mm2: number, column: TwoCoreColumn): number | undefined =>
  cellOf(TABLE_11, String(mm2), column)
