import { expect, test } from 'vitest'
import { CE_RULE_8_104 } from '../../../../../src/domain/codebook/ce-code/rule-8-104.ts'
import { CE_TABLE_2 } from '../../../../../src/domain/codebook/ce-code/table-2.ts'
import { CE_TABLE_4 } from '../../../../../src/domain/codebook/ce-code/table-4.ts'
import { CE_TABLE_5A } from '../../../../../src/domain/codebook/ce-code/table-5a.ts'
import { CE_TABLE_5C } from '../../../../../src/domain/codebook/ce-code/table-5c.ts'
import { CE_TABLE_8 } from '../../../../../src/domain/codebook/ce-code/table-8.ts'
import { CE_RULE_14_104, CE_TABLE_13 } from '../../../../../src/domain/codebook/ce-code/table-13.ts'
import { CE_TABLE_16 } from '../../../../../src/domain/codebook/ce-code/table-16.ts'
import { bandIn } from '../../../../../src/domain/codebook/nec/banded.ts'
import { TABLE_1 } from '../../../../../src/domain/codebook/nec/chapter-9-table-1.ts'
import {
  TABLE_4,
  TABLE_4_DIAMETERS,
} from '../../../../../src/domain/codebook/nec/chapter-9-table-4.ts'
import {
  TABLE_5_AREAS,
  TABLE_5_DIAMETERS,
} from '../../../../../src/domain/codebook/nec/chapter-9-table-5.ts'
import {
  TABLE_8_AREA,
  TABLE_8_OHMS,
} from '../../../../../src/domain/codebook/nec/chapter-9-table-8.ts'
import {
  TABLE_9,
  TABLE_9_METRIC,
} from '../../../../../src/domain/codebook/nec/chapter-9-table-9.ts'
import { SECTION_240_4_D } from '../../../../../src/domain/codebook/nec/section-240-4-d.ts'
import { TABLE_250_122 } from '../../../../../src/domain/codebook/nec/table-250-122.ts'
import { TABLE_310_15_B_1 } from '../../../../../src/domain/codebook/nec/table-310-15-b-1.ts'
import { TABLE_310_15_C_1 } from '../../../../../src/domain/codebook/nec/table-310-15-c-1.ts'
import { TABLE_310_16 } from '../../../../../src/domain/codebook/nec/table-310-16.ts'
import { TABLE_430_7_B } from '../../../../../src/domain/codebook/nec/table-430-7-b.ts'
import { TABLE_430_248 } from '../../../../../src/domain/codebook/nec/table-430-248.ts'

const TABLES = [
  ...Object.values(TABLE_310_16),
  ...Object.values(TABLE_4),
  TABLE_4_DIAMETERS,
  TABLE_5_AREAS,
  TABLE_5_DIAMETERS,
  TABLE_8_AREA,
  TABLE_8_OHMS,
  TABLE_9,
  TABLE_9_METRIC,
  SECTION_240_4_D,
  TABLE_430_248,
  TABLE_430_7_B,
  CE_TABLE_2,
  CE_TABLE_4,
  CE_RULE_14_104,
  CE_RULE_8_104,
]

const BANDED = [
  TABLE_1,
  TABLE_310_15_B_1,
  TABLE_310_15_C_1,
  TABLE_250_122,
  CE_TABLE_5A,
  CE_TABLE_5C,
  CE_TABLE_8,
  CE_TABLE_13,
  CE_TABLE_16,
]

const named = <
  Table extends { readonly standard: string; readonly clause: string; readonly unit: string },
>(
  tables: readonly Table[],
) =>
  tables.map((table, index) => ({
    name: `${table.standard} ${table.clause}, ${table.unit} (${index + 1})`,
    table,
  }))

test.each(named([...TABLES, ...BANDED]))(
  '$name says its edition, and how it was read',
  ({ table }) => {
    expect(['NEC', 'CE Code']).toContain(table.standard)
    expect(table.edition).toMatch(/^(?:19|20)\d\d/u)
    expect(table.clause).not.toBe('')
    expect(table.unit).not.toBe('')
    expect(['page', 'memory']).toContain(table.read)
  },
)

test.each(named(TABLES))(
  '$name has a cell for every column, and no figure of zero but one',
  ({ table }) => {
    const rows = Object.values(table.rows)
    expect(rows.length).toBeGreaterThan(1)
    for (const row of rows) expect(row).toHaveLength(table.columns.length)
    const cells = rows.flat().filter(cell => cell !== undefined)
    expect(cells.filter(cell => !(Number.isFinite(cell) && cell > 0))).toEqual(
      table === TABLE_430_7_B ? [0] : [],
    )
  },
)

test.each(named(BANDED))(
  '$name has bands that rise, and finds each by its end and just above',
  ({ table }) => {
    const ends = table.bands.map(({ upTo }) => upTo)
    expect([...ends].sort((a, b) => a - b)).toEqual(ends)
    expect(new Set(ends).size).toBe(ends.length)
    ends.forEach((end, index) => {
      expect(bandIn<{ readonly upTo: number }>(table, end)?.upTo).toBe(end)
      if (Number.isFinite(end))
        expect(bandIn<{ readonly upTo: number }>(table, end * (1 + 1e-6))?.upTo).toBe(
          ends[index + 1],
        )
    })
    expect(bandIn<{ readonly upTo: number }>(table, Number.NaN)).toBeUndefined()
  },
)
