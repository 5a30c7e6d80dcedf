import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/**
 * How the cable lies: spaced or touching in air, in the sun, in conduit in air, and its flexible
 * kind spaced and in conduit; against thermal insulation; laid in the ground, and in a duct there.
 */
export type TwoCoreColumn =
  | 'spaced'
  | 'touching'
  | 'in the sun'
  | 'enclosed'
  | 'partly insulated'
  | 'wholly insulated'
  | 'buried'
  | 'buried duct'
  | 'flexible, spaced'
  | 'flexible, enclosed'

/**
 * What two-core sheathed cable with thermoplastic insulation carries: V-75, and V-90 in normal use.
 *
 * For 75 °C in air of 40 °C and soil of 25 °C: not the base of the other books. A cable with an
 * earth core counts as two-core.
 *
 * @source [ASNZS3008-10] copper
 */
export const TABLE_10: PrintedTable<TwoCoreColumn> = {
  standard: 'AS/NZS 3008.1.1',
  edition: '2017',
  clause: 'table 10',
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
    '1': [15, 14, 11, 13, 11, 7, 17, 17, 16, 13],
    '1.5': [19, 18, 14, 16, 14, 9, 21, 21, 20, 17],
    '2.5': [27, 26, 20, 23, 20, 13, 30, 30, 26, 23],
    '4': [37, 34, 27, 30, 27, 17, 39, 39, 35, 29],
    '6': [46, 44, 34, 39, 35, 22, 50, 50, 45, 38],
    '10': [64, 60, 46, 52, 48, 30, 66, 66, 63, 51],
    '16': [85, 80, 60, 68, 64, 40, 114, 86, 83, 68],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1 to 16 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [ASNZS3008-10] copper
 */
export const ampsTable10 = (mm2: number, column: TwoCoreColumn): number | undefined =>
  cellOf(TABLE_10, String(mm2), column)
