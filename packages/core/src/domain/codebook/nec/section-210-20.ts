import type { Printed } from '../printed.ts'

/** A load that is expected to last so long is taken larger by this share. */
export const CONTINUOUS: Printed & { readonly hours: number; readonly share: number } = {
  standard: 'NEC',
  edition: '2020',
  clause: 'article 100; 210.19(A), 210.20(A), 215.3',
  read: 'page',
  hours: 3,
  share: 1.25,
}

/**
 * The least rating of a breaker, and the least ampacity before corrections, for a load.
 *
 * Not for a breaker that is listed for all of its rating, which is rare below 400 A.
 *
 * @param continuous - lasting three hours or more [A]
 * @param other - [A]
 * @returns [A], not rounded to a standard rating
 * @source [NEC-210.20] 210.19(A) and 210.20(A)
 */
export const leastRating = ({
  continuous,
  other,
}: {
  readonly continuous: number
  readonly other: number
}): number => CONTINUOUS.share * continuous + other

/**
 * The most that a breaker carries for three hours or more.
 *
 * @param breaker - [A]
 * @returns [A], 80 % of it
 * @source [NEC-210.20] 210.20(A)
 */
export const mostContinuous = (breaker: number): number => breaker / CONTINUOUS.share
