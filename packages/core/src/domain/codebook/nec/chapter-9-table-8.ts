import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'
import type { Metal } from './table-310-16.ts'

export type Stranding = 'solid' | 'stranded'
export type OhmsColumn = `${Stranding} ${Metal}`

const HEADER = {
  standard: 'NEC',
  edition: '2020',
  clause: 'chapter 9 table 8',
  read: 'page',
} as const

/** Area of the metal, the smallest first. */
export const TABLE_8_AREA: PrintedTable<'area'> = {
  ...HEADER,
  unit: 'cmil',
  columns: ['area'],
  rows: {
    '18 AWG': [1620],
    '16 AWG': [2580],
    '14 AWG': [4110],
    '12 AWG': [6530],
    '10 AWG': [10380],
    '8 AWG': [16510],
    '6 AWG': [26240],
    '4 AWG': [41740],
    '3 AWG': [52620],
    '2 AWG': [66360],
    '1 AWG': [83690],
    '1/0 AWG': [105600],
    '2/0 AWG': [133100],
    '3/0 AWG': [167800],
    '4/0 AWG': [211600],
    '250 kcmil': [250000],
    '300 kcmil': [300000],
    '350 kcmil': [350000],
    '400 kcmil': [400000],
    '500 kcmil': [500000],
  },
}

/** Direct current at 75 °C, uncoated; solid is printed up to 8 AWG. */
export const TABLE_8_OHMS: PrintedTable<OhmsColumn> = {
  ...HEADER,
  unit: 'Ω/kft',
  columns: ['solid copper', 'stranded copper', 'solid aluminium', 'stranded aluminium'],
  rows: {
    '18 AWG': [7.77, 7.95, 12.8, 13.1],
    '16 AWG': [4.89, 4.99, 8.05, 8.21],
    '14 AWG': [3.07, 3.14, 5.06, 5.17],
    '12 AWG': [1.93, 1.98, 3.18, 3.25],
    '10 AWG': [1.21, 1.24, 2, 2.04],
    '8 AWG': [0.764, 0.778, 1.26, 1.28],
    '6 AWG': [undefined, 0.491, undefined, 0.808],
    '4 AWG': [undefined, 0.308, undefined, 0.508],
    '3 AWG': [undefined, 0.245, undefined, 0.403],
    '2 AWG': [undefined, 0.194, undefined, 0.319],
    '1 AWG': [undefined, 0.154, undefined, 0.253],
    '1/0 AWG': [undefined, 0.122, undefined, 0.201],
    '2/0 AWG': [undefined, 0.0967, undefined, 0.159],
    '3/0 AWG': [undefined, 0.0766, undefined, 0.126],
    '4/0 AWG': [undefined, 0.0608, undefined, 0.1],
    '250 kcmil': [undefined, 0.0515, undefined, 0.0847],
    '300 kcmil': [undefined, 0.0429, undefined, 0.0707],
    '350 kcmil': [undefined, 0.0367, undefined, 0.0605],
    '400 kcmil': [undefined, 0.0321, undefined, 0.0529],
    '500 kcmil': [undefined, 0.0258, undefined, 0.0424],
  },
}

/**
 * Area of the metal of one conductor.
 *
 * @returns [cmil]; undefined for a size that is not printed
 * @source [NEC-CH9-T8] chapter 9, table 8
 */
export const circularMils = (size: string): number | undefined => cellOf(TABLE_8_AREA, size, 'area')

/**
 * Direct-current resistance of one conductor at 75 °C, one way.
 *
 * @returns [Ω/kft]; undefined where it is not printed
 * @source [NEC-CH9-T8] chapter 9, table 8, uncoated
 */
export const directOhms = (conductor: {
  readonly metal: Metal
  readonly stranding: Stranding
  readonly size: string
}): number | undefined =>
  cellOf(TABLE_8_OHMS, conductor.size, `${conductor.stranding} ${conductor.metal}`)

/** Per kelvin, from 75 °C. */
export const TABLE_8_NOTE_2: Readonly<Record<Metal, number>> = {
  copper: 0.00323,
  aluminium: 0.0033,
}

/**
 * A resistance at 75 °C, at another temperature of the conductor.
 *
 * @param at75 - in any unit of resistance
 * @param celsius - of the metal, not of the air [°C], −40 to 150
 * @returns in the same unit
 * @source [NEC-CH9-T8] note 2 to chapter 9, table 8
 */
export const ohmsAt = (at75: number, metal: Metal, celsius: number): number =>
  at75 * (1 + TABLE_8_NOTE_2[metal] * (celsius - 75))
