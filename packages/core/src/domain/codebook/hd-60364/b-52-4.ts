import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'
import type { ReferenceMethod } from './b-52-2.ts'

/**
 * What copper conductors with 70 °C thermoplastic insulation carry, three of them loaded.
 *
 * At 30 °C in air, and 20 °C in ground of 2.5 K·m/W.
 *
 * @source [HD60364-B.52.4] copper
 */
export const TABLE_B_52_4: PrintedTable<ReferenceMethod> = {
  standard: 'HD 60364-5-52',
  edition: '2011',
  clause: 'table B.52.4',
  read: 'page',
  unit: 'A',
  columns: ['A1', 'A2', 'B1', 'B2', 'C', 'D1', 'D2'],
  rows: {
    '1.5': [13.5, 13, 15.5, 15, 17.5, 18, 19],
    '2.5': [18, 17.5, 21, 20, 24, 24, 24],
    '4': [24, 23, 28, 27, 32, 30, 33],
    '6': [31, 29, 36, 34, 41, 38, 41],
    '10': [42, 39, 50, 46, 57, 50, 54],
    '16': [56, 52, 68, 62, 76, 64, 70],
    '25': [73, 68, 89, 80, 96, 82, 92],
    '35': [89, 83, 110, 99, 119, 98, 110],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1.5 to 35 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [HD60364-B.52.4] copper
 */
export const ampsB524 = (mm2: number, column: ReferenceMethod): number | undefined =>
  cellOf(TABLE_B_52_4, String(mm2), column)
