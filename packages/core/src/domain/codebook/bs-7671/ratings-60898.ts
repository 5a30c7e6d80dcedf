import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'BS EN 60898-1',
  edition: '2003',
  clause: '5.3.2, preferred values of rated current',
  read: 'page',
}

/** Ratings of breakers for households [A]. @source [IEC-60898] preferred values */
export const BREAKER_RATINGS: readonly number[] = [
  6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125,
]

/**
 * The least breaker that carries a load, undefined above the last.
 *
 * @param amps - of the load [A]
 * @source [IEC-60898]
 */
export const leastBreaker = (amps: number): number | undefined =>
  BREAKER_RATINGS.find(rating => rating * (1 + 1e-9) >= amps)
