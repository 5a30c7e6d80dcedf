import type { Printed } from '../printed.ts'
import { bandOf } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'HD 60364-5-52',
  edition: '2011',
  clause: 'table B.52.15',
  read: 'page',
}

/** Limit of the ground [°C], and the factor by insulation. */
export interface GroundBand {
  readonly upTo: number
  readonly thermoplastic: number
  readonly thermosetting: number
}

/**
 * Factor for the ground around a cable or its duct, 1 at 20 °C.
 *
 * @source [HD60364-B.52.15] cables in ground
 */
export const GROUND: readonly GroundBand[] = [
  { upTo: 10, thermoplastic: 1.1, thermosetting: 1.07 },
  { upTo: 15, thermoplastic: 1.05, thermosetting: 1.04 },
  { upTo: 20, thermoplastic: 1, thermosetting: 1 },
  { upTo: 25, thermoplastic: 0.95, thermosetting: 0.96 },
  { upTo: 30, thermoplastic: 0.89, thermosetting: 0.93 },
  { upTo: 35, thermoplastic: 0.84, thermosetting: 0.89 },
  { upTo: 40, thermoplastic: 0.77, thermosetting: 0.85 },
  { upTo: 45, thermoplastic: 0.71, thermosetting: 0.8 },
  { upTo: 50, thermoplastic: 0.63, thermosetting: 0.76 },
  { upTo: 55, thermoplastic: 0.55, thermosetting: 0.71 },
  { upTo: 60, thermoplastic: 0.45, thermosetting: 0.65 },
]

/**
 * What a rating is multiplied by where the ground is so warm: of the next warmer line.
 *
 * @param celsius - of the ground [°C]; below 10 the line of 10 holds
 * @returns [1], undefined above the last line
 * @source [HD60364-B.52.15] cables in ground
 */
export const groundFactorB5215 = (
  celsius: number,
  insulation: 'thermoplastic' | 'thermosetting',
): number | undefined => bandOf(GROUND, celsius)?.[insulation]
