import type { Banded } from './banded.ts'
import { bandIn } from './banded.ts'

/** Part of a conduit that conductors may take, by their number. */
export const TABLE_1: Banded<{ readonly upTo: number; readonly percent: number }> = {
  standard: 'NEC',
  edition: '2020',
  clause: 'chapter 9 table 1',
  read: 'page',
  bandUnit: 'conductors',
  unit: '%',
  bands: [
    { upTo: 1, percent: 53 },
    { upTo: 2, percent: 31 },
    { upTo: Number.POSITIVE_INFINITY, percent: 40 },
  ],
}

/** A short piece between two enclosures: note 4 to the table. */
export const NIPPLE = { percent: 60, inches: 24 } as const

/**
 * Part of a conduit that so many conductors may take. Earth conductors count.
 *
 * @param count - conductors of any kind, 1 or more
 * @returns [%]
 * @source [NEC-CH9-T1] chapter 9, table 1
 */
export const fillPercent = (count: number): number | undefined => bandIn(TABLE_1, count)?.percent

/**
 * Whole conductors, all of one size, for a quotient of areas: from 0.8 on it counts as one more.
 *
 * @source [NEC-CH9-T1] note 7 to the tables of chapter 9
 */
export const wholeConductors = (quotient: number): number => Math.floor(quotient + 0.2 + 1e-9)
