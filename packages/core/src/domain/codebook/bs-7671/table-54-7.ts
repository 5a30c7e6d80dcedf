import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'BS 7671',
  edition: '2018',
  clause: 'table 54.7',
  read: 'page',
}

/**
 * Least copper protective conductor by the line conductor, with no adiabatic sum.
 *
 * @param line - cross-section of the line conductor [mm²]
 * @returns [mm²]: the same to 16, then 16 to 35, then half
 * @source [BS7671-54.7] same material
 */
export function leastProtective(line: number): number {
  if (line <= 16) return line
  return line <= 35 ? 16 : line / 2
}

/** Insulation of a copper protective conductor: 70 °C thermoplastic, or 90 °C thermosetting. */
export type ProtectiveInsulation = 'thermoplastic' | 'thermosetting'

/**
 * k of a copper protective conductor, by how it lies and its insulation, up to 300 mm².
 *
 * A separate one starts a fault at 30 °C, a core of the cable at its full temperature. The tables
 * are numbered 54.2 and 54.3 here; one page calls them 54.3 and 54.4.
 *
 * @source [BS7671-54.3] tables 54.2 and 54.3
 */
export const K_COPPER: Readonly<
  Record<'separate' | 'core', Readonly<Record<ProtectiveInsulation, number>>>
> = {
  separate: { thermoplastic: 143, thermosetting: 176 },
  core: { thermoplastic: 115, thermosetting: 143 },
}

/**
 * k of steel wire armour as protective conductor (from memory).
 *
 * @source [BS7671-54.4] table 54.4
 */
export const K_STEEL_ARMOUR: Readonly<Record<ProtectiveInsulation, number>> = {
  thermoplastic: 51,
  thermosetting: 46,
}

/**
 * Least cross-section that a fault does not overheat.
 *
 * All heat stays in the conductor: for faults up to 5 s.
 *
 * @param amps - fault current [A]
 * @param seconds - until it is off, 0.1 to 5
 * @param k - of conductor and insulation
 * @returns [mm²]
 * @source [BS7671-54.3] 543.1.3, S = √(I²t)/k
 */
export const adiabaticSize = (amps: number, seconds: number, k: number): number =>
  Math.sqrt(amps * amps * seconds) / k
