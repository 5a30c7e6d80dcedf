import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'
import type { ReferenceMethod } from './b-52-2.ts'

/**
 * What copper conductors with 90 °C thermosetting insulation carry, three of them loaded.
 *
 * At 30 °C in air, and 20 °C in ground of 2.5 K·m/W.
 *
 * @source [HD60364-B.52.5] copper
 */
export const TABLE_B_52_5: PrintedTable<ReferenceMethod> = {
  standard: 'HD 60364-5-52',
  edition: '2011',
  clause: 'table B.52.5',
  read: 'page',
  unit: 'A',
  columns: ['A1', 'A2', 'B1', 'B2', 'C', 'D1', 'D2'],
  rows: {
    '1.5': [17, 16.5, 20, 19.5, 22, 21, 23],
    '2.5': [23, 22, 28, 26, 30, 28, 30],
    '4': [31, 30, 37, 35, 40, 36, 39],
    '6': [40, 38, 48, 44, 52, 44, 49],
    '10': [54, 51, 66, 60, 71, 58, 65],
    '16': [73, 68, 88, 80, 96, 75, 84],
    '25': [95, 89, 117, 105, 119, 96, 107],
    '35': [117, 109, 144, 128, 147, 115, 129],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1.5 to 35 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [HD60364-B.52.5] copper
 */
export const ampsB525 = (mm2: number, column: ReferenceMethod): number | undefined =>
  cellOf(TABLE_B_52_5, String(mm2), column)
