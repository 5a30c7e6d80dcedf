import { describe, expect, test } from 'vitest'
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
import { AREAS_MM2 } from '../../../../src/domain/codebook/iec-60228.ts'
import type { PrintedTable } from '../../../../src/domain/codebook/printed.ts'
import { cellOf } from '../../../../src/domain/codebook/printed.ts'
import { CURRENT_TABLES, columnOf, rises, sizesOf } from './current-tables.ts'

const columns = CURRENT_TABLES.flatMap(table =>
  table.columns.map(column => ({ clause: table.clause, table, column })),
)

test.each(columns)('$clause, $column: more copper carries more, and less per mm²', each => {
  const sizes = sizesOf(each.table).map(Number)
  const amps = columnOf(each.table, each.column)
  expect(sizes.every(size => AREAS_MM2.includes(size))).toBe(true)
  for (let at = 1; at < amps.length; at += 1) {
    const [before, here] = [amps[at - 1] ?? Number.NaN, amps[at] ?? Number.NaN]
    expect(here).toBeGreaterThan(before)
    // Buried cable of the AS/NZS tables goes by the figures of a duct up to 10 mm², then jumps.
    const jump = each.column === 'buried' && sizes[at] === 16 ? 1.15 : 1
    expect(here / (sizes[at] ?? 1)).toBeLessThan((before / (sizes[at - 1] ?? 1)) * jump)
  }
})

const loaded = CURRENT_TABLES.flatMap(table =>
  table.columns
    .filter(column => column.endsWith(' 2'))
    .map(column => ({ clause: table.clause, table, column })),
)

test.each(loaded)('$clause, $column: three loaded conductors carry less than two', each => {
  const three = each.column.replace(/2$/u, '3')
  expect(each.table.columns).toContain(three)
  expect(rises([each.table, three], [each.table, each.column])).toEqual([])
})

test.each(TABLE_B_52_2.columns)(
  'B.52, %s: three loaded less than two, 70 °C less than 90 °C',
  each => {
    expect(rises([TABLE_B_52_4, each], [TABLE_B_52_2, each])).toEqual([])
    expect(rises([TABLE_B_52_5, each], [TABLE_B_52_3, each])).toEqual([])
    expect(rises([TABLE_B_52_2, each], [TABLE_B_52_3, each])).toEqual([])
    expect(rises([TABLE_B_52_4, each], [TABLE_B_52_5, each])).toEqual([])
  },
)

test.each(TABLE_4D1A.columns)('single cores, %s: 70 °C less than 90 °C', each =>
  expect(rises([TABLE_4D1A, each], [TABLE_4E1A, each])).toEqual([]),
)

test.each(TABLE_4D4A.columns)('armoured, %s: 70 °C less than 90 °C', each =>
  expect(rises([TABLE_4D4A, each], [TABLE_4E4A, each])).toEqual([]),
)

test.each(TABLE_10.columns)('two-core, %s: 75 °C less than 90 °C', each =>
  expect(rises([TABLE_10, each], [TABLE_11, each])).toEqual([]),
)

test.each(TABLE_4.columns)('in conduit, %s: 75 °C less than 90 °C', each =>
  expect(rises([TABLE_4, each], [TABLE_5, each])).toEqual([]),
)

/** Columns of one table, from what cools worst to what cools best. */
const COOLER: readonly (readonly [PrintedTable<string>, readonly string[]])[] = [
  [TABLE_4D1A, ['A 2', 'B 2', 'C 2']],
  [TABLE_4D1A, ['A 3', 'B 3', 'C 3']],
  [TABLE_4E1A, ['A 2', 'B 2', 'C 2']],
  [TABLE_4E1A, ['A 3', 'B 3', 'C 3']],
  [TABLE_4D2A, ['A 2', 'B 2', 'C 2', 'E 2']],
  [TABLE_4D2A, ['A 3', 'B 3', 'C 3', 'E 3']],
  [TABLE_4D4A, ['C 2', 'E 2']],
  [TABLE_4D4A, ['C 3', 'E 3']],
  [TABLE_4E4A, ['C 2', 'E 2']],
  [TABLE_4E4A, ['C 3', 'E 3']],
  [TABLE_4D5, ['103', '101', '100', 'C']],
  [TABLE_4D5, ['101', 'A', 'C']],
  [TABLE_4D5, ['100', '102', 'C']],
  [TABLE_B_52_2, ['A2', 'A1', 'B2', 'B1']],
  [TABLE_B_52_2, ['B2', 'C']],
  [TABLE_B_52_5, ['A2', 'A1', 'B2', 'C']],
  [TABLE_4, ['wholly insulated', 'partly insulated', 'enclosed']],
  [TABLE_5, ['wholly insulated', 'partly insulated', 'enclosed']],
  [TABLE_10, ['wholly insulated', 'partly insulated', 'touching', 'spaced']],
  [TABLE_11, ['wholly insulated', 'partly insulated', 'touching', 'spaced']],
  [TABLE_10, ['in the sun', 'touching']],
  [TABLE_11, ['in the sun', 'touching']],
  [TABLE_10, ['partly insulated', 'enclosed', 'touching']],
  [TABLE_11, ['partly insulated', 'enclosed', 'touching']],
  [TABLE_10, ['buried duct', 'buried']],
  [TABLE_11, ['buried duct', 'buried']],
]

const steps = COOLER.flatMap(([table, chain]) =>
  chain.slice(1).map((to, at) => ({ clause: table.clause, table, from: chain[at] ?? to, to })),
)

test.each(steps)('$clause: $from never carries more than $to', ({ table, from, to }) =>
  expect(rises([table, from], [table, to])).toEqual([]),
)

describe('two books that print the same table', () => {
  test.each([
    ['A 2', TABLE_B_52_2, 'A2'],
    ['B 2', TABLE_B_52_2, 'B2'],
    ['C 2', TABLE_B_52_2, 'C'],
    ['A 3', TABLE_B_52_4, 'A2'],
    ['B 3', TABLE_B_52_4, 'B2'],
    ['C 3', TABLE_B_52_4, 'C'],
  ] as const)('multicore, %s, from 1.5 mm²', (column, other, method) => {
    const common = sizesOf(TABLE_4D2A).filter(size => Object.hasOwn(other.rows, size))
    expect(common).toHaveLength(6)
    for (const size of common)
      expect(cellOf(TABLE_4D2A, size, column)).toBe(cellOf(other, size, method))
  })

  test.each([
    ['D 2', TABLE_B_52_3],
    ['D 3', TABLE_B_52_5],
  ] as const)('armoured in the ground, 90 °C, %s', (column, other) => {
    for (const size of sizesOf(other))
      expect(cellOf(TABLE_4E4A, size, column)).toBe(cellOf(other, size, 'D1'))
  })
})

test.each(['spaced', 'enclosed'] as const)('flexible cable, %s, is within 2 A of rigid', each => {
  const flexible = columnOf(TABLE_10, `flexible, ${each}`)
  columnOf(TABLE_10, each).forEach((amps, at) => {
    expect(Math.abs(amps - (flexible[at] ?? Number.NaN))).toBeLessThanOrEqual(2)
  })
})

/** The same cables with cooler and with hotter insulation. */
const HOTTER: readonly (readonly [PrintedTable<string>, PrintedTable<string>])[] = [
  [TABLE_4D1A, TABLE_4E1A],
  [TABLE_4D4A, TABLE_4E4A],
  [TABLE_B_52_2, TABLE_B_52_3],
  [TABLE_B_52_4, TABLE_B_52_5],
  [TABLE_4, TABLE_5],
  [TABLE_10, TABLE_11],
]

const gains = HOTTER.flatMap(([cooler, hotter]) =>
  cooler.columns.map(column => ({ clause: cooler.clause, cooler, hotter, column })),
)

// Heat and the resistance of warm copper give one ratio for a column; cells are whole amps. A digit
// that slipped in either table stands out.
test.each(gains)('$clause, $column: hotter insulation gains alike at every size', each => {
  const [less, more] = [columnOf(each.cooler, each.column), columnOf(each.hotter, each.column)]
  const pairs = more.slice(-less.length).map((amps, at) => [less[at] ?? Number.NaN, amps] as const)
  const ratios = pairs.map(([a, b]) => b / a).sort((a, b) => a - b)
  const middle = ratios[Math.floor(ratios.length / 2)] ?? Number.NaN
  expect(middle).toBeGreaterThan(1.1)
  expect(middle).toBeLessThan(1.38)
  for (const [a, b] of pairs)
    expect(Math.abs(b / a / middle - 1)).toBeLessThan(0.045 + 0.5 / a + 0.5 / b)
})

describe.each([TABLE_10, TABLE_11])('two-core cable to $clause', table => {
  const touching = columnOf(table, 'touching')
  const share = (column: string, factor: number, amps: number) =>
    columnOf(table, column).forEach((each, at) => {
      const expected = factor * (touching[at] ?? Number.NaN)
      expect(Math.abs(each - expected)).toBeLessThanOrEqual(amps)
    })

  test('wholly in insulation: half, rounded', () => share('wholly insulated', 0.5, 0.5))
  test('partly in insulation: eight tenths, within an amp', () => share('partly insulated', 0.8, 1))
  test('spaced: seven hundredths more, within 1.3 A', () => share('spaced', 1.07, 1.3))
  test('buried is as in a duct, up to 10 mm²', () =>
    expect(columnOf(table, 'buried').slice(0, -1)).toEqual(
      columnOf(table, 'buried duct').slice(0, -1),
    ))
})

test.each([TABLE_4, TABLE_5])(
  'in conduit, $clause: half in insulation, eight tenths beside it',
  table =>
    columnOf(table, 'enclosed').forEach((amps, at) => {
      const [whole, part] = [
        columnOf(table, 'wholly insulated')[at],
        columnOf(table, 'partly insulated')[at],
      ]
      expect(Math.abs((whole ?? Number.NaN) - amps / 2)).toBeLessThanOrEqual(1.5)
      expect(Math.abs((part ?? Number.NaN) - 0.8 * amps)).toBeLessThanOrEqual(1)
    }),
)

test('flat cable under more insulation carries eight tenths of that under less', () =>
  columnOf(TABLE_4D5, '101').forEach((amps, at) => {
    const less = columnOf(TABLE_4D5, '100')[at] ?? Number.NaN
    expect(Math.abs(amps - 0.805 * less)).toBeLessThanOrEqual(0.5)
  }))

test('flat cable in conduit in an insulated wall carries what round cable does, or a little more', () =>
  columnOf(TABLE_4D5, 'A').forEach((amps, at) => {
    const round = columnOf(TABLE_4D2A, 'A 2')[at] ?? Number.NaN
    expect(amps - round).toBeGreaterThanOrEqual(0)
    expect(amps - round).toBeLessThanOrEqual(1.5)
  }))
