import { TABLE_4 } from '../../../../src/domain/codebook/as-nzs/table-4.ts'
import { TABLE_5 } from '../../../../src/domain/codebook/as-nzs/table-5.ts'
import { TABLE_10 } from '../../../../src/domain/codebook/as-nzs/table-10.ts'
import { TABLE_11 } from '../../../../src/domain/codebook/as-nzs/table-11.ts'
import { TABLE_4D1A } from '../../../../src/domain/codebook/bs-7671/table-4d1a.ts'
import { TABLE_4D2A } from '../../../../src/domain/codebook/bs-7671/table-4d2a.ts'
import { TABLE_4D4A } from '../../../../src/domain/codebook/bs-7671/table-4d4a.ts'
import { TABLE_4D5 } from '../../../../src/domain/codebook/bs-7671/table-4d5.ts'
import { TABLE_4E1A } from '../../../../src/domain/codebook/bs-7671/table-4e1a.ts'
import { TABLE_4E4A } from '../../../../src/domain/codebook/bs-7671/table-4e4a.ts'
import { TABLE_B_52_2 } from '../../../../src/domain/codebook/hd-60364/b-52-2.ts'
import { TABLE_B_52_3 } from '../../../../src/domain/codebook/hd-60364/b-52-3.ts'
import { TABLE_B_52_4 } from '../../../../src/domain/codebook/hd-60364/b-52-4.ts'
import { TABLE_B_52_5 } from '../../../../src/domain/codebook/hd-60364/b-52-5.ts'
import type { PrintedTable } from '../../../../src/domain/codebook/printed.ts'
import { cellOf } from '../../../../src/domain/codebook/printed.ts'

/** Every table of what cables carry. */
export const CURRENT_TABLES: readonly PrintedTable<string>[] = [
  TABLE_4D1A,
  TABLE_4D2A,
  TABLE_4D4A,
  TABLE_4D5,
  TABLE_4E1A,
  TABLE_4E4A,
  TABLE_B_52_2,
  TABLE_B_52_3,
  TABLE_B_52_4,
  TABLE_B_52_5,
  TABLE_4,
  TABLE_5,
  TABLE_10,
  TABLE_11,
]

/** Sizes of a table, the least first. */
export const sizesOf = ({ rows }: PrintedTable<string>): readonly string[] =>
  Object.keys(rows).sort((a, b) => Number(a) - Number(b))

/** One column, by size; a dash would be no number. */
export const columnOf = (table: PrintedTable<string>, column: string): readonly number[] =>
  sizesOf(table).map(size => cellOf(table, size, column) ?? Number.NaN)

type Place = readonly [table: PrintedTable<string>, column: string]

/** Sizes at which one column is above another, which cools better. */
export const rises = (worse: Place, better: Place): readonly string[] =>
  sizesOf(worse[0]).filter(size => {
    const [lesser, greater] = [worse, better].map(([table, column]) => cellOf(table, size, column))
    return lesser !== undefined && greater !== undefined && lesser > greater
  })
