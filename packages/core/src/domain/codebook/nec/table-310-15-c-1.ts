import type { Banded } from './banded.ts'
import { bandIn } from './banded.ts'

/** Printed from four conductors on; up to three nothing is taken off. */
export const TABLE_310_15_C_1: Banded<{ readonly upTo: number; readonly percent: number }> = {
  standard: 'NEC',
  edition: '2020',
  clause: 'table 310.15(C)(1)',
  read: 'page',
  bandUnit: 'conductors',
  unit: '%',
  bands: [
    { upTo: 3, percent: 100 },
    { upTo: 6, percent: 80 },
    { upTo: 9, percent: 70 },
    { upTo: 20, percent: 50 },
    { upTo: 30, percent: 45 },
    { upTo: 40, percent: 40 },
    { upTo: Number.POSITIVE_INFINITY, percent: 35 },
  ],
}

/**
 * Share of the ampacity that is left where several loaded conductors share a raceway or a cable.
 *
 * Spare conductors count, earth conductors do not; nothing is taken off in a nipple up to 24 in.
 *
 * @param loaded - current-carrying conductors, 1 or more
 * @returns [1], 0.35 to 1
 * @source [NEC-310.15-C-1] table 310.15(C)(1)
 */
export const adjustmentFactor = (loaded: number): number | undefined => {
  const band = bandIn(TABLE_310_15_C_1, loaded)
  return band && band.percent / 100
}
