import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/** How many conductors of the cord carry current. */
export type CordColumn = '2 loaded' | '3 loaded'

/** Flexible cord, copper, air up to 30 °C; from memory, both columns. */
export const TABLE_400_5: PrintedTable<CordColumn> = {
  standard: 'NEC',
  edition: '2020',
  clause: 'table 400.5(A)(1)',
  read: 'memory',
  unit: 'A',
  columns: ['2 loaded', '3 loaded'],
  rows: {
    '18 AWG': [10, 7],
    '16 AWG': [13, 10],
    '14 AWG': [18, 15],
    '12 AWG': [25, 20],
    '10 AWG': [30, 25],
    '8 AWG': [40, 35],
    '6 AWG': [55, 45],
    '4 AWG': [70, 60],
  },
}

/**
 * What a flexible cord carries, before any correction.
 *
 * @param loaded - conductors that carry current: up to 2, or 3
 * @returns [A]; undefined where the table has no such row
 * @source [NEC-400.5] table 400.5(A)(1), from memory
 */
export const cordAmps = (size: string, loaded: number): number | undefined =>
  cellOf(TABLE_400_5, size, loaded > 2 ? '3 loaded' : '2 loaded')
