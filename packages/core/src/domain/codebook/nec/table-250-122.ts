import type { Banded } from './banded.ts'
import { bandIn } from './banded.ts'
import { circularMils, TABLE_8_AREA } from './chapter-9-table-8.ts'
import type { Metal } from './table-310-16.ts'

type EarthBand = { readonly upTo: number } & Readonly<Record<Metal, string>>

/** The smallest earth conductor by the breaker ahead of it. */
export const TABLE_250_122: Banded<EarthBand> = {
  standard: 'NEC',
  edition: '2020',
  clause: 'table 250.122',
  read: 'page',
  bandUnit: 'A',
  unit: 'AWG or kcmil',
  bands: [
    { upTo: 15, copper: '14 AWG', aluminium: '12 AWG' },
    { upTo: 20, copper: '12 AWG', aluminium: '10 AWG' },
    { upTo: 60, copper: '10 AWG', aluminium: '8 AWG' },
    { upTo: 100, copper: '8 AWG', aluminium: '6 AWG' },
    { upTo: 200, copper: '6 AWG', aluminium: '4 AWG' },
    { upTo: 300, copper: '4 AWG', aluminium: '2 AWG' },
    { upTo: 400, copper: '3 AWG', aluminium: '1 AWG' },
    { upTo: 500, copper: '2 AWG', aluminium: '1/0 AWG' },
    { upTo: 600, copper: '1 AWG', aluminium: '2/0 AWG' },
    { upTo: 800, copper: '1/0 AWG', aluminium: '3/0 AWG' },
    { upTo: 1000, copper: '2/0 AWG', aluminium: '4/0 AWG' },
    { upTo: 1200, copper: '3/0 AWG', aluminium: '250 kcmil' },
  ],
}

/**
 * The smallest earth conductor behind a breaker.
 *
 * Never needed larger than the circuit's own conductors, 250.122(A).
 *
 * @param breaker - [A], up to 1200
 * @returns a size as the tables write it; undefined past the table
 * @source [NEC-250.122] table 250.122
 */
export const earthConductor = (breaker: number, metal: Metal): string | undefined =>
  bandIn(TABLE_250_122, breaker)?.[metal]

/**
 * Part by which an area may fall short of the proportion that is asked [1].
 *
 * Printed areas are rounded to four figures: 6 AWG made 4 AWG asks 16 511 cmil of an earth of
 * 10 AWG, and 8 AWG is printed as 16 510, though the steps of the gauge are the same. 0.1 % covers
 * the rounding and is far less than one gauge, 26 %.
 */
export const SCALING_SLACK = 0.001

/**
 * The smallest earth conductor where the legs were made larger than needed, as against volt drop.
 *
 * It grows in proportion of circular mils, and never over the legs. A strict reading of the printed
 * areas may ask one gauge more, see `SCALING_SLACK`.
 *
 * @param needed - size of the legs that would have done
 * @param chosen - size of the legs as they are, not smaller
 * @returns a size as the tables write it; undefined past the tables
 * @source [NEC-250.122] 250.122(A) and (B); [NEC-CH9-T8] circular mils
 */
export function scaledEarth(legs: {
  readonly breaker: number
  readonly metal: Metal
  readonly needed: string
  readonly chosen: string
}): string | undefined {
  const printed = earthConductor(legs.breaker, legs.metal)
  const earth = printed === undefined ? undefined : circularMils(printed)
  const needed = circularMils(legs.needed)
  const chosen = circularMils(legs.chosen)
  if (earth === undefined || needed === undefined || chosen === undefined) return undefined
  const asked = Math.min(earth * Math.max(1, chosen / needed), chosen)
  return Object.keys(TABLE_8_AREA.rows).find(
    size => (circularMils(size) ?? 0) >= asked * (1 - SCALING_SLACK),
  )
}
