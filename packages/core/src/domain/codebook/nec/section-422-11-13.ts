import type { Printed } from '../printed.ts'
import { nextStandard } from './section-240-6.ts'

/** A single appliance without a motor, of more than 13.3 A, and a storage water heater up to 120 gal. */
export const SECTION_422_11_13: Printed & {
  readonly unit: string
  readonly least: number
  readonly most: number
  readonly above: number
} = {
  standard: 'NEC',
  edition: '2014',
  clause: '422.11(E)(3) and 422.13',
  read: 'page',
  unit: '%',
  least: 125,
  most: 150,
  above: 13.3,
}

/**
 * The least and the greatest standard breaker of a storage water heater.
 *
 * The current is not rounded before it is multiplied.
 *
 * @param amps - by the plate [A], more than 13.3
 * @returns both [A]; undefined past 6000 A
 * @source [NEC-422.13] 422.11(E)(3) and 422.13
 */
export const heaterBreakers = (
  amps: number,
): { readonly least: number | undefined; readonly most: number | undefined } => ({
  least: nextStandard((amps * SECTION_422_11_13.least) / 100),
  most: nextStandard((amps * SECTION_422_11_13.most) / 100),
})
