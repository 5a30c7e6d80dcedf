import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/**
 * Reference method, and how many of its conductors are loaded: two, or the three of three phases.
 */
export type Column4D4A = `${'C' | 'D' | 'E'} ${2 | 3}`

/**
 * What armoured multicore cables with 70 °C thermoplastic insulation carry.
 *
 * C clipped and E in free air at 30 °C ambient; D in the ground or in a duct there, at 20 °C.
 *
 * @source [BS7671-4D4A] copper
 */
export const TABLE_4D4A: PrintedTable<Column4D4A> = {
  standard: 'BS 7671',
  edition: '2018',
  clause: 'table 4D4A',
  read: 'page',
  unit: 'A',
  columns: ['C 2', 'C 3', 'D 2', 'D 3', 'E 2', 'E 3'],
  rows: {
    '1.5': [21, 18, 22, 18, 22, 19],
    '2.5': [28, 25, 29, 24, 31, 26],
    '4': [38, 33, 37, 30, 41, 35],
    '6': [49, 42, 46, 38, 53, 45],
    '10': [67, 58, 60, 50, 72, 62],
    '16': [89, 77, 78, 64, 97, 83],
    '25': [118, 102, 99, 82, 128, 110],
    '35': [145, 125, 119, 98, 157, 135],
  },
}

/**
 * Rating of one size, before any factor.
 *
 * @param mm2 - a printed size, 1.5 to 35 [mm²]
 * @returns [A], undefined for a size that is not printed
 * @source [BS7671-4D4A] copper
 */
export const amps4D4A = (mm2: number, column: Column4D4A): number | undefined =>
  cellOf(TABLE_4D4A, String(mm2), column)
