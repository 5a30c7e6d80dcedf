import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'
import type { ReferenceMethod } from './b-52-2.ts'

/**
 * What copper conductors with 90 °C thermosetting insulation carry, two of them loaded.
 *
 * At 30 °C in air, and 20 °C in ground of 2.5 K·m/W.
 *
 * @source [HD60364-B.52.3] copper
 */
export const TABLE_B_52_3: PrintedTable<ReferenceMethod> = {
  standard: 'HD 60364-5-52',
  edition: '2011',
  clause: 'table B.52.3',
  read: 'page',
  unit: 'A',
  columns: ['A1', 'A2', 'B1', 'B2', 'C', 'D1', 'D2'],
  rows: {
    '1.5': [19, 18.5, 23, 22, 24, 25, 27],
    '2.5': [26, 25, 31, 30, 33, 33, 35],
    '4': [35, 33, 42, 40, 45, 43, 46],
    '6': [45, 42, 54, 51, 58, 53, 58],
    '10': [61, 57, 75, 69, 80, 71, 77],
    '16': [81, 76, 100, 91, 107, 91, 100],
    '25': [106, 99, 133, 119, 138, 116, 129],
    '35': [131, 121, 164, 146, 171, 139, 155],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1.5 to 35 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [HD60364-B.52.3] copper
 */
export const ampsB523 = (mm2: number, column: ReferenceMethod): number | undefined =>
  cellOf(TABLE_B_52_3, String(mm2), column)
