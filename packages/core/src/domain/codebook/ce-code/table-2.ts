import type { HeatColumn, Metal } from '../nec/table-310-16.ts'
import { HEAT_COLUMNS } from '../nec/table-310-16.ts'
import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'
import { CE_TABLE_4 } from './table-4.ts'

/** Copper. The columns of 110, 125 and 200 °C are left out. */
export const CE_TABLE_2: PrintedTable<HeatColumn> = {
  standard: 'CE Code',
  edition: '2024',
  clause: 'table 2',
  read: 'page',
  unit: 'A',
  columns: HEAT_COLUMNS,
  rows: {
    '14 AWG': [15, 20, 25],
    '12 AWG': [20, 25, 30],
    '10 AWG': [30, 35, 40],
    '8 AWG': [40, 50, 55],
    '6 AWG': [55, 65, 75],
    '4 AWG': [70, 85, 95],
    '3 AWG': [85, 100, 115],
    '2 AWG': [95, 115, 130],
    '1 AWG': [110, 130, 145],
    '1/0 AWG': [125, 150, 170],
    '2/0 AWG': [145, 175, 195],
    '3/0 AWG': [165, 200, 225],
    '4/0 AWG': [195, 230, 260],
  },
}

/**
 * What a conductor carries in a raceway or a cable, before any correction.
 *
 * Three conductors at most, ambient up to 30 °C. The edition of 2012 prints three of these cells
 * higher, for 14 and 12 AWG at 60 °C: they are not used.
 *
 * @param size - as the table writes it, such as `6 AWG` or `1/0 AWG`
 * @returns [A]; undefined where the table has no such row
 * @source [CEC-T2] tables 2 and 4, edition 2024
 */
export const ceAmps = (metal: Metal, size: string, column: HeatColumn): number | undefined =>
  cellOf(metal === 'copper' ? CE_TABLE_2 : CE_TABLE_4, size, column)
