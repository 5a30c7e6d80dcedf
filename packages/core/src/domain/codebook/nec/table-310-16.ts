import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

export type Metal = 'copper' | 'aluminium'

/** Highest temperature of the conductor that a column is for. */
export type HeatColumn = '60 °C' | '75 °C' | '90 °C'

export const HEAT_COLUMNS: readonly HeatColumn[] = ['60 °C', '75 °C', '90 °C']

const HEADER = {
  standard: 'NEC',
  edition: '2023',
  clause: 'table 310.16',
  read: 'page',
  unit: 'A',
  columns: HEAT_COLUMNS,
} as const

/** Aluminium stands for copper-clad aluminium too; neither is printed at 14 AWG. */
export const TABLE_310_16: Readonly<Record<Metal, PrintedTable<HeatColumn>>> = {
  copper: {
    ...HEADER,
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
  },
  aluminium: {
    ...HEADER,
    rows: {
      '12 AWG': [15, 20, 25],
      '10 AWG': [25, 30, 35],
      '8 AWG': [35, 40, 45],
      '6 AWG': [40, 50, 55],
      '4 AWG': [55, 65, 75],
      '3 AWG': [65, 75, 85],
      '2 AWG': [75, 90, 100],
      '1 AWG': [85, 100, 115],
      '1/0 AWG': [100, 120, 135],
      '2/0 AWG': [115, 135, 150],
      '3/0 AWG': [130, 155, 175],
      '4/0 AWG': [150, 180, 205],
    },
  },
}

/**
 * What a conductor carries in a raceway, a cable or earth, before any correction.
 *
 * Three loaded conductors at most, ambient 26 to 30 °C. Editions of 2008 and before print seven of
 * these cells otherwise: they are not used.
 *
 * @param size - as the table writes it, such as `6 AWG` or `1/0 AWG`
 * @returns [A]; undefined where the table has no such row
 * @source [NEC-310.16] table 310.16, edition 2023
 */
export const necAmps = (metal: Metal, size: string, column: HeatColumn): number | undefined =>
  cellOf(TABLE_310_16[metal], size, column)
