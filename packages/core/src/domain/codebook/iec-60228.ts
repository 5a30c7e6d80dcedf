import type { Printed, PrintedTable } from './printed.ts'
import { cellOf } from './printed.ts'

/** Nominal cross-sections that the tables of this folder go through [mm²]. @source [IEC-60228] */
export const AREAS_MM2: readonly number[] = [1, 1.5, 2.5, 4, 6, 10, 16, 25, 35]

/** Solid and stranded (classes 1 and 2) or flexible (class 5), of plain or of tinned copper. */
export type ConductorClass = 'rigid' | 'flexible' | 'rigid tinned' | 'flexible tinned'

/**
 * Greatest resistance of one conductor at 20 °C.
 *
 * @source [IEC-60228] tables 1 to 3, copper
 */
export const RESISTANCE_20C: PrintedTable<ConductorClass> = {
  standard: 'IEC 60228',
  edition: '2004',
  clause: 'tables 1, 2 and 3',
  read: 'page',
  unit: 'Ω/km',
  columns: ['rigid', 'flexible', 'rigid tinned', 'flexible tinned'],
  rows: {
    '1': [18.1, 19.5, undefined, undefined],
    '1.5': [12.1, 13.3, 12.2, 13.7],
    '2.5': [7.41, 7.98, 7.56, 8.21],
    '4': [4.61, 4.95, 4.7, 5.09],
    '6': [3.08, 3.3, 3.11, 3.39],
    '10': [1.83, 1.91, 1.84, 1.95],
    '16': [1.15, 1.21, 1.16, 1.24],
    '25': [0.727, 0.78, 0.734, 0.795],
    '35': [0.524, undefined, undefined, undefined],
  },
}

/**
 * Greatest resistance of one conductor, one way, at 20 °C.
 *
 * @param mm2 - a printed size, 1 to 35 [mm²]
 * @param metres - length
 * @returns [Ω], undefined for a size that is not printed
 * @source [IEC-60228] tables 1 to 3, copper
 */
export function ohmsAt20C(
  mm2: number,
  metres: number,
  conductor: ConductorClass,
): number | undefined {
  const perKilometre = cellOf(RESISTANCE_20C, String(mm2), conductor)
  return perKilometre === undefined ? undefined : (perKilometre * metres) / 1000
}

/**
 * Resistance of line and protective conductor of one metre of a rigid cable, at 20 °C.
 *
 * @param line - a printed size [mm²]
 * @param protective - a printed size [mm²]
 * @returns [mΩ/m], undefined for a size that is not printed
 * @source [IEC-60228] tables 1 and 2, copper
 */
export function r1PlusR2(line: number, protective: number): number | undefined {
  const r1 = cellOf(RESISTANCE_20C, String(line), 'rigid')
  const r2 = cellOf(RESISTANCE_20C, String(protective), 'rigid')
  return r1 === undefined || r2 === undefined ? undefined : r1 + r2
}

export const PRINTED: Printed = {
  standard: 'IEC 60228',
  edition: '2004',
  clause: 'annex A, table A.1',
  read: 'page',
}

/**
 * What copper has at a temperature, of what it has at 20 °C: 0.4 % a kelvin.
 *
 * The exact rule of copper, 254.5 over 234.5 plus the temperature, lies 0.4 % off at 90 °C.
 *
 * @param celsius - of the copper [°C], 5 to 90
 * @returns [1]
 * @source [IEC-60228] annex A
 */
export const warmed = (celsius: number): number => (230 + celsius) / 250

/**
 * The least size whose cell is not below what is needed: 34 A are not 34.04 A.
 *
 * @param amps - needed, before any factor
 * @returns [mm²], undefined where no printed size is enough
 * @source [IEC-60228] for the sizes in order
 */
export const leastArea = <Column extends string>(
  table: PrintedTable<Column>,
  column: Column,
  amps: number,
): number | undefined =>
  AREAS_MM2.find(mm2 => (cellOf(table, String(mm2), column) ?? -1) * (1 + 1e-9) >= amps)
