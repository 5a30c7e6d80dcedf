import type { Printed } from '../printed.ts'

/** Ratings of fuses and inverse-time breakers. The edition of 2017 prints 601 A among the fuses too. */
export const SECTION_240_6: Printed & {
  readonly unit: string
  readonly ratings: readonly number[]
  readonly fusesOnly: readonly number[]
} = {
  standard: 'NEC',
  edition: '2023',
  clause: '240.6(A)',
  read: 'page',
  unit: 'A',
  ratings: [
    15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300,
    350, 400, 450, 500, 600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
  ],
  fusesOnly: [1, 3, 6, 10],
}

// Exactly 50 A stays 50 A, however it was computed.
const SLACK = 1e-9

/**
 * The smallest standard rating at or above a current.
 *
 * @param amps - [A]
 * @returns [A], from 15; undefined above 6000 A, or for no number
 * @source [NEC-240.6] 240.6(A)
 */
export const nextStandard = (amps: number): number | undefined =>
  SECTION_240_6.ratings.find(rating => amps <= rating * (1 + SLACK))

/**
 * Whether a breaker of this rating is made.
 *
 * @source [NEC-240.6] 240.6(A)
 */
export const isStandard = (amps: number): boolean =>
  SECTION_240_6.ratings.some(rating => Math.abs(amps - rating) <= rating * SLACK)
