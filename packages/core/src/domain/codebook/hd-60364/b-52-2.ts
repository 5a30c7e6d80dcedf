import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/**
 * Reference method: A1 and A2 single cores and a cable in conduit in an insulated wall; B1 and B2
 * the same on a wall; C clipped; D1 in a duct in the ground, D2 laid in the ground itself.
 */
export type ReferenceMethod = 'A1' | 'A2' | 'B1' | 'B2' | 'C' | 'D1' | 'D2'

/**
 * What copper conductors with 70 °C thermoplastic insulation carry, two of them loaded.
 *
 * At 30 °C in air, and 20 °C in ground of 2.5 K·m/W.
 *
 * @source [HD60364-B.52.2] copper
 */
export const TABLE_B_52_2: PrintedTable<ReferenceMethod> = {
  standard: 'HD 60364-5-52',
  edition: '2011',
  clause: 'table B.52.2',
  read: 'page',
  unit: 'A',
  columns: ['A1', 'A2', 'B1', 'B2', 'C', 'D1', 'D2'],
  rows: {
    '1.5': [14.5, 14, 17.5, 16.5, 19.5, 22, 22],
    '2.5': [19.5, 18.5, 24, 23, 27, 29, 28],
    '4': [26, 25, 32, 30, 36, 37, 38],
    '6': [34, 32, 41, 38, 46, 46, 48],
    '10': [46, 43, 57, 52, 63, 60, 64],
    '16': [61, 57, 76, 69, 85, 78, 83],
    '25': [80, 75, 101, 90, 112, 99, 110],
    '35': [99, 92, 125, 111, 138, 119, 132],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1.5 to 35 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [HD60364-B.52.2] copper
 */
export const ampsB522 = (mm2: number, column: ReferenceMethod): number | undefined =>
  cellOf(TABLE_B_52_2, String(mm2), column)
