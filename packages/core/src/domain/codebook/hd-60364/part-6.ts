import type { Printed } from '../printed.ts'
import { bandOf } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'HD 60364-6',
  edition: '2016',
  clause: 'table 6.1',
  read: 'page',
}

/** Limit of the nominal voltage [V], and what insulation is tested with and must have. */
export interface InsulationBand {
  readonly upTo: number
  /** [V], direct. */
  readonly test: number
  /** [MΩ] */
  readonly megohms: number
}

/**
 * Test voltage and least insulation resistance; the first line is for separated extra-low voltage
 * only.
 *
 * Editions before 2008 asked for half: 0.25 and 0.5 MΩ.
 *
 * @source [HD60364-6] table 6.1
 */
export const INSULATION: readonly InsulationBand[] = [
  { upTo: 50, test: 250, megohms: 0.5 },
  { upTo: 500, test: 500, megohms: 1 },
  { upTo: Number.POSITIVE_INFINITY, test: 1000, megohms: 1 },
]

/**
 * The line of the table for a nominal voltage.
 *
 * @param volts - above 0
 * @source [HD60364-6] table 6.1
 */
export const insulationTest = (volts: number): InsulationBand | undefined =>
  bandOf(INSULATION, volts)
