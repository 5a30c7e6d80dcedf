import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/**
 * Least copper earth conductor by the copper active conductor. The first two rows only as a core of
 * the cable: on its own an earth is 2.5 mm² at least.
 *
 * @source [ASNZS3000-5.1] table 5.1, copper actives
 */
export const TABLE_5_1: PrintedTable<'earth'> = {
  standard: 'AS/NZS 3000',
  edition: '2018',
  clause: 'table 5.1',
  read: 'page',
  unit: 'mm²',
  columns: ['earth'],
  rows: {
    '1': [1],
    '1.5': [1.5],
    '2.5': [2.5],
    '4': [2.5],
    '6': [2.5],
    '10': [4],
    '16': [6],
    '25': [6],
    '35': [10],
  },
}

/** Least earth conductor that is no core of the cable [mm²]. @source [ASNZS3000-5.1] 5.3.3.4 */
export const LEAST_SEPARATE_EARTH = 2.5

/**
 * Least copper earth conductor of a circuit.
 *
 * @param active - a printed size of the active conductor, 1 to 35 [mm²]
 * @returns [mm²], undefined for a size that is not printed
 * @source [ASNZS3000-5.1] table 5.1, copper actives
 */
export function leastEarth3000(
  active: number,
  earth: 'core of the cable' | 'separate',
): number | undefined {
  const printed = cellOf(TABLE_5_1, String(active), 'earth')
  if (printed === undefined || earth === 'core of the cable') return printed
  return Math.max(printed, LEAST_SEPARATE_EARTH)
}
