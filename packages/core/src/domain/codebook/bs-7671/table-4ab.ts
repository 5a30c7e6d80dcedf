import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'BS 7671',
  edition: '2018',
  clause: 'table 4Ab',
  read: 'page',
}

/** What the circuit serves; a tub is "other". */
export type DropUse = 'lighting' | 'other'

/** From the public low-voltage network, or from a private low-voltage supply. */
export type DropSupply = 'public' | 'private'

/** Greatest drop from the origin to the load [% of nominal]. @source [BS7671-4AB] */
export const DROP_PERCENT: Readonly<Record<DropSupply, Readonly<Record<DropUse, number>>>> = {
  public: { lighting: 3, other: 5 },
  private: { lighting: 6, other: 8 },
}

/** More is allowed for what lies beyond so many metres, up to a cap. @source [BS7671-4AB] note */
export const LONG_RUN = { beyondMetres: 100, percentPerMetre: 0.005, capPercent: 0.5 } as const

/**
 * Greatest drop from the origin to the load.
 *
 * @param metres - length of the wiring system, one way
 * @returns [% of nominal]
 * @source [BS7671-4AB] with its note on runs over 100 m
 */
export function dropLimit4Ab(supply: DropSupply, use: DropUse, metres: number): number {
  const beyond = Math.max(0, metres - LONG_RUN.beyondMetres) * LONG_RUN.percentPerMetre
  return DROP_PERCENT[supply][use] + Math.min(beyond, LONG_RUN.capPercent)
}
