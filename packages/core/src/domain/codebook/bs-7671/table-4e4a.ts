import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/**
 * Reference method, and how many of its conductors are loaded: two, or the three of three phases.
 */
export type Column4E4A = `${'C' | 'D' | 'E'} ${2 | 3}`

/**
 * What armoured multicore cables with 90 °C thermosetting insulation carry.
 *
 * C clipped and E in free air at 30 °C ambient; D in the ground or in a duct there, at 20 °C. Not
 * at terminals for 70 °C: there table 4D4A holds, see section 512. One cell is printed in two ways,
 * 43 and 46 A at 4 mm² in the ground: the lesser stands here. The 2018 edition is taken to print
 * the same.
 *
 * @source [BS7671-4E4A] copper
 */
export const TABLE_4E4A: PrintedTable<Column4E4A> = {
  standard: 'BS 7671',
  edition: '2008',
  clause: 'table 4E4A',
  read: 'page',
  unit: 'A',
  columns: ['C 2', 'C 3', 'D 2', 'D 3', 'E 2', 'E 3'],
  rows: {
    '1.5': [27, 23, 25, 21, 29, 25],
    '2.5': [36, 31, 33, 28, 39, 33],
    '4': [49, 42, 43, 36, 52, 44],
    '6': [62, 53, 53, 44, 66, 56],
    '10': [85, 73, 71, 58, 90, 78],
    '16': [110, 94, 91, 75, 115, 99],
    '25': [146, 124, 116, 96, 152, 131],
    '35': [180, 154, 139, 115, 188, 162],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1.5 to 35 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [BS7671-4E4A] copper
 */
export const amps4E4A = (mm2: number, column: Column4E4A): number | undefined =>
  cellOf(TABLE_4E4A, String(mm2), column)
