import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'AS/NZS 3000',
  edition: '2018',
  clause: 'table C1, load group G, one living unit',
  read: 'page',
}

/**
 * Shares that are counted of the greatest heater of each kind, and of all others.
 *
 * @source [ASNZS3000-C1]
 */
export const HEATER_SHARES = { greatest: 0.75, others: 0.25 } as const

/** Rated currents of heaters at one living unit [A]. */
export interface WaterHeaters {
  readonly spas: readonly number[]
  readonly pools: readonly number[]
}

/**
 * What spa and pool heaters count for in the maximum demand of a dwelling.
 *
 * @returns [A]
 * @source [ASNZS3000-C1] load group G: 75 % of the greatest spa and of the greatest pool, 25 % of
 *   the rest
 */
export function heaterDemand({ spas, pools }: WaterHeaters): number {
  const greatest = Math.max(0, ...spas) + Math.max(0, ...pools)
  const all = [...spas, ...pools].reduce((sum, each) => sum + each, 0)
  return HEATER_SHARES.greatest * greatest + HEATER_SHARES.others * (all - greatest)
}
