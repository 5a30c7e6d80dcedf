import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

const HEADER = {
  standard: 'NEC',
  edition: '2008',
  clause: 'chapter 9 table 5, THHN, THWN, THWN-2',
  read: 'page',
} as const

/** Over the insulation. */
export const TABLE_5_DIAMETERS: PrintedTable<'THWN-2'> = {
  ...HEADER,
  unit: 'in',
  columns: ['THWN-2'],
  rows: {
    '14 AWG': [0.111],
    '12 AWG': [0.13],
    '10 AWG': [0.164],
    '8 AWG': [0.216],
    '6 AWG': [0.254],
    '4 AWG': [0.324],
    '3 AWG': [0.352],
    '2 AWG': [0.384],
    '1 AWG': [0.446],
    '1/0 AWG': [0.486],
    '2/0 AWG': [0.532],
    '3/0 AWG': [0.584],
    '4/0 AWG': [0.642],
  },
}

export const TABLE_5_AREAS: PrintedTable<'THWN-2'> = {
  ...HEADER,
  unit: 'in²',
  columns: ['THWN-2'],
  rows: {
    '14 AWG': [0.0097],
    '12 AWG': [0.0133],
    '10 AWG': [0.0211],
    '8 AWG': [0.0366],
    '6 AWG': [0.0507],
    '4 AWG': [0.0824],
    '3 AWG': [0.0973],
    '2 AWG': [0.1158],
    '1 AWG': [0.1562],
    '1/0 AWG': [0.1855],
    '2/0 AWG': [0.2223],
    '3/0 AWG': [0.2679],
    '4/0 AWG': [0.3237],
  },
}

/** The thickest insulation that building wire of up to 90 °C in a conduit is sold with, and all at 60 °C. */
export const TABLE_5_THICK: PrintedTable<'TW'> = {
  standard: 'NEC',
  edition: '2020',
  clause: 'chapter 9 table 5, TW, THHW, THW, THW-2',
  read: 'memory',
  unit: 'in²',
  columns: ['TW'],
  rows: {
    '14 AWG': [0.0139],
    '12 AWG': [0.0181],
    '10 AWG': [0.0243],
    '8 AWG': [0.0437],
    '6 AWG': [0.0726],
    '4 AWG': [0.0973],
    '3 AWG': [0.1134],
    '2 AWG': [0.1333],
    '1 AWG': [0.1901],
  },
}

/** Types of insulation that stand for the thin and the thick ones. */
export type InsulationType = 'THWN-2' | 'TW'

/**
 * Area that one conductor takes in a conduit.
 *
 * @returns [in²]; undefined for a size that is not printed
 * @source [NEC-CH9-T5] chapter 9, table 5
 */
export const conductorArea = (size: string, type: InsulationType = 'THWN-2'): number | undefined =>
  type === 'TW' ? cellOf(TABLE_5_THICK, size, type) : cellOf(TABLE_5_AREAS, size, type)
