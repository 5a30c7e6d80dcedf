import type { Printed } from '../printed.ts'
import type { DwellingLoads } from './section-220-82.ts'
import { generalLoad, stepped } from './section-220-82.ts'

/** Whether an existing service is enough for loads that are added. */
export const SECTION_220_83: Printed & {
  readonly unit: string
  readonly first: number
  readonly restPercent: number
} = {
  standard: 'NEC',
  edition: '2017 and 2020',
  clause: '220.83',
  read: 'page',
  unit: 'VA and %',
  first: 8000,
  restPercent: 40,
}

/**
 * Calculated load of an existing dwelling with what is added.
 *
 * Part (A), nothing of heating or cooling added: the code names no place for the existing heating
 * and cooling. Give it among the plates, or as `heating` for the larger result of part (B).
 *
 * @param heating - what counts of heating or cooling, its share taken already [VA], for part (B)
 * @returns [VA]
 * @source [NEC-220.83] 220.83(A) and (B)
 */
export const existingDwellingLoad = (loads: DwellingLoads, heating = 0): number =>
  stepped(generalLoad(loads), SECTION_220_83.first, SECTION_220_83.restPercent) + heating
