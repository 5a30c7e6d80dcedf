import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'HD 60364-5-52',
  edition: '2011',
  clause: 'table G.52.1',
  read: 'page',
}

/**
 * Greatest drop from the origin to the load, by supply and use [% of nominal].
 *
 * @source [HD60364-G.52.1]
 */
export const DROP_PERCENT = {
  public: { lighting: 3, other: 5 },
  private: { lighting: 6, other: 8 },
} as const

/**
 * More is allowed for what lies beyond so many metres, up to a cap.
 *
 * @source [HD60364-G.52.1] note
 */
export const LONG_RUN = { beyondMetres: 100, percentPerMetre: 0.005, capPercent: 0.5 } as const

/**
 * Greatest drop from the origin to the load.
 *
 * @param metres - length of the wiring system, one way
 * @returns [% of nominal]
 * @source [HD60364-G.52.1] with its note on runs over 100 m
 */
export function dropLimitG521(
  supply: keyof typeof DROP_PERCENT,
  use: keyof (typeof DROP_PERCENT)['public'],
  metres: number,
): number {
  const beyond = Math.max(0, metres - LONG_RUN.beyondMetres) * LONG_RUN.percentPerMetre
  return DROP_PERCENT[supply][use] + Math.min(beyond, LONG_RUN.capPercent)
}
