import { expect, test } from 'vitest'
import {
  effectiveOhms,
  lineOhms,
  TABLE_9,
  TABLE_9_METRIC,
} from '../../../src/domain/codebook/nec/chapter-9-table-9.ts'
import { cellOf } from '../../../src/domain/codebook/printed.ts'
import {
  CONFLICT,
  EFFECTIVE,
  EFFECTIVE_LARGE,
  METRIC,
  RESISTANCE_AND_REACTANCE,
  WORKED,
} from './cases.ts'

const RACEWAYS = ['PVC', 'steel'] as const

test.each(RESISTANCE_AND_REACTANCE)('NEC chapter 9 table 9: R and X of $size', row => {
  RACEWAYS.forEach((raceway, index) => {
    for (const metal of ['copper', 'aluminium'] as const) {
      const resistance = row[metal][index]
      const expected =
        resistance === undefined ? undefined : { resistance, reactance: row.x[index] }
      expect(lineOhms({ metal, raceway, size: row.size })).toEqual(expected)
    }
  })
})

test('NEC chapter 9 table 9: every row was compared', () =>
  expect(Object.keys(TABLE_9.rows)).toEqual(RESISTANCE_AND_REACTANCE.map(({ size }) => size)))

test.each(EFFECTIVE)('NEC chapter 9 table 9: Z of $size', ({ size, z }) =>
  expect(
    (['Z copper PVC', 'Z copper steel', 'Z aluminium PVC', 'Z aluminium steel'] as const).map(
      column => cellOf(TABLE_9, size, column),
    ),
  ).toEqual(z),
)

test.each(EFFECTIVE_LARGE)('NEC chapter 9 table 9: Z of $size copper in steel, $z', each =>
  expect(cellOf(TABLE_9, each.size, 'Z copper steel')).toBe(each.z),
)

// PVC and steel, without the aluminium conduit between them.
const PRINT_ORDER = [
  'X PVC',
  'X steel',
  'R copper PVC',
  undefined,
  'R copper steel',
  'R aluminium PVC',
  undefined,
  'R aluminium steel',
  'Z copper PVC',
  undefined,
  'Z copper steel',
  'Z aluminium PVC',
  undefined,
  'Z aluminium steel',
] as const

test.each(METRIC)('NEC chapter 9 table 9: $size in Ω/km', ({ size, printed }) => {
  const cells = printed.split(' ').map(cell => (cell === '-' ? undefined : Number(cell)))
  expect(cells).toHaveLength(PRINT_ORDER.length)
  PRINT_ORDER.forEach((column, index) => {
    if (column) expect(cellOf(TABLE_9_METRIC, size, column)).toBe(cells[index])
  })
})

test('NEC chapter 9 table 9: every metric row was compared', () =>
  expect(Object.keys(TABLE_9_METRIC.rows)).toEqual(METRIC.map(({ size }) => size)))

test.each(WORKED)('$what: R cos + X sin is $z, printed $printed', ({ r, x, z, printed }) => {
  const ohms = effectiveOhms({ resistance: r, reactance: x }, 0.85)
  expect(Math.abs(ohms / z - 1)).toBeLessThan(0.001)
  expect(Math.abs(ohms / printed - 1)).toBeLessThan(0.05)
})

test('the formula and the metric row side with 0.72 for 6 AWG aluminium in steel', () => {
  const line = lineOhms({ metal: 'aluminium', raceway: 'steel', size: CONFLICT.size })
  const formula = effectiveOhms(line ?? { resistance: 0, reactance: 0 }, 0.85)
  const metric = (cellOf(TABLE_9_METRIC, CONFLICT.size, 'Z aluminium steel') ?? 0) / 3.28084
  expect(cellOf(TABLE_9, CONFLICT.size, 'Z aluminium steel')).toBe(CONFLICT.others)
  for (const ohms of [formula, metric])
    expect(Math.abs(ohms - CONFLICT.others)).toBeLessThan(Math.abs(ohms - CONFLICT.firstPage))
})
