import type { Banded } from '../nec/banded.ts'
import { bandIn } from '../nec/banded.ts'

/**
 * Conductors without a lead sheath. Only the 40 % was found on a page; the others, from memory, are
 * those of the NEC. One page swaps them.
 */
export const CE_TABLE_8: Banded<{ readonly upTo: number; readonly percent: number }> = {
  standard: 'CE Code',
  edition: '2024',
  clause: 'table 8',
  read: 'memory',
  bandUnit: 'conductors',
  unit: '%',
  bands: [
    { upTo: 1, percent: 53 },
    { upTo: 2, percent: 31 },
    { upTo: Number.POSITIVE_INFINITY, percent: 40 },
  ],
}

/**
 * Part of a conduit that so many conductors may take.
 *
 * @param count - conductors or cables, 1 or more
 * @returns [%]
 * @source [CEC-T8] table 8
 */
export const ceFillPercent = (count: number): number | undefined =>
  bandIn(CE_TABLE_8, count)?.percent
