import type { Printed } from '../printed.ts'
import { bandOf } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'HD 60364-5-52',
  edition: '2011',
  clause: 'table B.52.14',
  read: 'page',
}

/**
 * Limit of the air [°C], and the factor by insulation; a dash where the cable may carry nothing.
 */
export interface AmbientBand {
  readonly upTo: number
  readonly thermoplastic: number | undefined
  readonly thermosetting: number | undefined
}

/**
 * Factor for the air around a cable, 1 at 30 °C; thermoplastic for 70 °C, thermosetting for 90 °C.
 *
 * @source [HD60364-B.52.14] cables in air
 */
export const AMBIENT: readonly AmbientBand[] = [
  { upTo: 10, thermoplastic: 1.22, thermosetting: 1.15 },
  { upTo: 15, thermoplastic: 1.17, thermosetting: 1.12 },
  { upTo: 20, thermoplastic: 1.12, thermosetting: 1.08 },
  { upTo: 25, thermoplastic: 1.06, thermosetting: 1.04 },
  { upTo: 30, thermoplastic: 1, thermosetting: 1 },
  { upTo: 35, thermoplastic: 0.94, thermosetting: 0.96 },
  { upTo: 40, thermoplastic: 0.87, thermosetting: 0.91 },
  { upTo: 45, thermoplastic: 0.79, thermosetting: 0.87 },
  { upTo: 50, thermoplastic: 0.71, thermosetting: 0.82 },
  { upTo: 55, thermoplastic: 0.61, thermosetting: 0.76 },
  { upTo: 60, thermoplastic: 0.5, thermosetting: 0.71 },
  { upTo: 65, thermoplastic: undefined, thermosetting: 0.65 },
  { upTo: 70, thermoplastic: undefined, thermosetting: 0.58 },
  { upTo: 75, thermoplastic: undefined, thermosetting: 0.5 },
  { upTo: 80, thermoplastic: undefined, thermosetting: 0.41 },
]

/**
 * What a rating is multiplied by where the air is so warm: of the next warmer line, never between
 * two.
 *
 * @param celsius - of the air [°C]; below 10 the line of 10 holds
 * @returns [1], undefined above the last line
 * @source [HD60364-B.52.14] cables in air
 */
export const ambientFactorB5214 = (
  celsius: number,
  insulation: 'thermoplastic' | 'thermosetting',
): number | undefined => bandOf(AMBIENT, celsius)?.[insulation]
