import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'AS/NZS 3000',
  edition: '2018',
  clause: '6.3',
  read: 'page',
}

/**
 * How far the zones of a swimming pool reach, level from the water's edge and on from there [m].
 *
 * The zones of a small spa of its own are another figure of the book, which was not read: absent.
 *
 * @source [ASNZS3000-6.3] 6.3.2
 */
export const POOL_ZONE_METRES = { first: 2, second: 1.5 } as const

/**
 * Greatest extra-low voltage in the water [V]; its source stands outside.
 *
 * @source [ASNZS3000-6.3] 6.3.3
 */
export const IN_WATER_VOLTS = { alternating: 12, direct: 30 } as const

/** Least degree of protection against water, by zone. @source [ASNZS3000-6.3] 6.3.4 */
export const POOL_ZONE_IP = { 0: 'IPX8', 1: 'IPX5', 2: 'IPX4' } as const

/**
 * Metal that is joined to the bonding: fixed, over so long in any direction, within arm's reach of
 * the edge, level and up [m].
 *
 * @source [ASNZS3000-6.3] 5.6.2.6 with the arm's reach of 1.4
 */
export const BONDED_METAL = { longerThan: 0.1, level: 1.25, up: 2.5 } as const

/**
 * Whether a piece of fixed metal by a tub is joined to the bonding.
 *
 * @source [ASNZS3000-6.3] 5.6.2.6
 */
export const isBonded = (metal: {
  readonly longest: number
  readonly level: number
  readonly up: number
}): boolean =>
  metal.longest > BONDED_METAL.longerThan &&
  metal.level <= BONDED_METAL.level &&
  metal.up <= BONDED_METAL.up
