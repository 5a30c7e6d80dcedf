import type { Printed } from '../printed.ts'
import { bandOf } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'BS 7671',
  edition: '2018',
  clause: 'table 4C1',
  read: 'page',
}

/**
 * How many circuits lie together, and the factor when bunched or side by side on a wall, touching.
 */
export interface GroupBand {
  readonly upTo: number
  readonly bunched: number
  readonly layer: number
}

/**
 * Factor for circuits of one size that lie together and are loaded alike.
 *
 * The layer on a wall was read in the table of the harmonised document, which is taken to be the
 * same.
 *
 * @source [BS7671-4C1] methods A to F bunched, method C in a layer
 */
export const GROUPED: readonly GroupBand[] = [
  { upTo: 1, bunched: 1, layer: 1 },
  { upTo: 2, bunched: 0.8, layer: 0.85 },
  { upTo: 3, bunched: 0.7, layer: 0.79 },
  { upTo: 4, bunched: 0.65, layer: 0.75 },
  { upTo: 5, bunched: 0.6, layer: 0.73 },
  { upTo: 6, bunched: 0.57, layer: 0.72 },
  { upTo: 7, bunched: 0.54, layer: 0.72 },
  { upTo: 8, bunched: 0.52, layer: 0.71 },
  { upTo: 9, bunched: 0.5, layer: 0.7 },
  { upTo: 10, bunched: 0.48, layer: 0.7 },
  { upTo: 12, bunched: 0.45, layer: 0.7 },
  { upTo: 14, bunched: 0.43, layer: 0.7 },
  { upTo: 16, bunched: 0.41, layer: 0.7 },
  { upTo: 18, bunched: 0.39, layer: 0.7 },
  { upTo: 20, bunched: 0.38, layer: 0.7 },
]

/**
 * What a rating is multiplied by where so many circuits lie together: of the next greater printed
 * count.
 *
 * @param circuits - whole, from 1
 * @returns [1], undefined above 20
 * @source [BS7671-4C1] methods A to F bunched, method C in a layer
 */
export const groupFactor4C1 = (circuits: number, lying: 'bunched' | 'layer'): number | undefined =>
  bandOf(GROUPED, circuits)?.[lying]
