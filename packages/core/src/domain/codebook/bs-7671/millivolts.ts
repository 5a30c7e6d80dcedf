import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/** Out and back in one circuit, or between the lines of three phases. */
export type DropColumn = 'single-phase' | 'three-phase'

/**
 * Drop per ampere and metre at 70 °C, thermoplastic, already out and back.
 *
 * Impedance of a two-core, and of a three- or four-core cable; from 25 mm² on the armoured table's.
 *
 * @source [BS7671-4D2B] unarmoured to 16 mm²; armoured, table 4D4B, from 25 mm²
 */
export const MILLIVOLTS_THERMOPLASTIC: PrintedTable<DropColumn> = {
  standard: 'BS 7671',
  edition: '2018',
  clause: 'tables 4D2B and 4D4B',
  read: 'page',
  unit: 'mV/A/m',
  columns: ['single-phase', 'three-phase'],
  rows: {
    '1': [44, 38],
    '1.5': [29, 25],
    '2.5': [18, 15],
    '4': [11, 9.5],
    '6': [7.3, 6.4],
    '10': [4.4, 3.8],
    '16': [2.8, 2.4],
    '25': [1.75, 1.5],
    '35': [1.25, 1.1],
  },
}

/**
 * Drop per ampere and metre at 90 °C, thermosetting, already out and back.
 *
 * Impedance of a two-core, and of a three- or four-core cable; from 25 mm² on the armoured table's.
 *
 * @source [BS7671-4E2B] unarmoured to 16 mm²; armoured, table 4E4B, from 25 mm²
 */
export const MILLIVOLTS_THERMOSETTING: PrintedTable<DropColumn> = {
  standard: 'BS 7671',
  edition: '2008',
  clause: 'tables 4E2B and 4E4B',
  read: 'page',
  unit: 'mV/A/m',
  columns: ['single-phase', 'three-phase'],
  rows: {
    '1': [46, 40],
    '1.5': [31, 27],
    '2.5': [19, 16],
    '4': [12, 10],
    '6': [7.9, 6.8],
    '10': [4.7, 4],
    '16': [2.9, 2.5],
    '25': [1.9, 1.65],
    '35': [1.35, 1.15],
  },
}

/** Resistive and reactive part of the drop, in phase with the current and across it. */
export type DropPart = 'r' | 'x'

/**
 * The two parts, single-phase at 70 °C; below 25 mm² there is one figure only.
 *
 * @source [BS7671-4D2B] 4D4B
 */
export const PARTS_THERMOPLASTIC: PrintedTable<DropPart> = {
  standard: 'BS 7671',
  edition: '2018',
  clause: 'table 4D4B',
  read: 'page',
  unit: 'mV/A/m',
  columns: ['r', 'x'],
  rows: { '25': [1.75, 0.17], '35': [1.25, 0.165] },
}

/** The two parts, single-phase at 90 °C. @source [BS7671-4E2B] 4E4B */
export const PARTS_THERMOSETTING: PrintedTable<DropPart> = {
  standard: 'BS 7671',
  edition: '2008',
  clause: 'table 4E4B',
  read: 'page',
  unit: 'mV/A/m',
  columns: ['r', 'x'],
  rows: { '25': [1.85, 0.16], '35': [1.35, 0.155] },
}

/** Of a load, cable and run whose drop is asked for. */
export interface DropCase {
  readonly amps: number
  /** One way: the tables hold both ways already. */
  readonly metres: number
  readonly mm2: number
}

/**
 * Volts lost along a cable at its full temperature: current times one-way length times the figure.
 *
 * @returns [V], undefined for a size that is not printed
 * @source [BS7671-4D2B] and [BS7671-4E2B], by appendix 4 section 6
 */
export function droppedVolts(
  table: PrintedTable<DropColumn>,
  column: DropColumn,
  { amps, metres, mm2 }: DropCase,
): number | undefined {
  const millivolts = cellOf(table, String(mm2), column)
  return millivolts === undefined ? undefined : (millivolts * amps * metres) / 1000
}
