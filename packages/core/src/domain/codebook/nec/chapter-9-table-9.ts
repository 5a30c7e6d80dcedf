import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'
import type { Metal } from './table-310-16.ts'

export type RacewayColumn = 'PVC' | 'steel'
export type AlternatingColumn =
  | `X ${RacewayColumn}`
  | `R ${Metal} ${RacewayColumn}`
  | `Z ${Metal} ${RacewayColumn}`

const HEADER = {
  standard: 'NEC',
  edition: '2020',
  clause: 'chapter 9 table 9',
  read: 'page',
  columns: [
    'X PVC',
    'X steel',
    'R copper PVC',
    'R copper steel',
    'R aluminium PVC',
    'R aluminium steel',
    'Z copper PVC',
    'Z copper steel',
    'Z aluminium PVC',
    'Z aluminium steel',
  ],
} as const

const NONE = undefined

/**
 * To neutral, three phases, 60 Hz, 75 °C, three single conductors in conduit; Z at a power factor of
 * 0.85. The columns for aluminium conduit are left out. One copy prints 0.71 for 6 AWG aluminium in
 * steel, Z: two others, and R and X, give the 0.72 used here.
 */
export const TABLE_9: PrintedTable<AlternatingColumn> = {
  ...HEADER,
  unit: 'Ω/kft',
  rows: {
    '14 AWG': [0.058, 0.073, 3.1, 3.1, NONE, NONE, 2.7, 2.7, NONE, NONE],
    '12 AWG': [0.054, 0.068, 2, 2, 3.2, 3.2, 1.7, 1.7, 2.8, 2.8],
    '10 AWG': [0.05, 0.063, 1.2, 1.2, 2, 2, 1.1, 1.1, 1.8, 1.8],
    '8 AWG': [0.052, 0.065, 0.78, 0.78, 1.3, 1.3, 0.69, 0.7, 1.1, 1.1],
    '6 AWG': [0.051, 0.064, 0.49, 0.49, 0.81, 0.81, 0.44, 0.45, 0.71, 0.72],
    '4 AWG': [0.048, 0.06, 0.31, 0.31, 0.51, 0.51, 0.29, 0.3, 0.46, 0.46],
    '3 AWG': [0.047, 0.059, 0.25, 0.25, 0.4, 0.4, 0.23, 0.24, 0.37, 0.37],
    '2 AWG': [0.045, 0.057, 0.19, 0.2, 0.32, 0.32, 0.19, 0.2, 0.3, 0.3],
    '1 AWG': [0.046, 0.057, 0.15, 0.16, 0.25, 0.25, 0.16, 0.16, 0.24, 0.25],
    '1/0 AWG': [0.044, 0.055, 0.12, 0.12, 0.2, 0.2, 0.13, 0.13, 0.19, 0.2],
    '2/0 AWG': [0.043, 0.054, 0.1, 0.1, 0.16, 0.16, 0.11, 0.11, 0.16, 0.16],
    '3/0 AWG': [0.042, 0.052, 0.077, 0.079, 0.13, 0.13, 0.088, 0.094, 0.13, 0.14],
    '4/0 AWG': [0.041, 0.051, 0.062, 0.063, 0.1, 0.1, 0.074, 0.08, 0.11, 0.11],
  },
}

/** The metric lines of the same table, for a check; read up to 1/0 AWG. */
export const TABLE_9_METRIC: PrintedTable<AlternatingColumn> = {
  ...HEADER,
  unit: 'Ω/km',
  rows: {
    '14 AWG': [0.19, 0.24, 10.2, 10.2, NONE, NONE, 8.9, 8.9, NONE, NONE],
    '12 AWG': [0.177, 0.223, 6.6, 6.6, 10.5, 10.5, 5.6, 5.6, 9.2, 9.2],
    '10 AWG': [0.164, 0.207, 3.9, 3.9, 6.6, 6.6, 3.6, 3.6, 5.9, 5.9],
    '8 AWG': [0.171, 0.213, 2.56, 2.56, 4.3, 4.3, 2.26, 2.3, 3.6, 3.6],
    '6 AWG': [0.167, 0.21, 1.61, 1.61, 2.66, 2.66, 1.44, 1.48, 2.33, 2.36],
    '4 AWG': [0.157, 0.197, 1.02, 1.02, 1.67, 1.67, 0.95, 0.98, 1.51, 1.51],
    '3 AWG': [0.154, 0.194, 0.82, 0.82, 1.31, 1.31, 0.75, 0.79, 1.21, 1.21],
    '2 AWG': [0.148, 0.187, 0.62, 0.66, 1.05, 1.05, 0.62, 0.66, 0.98, 0.98],
    '1 AWG': [0.151, 0.187, 0.49, 0.52, 0.82, 0.82, 0.52, 0.52, 0.79, 0.82],
    '1/0 AWG': [0.144, 0.18, 0.39, 0.39, 0.66, 0.66, 0.43, 0.43, 0.62, 0.66],
  },
}

/** Of one conductor to neutral, in one unit. */
export interface LineOhms {
  readonly resistance: number
  readonly reactance: number
}

/**
 * Alternating-current resistance and reactance of one conductor in conduit at 75 °C, 60 Hz.
 *
 * @returns both [Ω/kft], to neutral; undefined where the table has no such row
 * @source [NEC-CH9-T9] chapter 9, table 9
 */
export function lineOhms(line: {
  readonly metal: Metal
  readonly raceway: RacewayColumn
  readonly size: string
}): LineOhms | undefined {
  const resistance = cellOf(TABLE_9, line.size, `R ${line.metal} ${line.raceway}`)
  const reactance = cellOf(TABLE_9, line.size, `X ${line.raceway}`)
  return resistance === undefined || reactance === undefined ? undefined : { resistance, reactance }
}

/**
 * Ohms that tell the volt drop of a line to neutral: R cos + X sin.
 *
 * Printed R and X have two figures, so the printed Z differs by up to 5 %.
 *
 * @param powerFactor - of the load, lagging [1], 0 to 1
 * @returns in the unit of the line
 * @source [NEC-CH9-T9] note 2 to chapter 9, table 9
 */
export const effectiveOhms = ({ resistance, reactance }: LineOhms, powerFactor: number): number =>
  resistance * powerFactor + reactance * Math.sqrt(1 - powerFactor ** 2)
