import { fillPercent, wholeConductors } from './chapter-9-table-1.ts'
import type { AreaColumn, Conduit } from './chapter-9-table-4.ts'
import { conduitArea } from './chapter-9-table-4.ts'
import type { InsulationType } from './chapter-9-table-5.ts'
import { conductorArea } from './chapter-9-table-5.ts'

/** A conduit as it is sold. */
export interface ConduitPiece {
  readonly conduit: Conduit
  readonly tradeSize: string
}

/**
 * Area that so many conductors may take in a conduit.
 *
 * @returns [in²]; undefined for a size that is not printed
 * @source [NEC-CH9-T1] chapter 9, table 1; [NEC-CH9-T4] chapter 9, table 4
 */
export const fillLimit = (piece: ConduitPiece, count: number): number | undefined => {
  const percent = fillPercent(count)
  return percent && conduitArea(piece.conduit, piece.tradeSize, `${percent} %` as AreaColumn)
}

/**
 * What conductors take in a conduit, and what they may.
 *
 * @param sizes - one per conductor, earth included
 * @returns both [in²]; undefined where a table has no such row
 * @source [NEC-CH9-T5] chapter 9, table 5, added up
 */
export function conduitFill(
  piece: ConduitPiece,
  sizes: readonly string[],
  type: InsulationType = 'THWN-2',
): { readonly taken: number; readonly limit: number } | undefined {
  const areas = sizes.map(size => conductorArea(size, type))
  const limit = fillLimit(piece, sizes.length)
  if (limit === undefined || areas.includes(undefined)) return undefined
  return { taken: areas.reduce<number>((sum, area) => sum + (area ?? 0), 0), limit }
}

/**
 * The most conductors of one size and of type THWN-2 in a conduit.
 *
 * By the printed areas: annex C, which rounds otherwise, allows one more of 6 AWG in EMT 1-1/4.
 *
 * @returns 0 where not even one fits; undefined where a table has no such row
 * @source [NEC-CH9-T1] notes 1 and 7 to the tables of chapter 9, which informative annex C works out
 */
export function mostConductors(piece: ConduitPiece, size: string): number | undefined {
  const area = conductorArea(size)
  const limits = [3, 2, 1].map(count => fillLimit(piece, count))
  if (area === undefined || limits.includes(undefined)) return undefined
  const [many = 0, two = 0, one = 0] = limits.map(limit => wholeConductors((limit ?? 0) / area))
  if (many >= 3) return many
  if (two >= 2) return 2
  return one >= 1 ? 1 : 0
}
