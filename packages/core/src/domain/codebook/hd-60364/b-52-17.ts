import type { Printed } from '../printed.ts'
import { bandOf } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'HD 60364-5-52',
  edition: '2011',
  clause: 'table B.52.17',
  read: 'page',
}

/**
 * How circuits lie together, touching: bunched or in conduit; in one layer on a wall or
 * unperforated tray, under a ceiling, on a perforated tray, on a ladder.
 */
export type Lying = 'bunched' | 'wall' | 'ceiling' | 'tray' | 'ladder'

/** How many circuits, and the factor by how they lie. */
export interface GroupBand extends Readonly<Record<Lying, number>> {
  readonly upTo: number
}

/**
 * Factor for circuits of one size that lie together and are loaded alike.
 *
 * Above nine in a layer there is no further reduction.
 *
 * @source [HD60364-B.52.17] items 1 to 5
 */
export const GROUPED: readonly GroupBand[] = [
  { upTo: 1, bunched: 1, wall: 1, ceiling: 0.95, tray: 1, ladder: 1 },
  { upTo: 2, bunched: 0.8, wall: 0.85, ceiling: 0.81, tray: 0.88, ladder: 0.87 },
  { upTo: 3, bunched: 0.7, wall: 0.79, ceiling: 0.72, tray: 0.82, ladder: 0.82 },
  { upTo: 4, bunched: 0.65, wall: 0.75, ceiling: 0.68, tray: 0.77, ladder: 0.8 },
  { upTo: 5, bunched: 0.6, wall: 0.73, ceiling: 0.66, tray: 0.75, ladder: 0.8 },
  { upTo: 6, bunched: 0.57, wall: 0.72, ceiling: 0.64, tray: 0.73, ladder: 0.79 },
  { upTo: 7, bunched: 0.54, wall: 0.72, ceiling: 0.63, tray: 0.73, ladder: 0.79 },
  { upTo: 8, bunched: 0.52, wall: 0.71, ceiling: 0.62, tray: 0.72, ladder: 0.78 },
  { upTo: 9, bunched: 0.5, wall: 0.7, ceiling: 0.61, tray: 0.72, ladder: 0.78 },
  { upTo: 12, bunched: 0.45, wall: 0.7, ceiling: 0.61, tray: 0.72, ladder: 0.78 },
  { upTo: 16, bunched: 0.41, wall: 0.7, ceiling: 0.61, tray: 0.72, ladder: 0.78 },
  { upTo: 20, bunched: 0.38, wall: 0.7, ceiling: 0.61, tray: 0.72, ladder: 0.78 },
]

/**
 * What a rating is multiplied by where so many circuits lie together: of the next greater printed
 * count.
 *
 * @param circuits - whole, from 1
 * @returns [1], undefined above 20
 * @source [HD60364-B.52.17] items 1 to 5
 */
export const groupFactorB5217 = (circuits: number, lying: Lying): number | undefined =>
  bandOf(GROUPED, circuits)?.[lying]
