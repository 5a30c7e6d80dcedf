import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'BS 7671',
  edition: '2018',
  clause: '512.1.5 with 523.1',
  read: 'page',
}

/**
 * What the terminals of equipment are made for, unless they say more [°C].
 *
 * @source [BS7671-512] 512.1.5
 */
export const TERMINAL_CELSIUS = 70

/**
 * Which rating holds for a cable at a terminal: a hotter cable may not bring its heat there.
 *
 * @param at70 - of the same size and method with 70 °C insulation [A]
 * @param at90 - with its own 90 °C insulation [A]
 * @param terminal - what the terminal is made for [°C]
 * @returns [A]
 * @source [BS7671-512] 512.1.5 with 523.1
 */
export const ratingAtTerminal = (at70: number, at90: number, terminal: number): number =>
  terminal >= 90 ? at90 : at70
