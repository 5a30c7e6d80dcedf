import { expect, test } from 'vitest'
import {
  CONDUITS,
  conduitArea,
  TABLE_4,
  TABLE_4_DIAMETERS,
  TRADE_SIZES,
} from '../../../../../src/domain/codebook/nec/chapter-9-table-4.ts'
import {
  conductorArea,
  TABLE_5_AREAS,
  TABLE_5_DIAMETERS,
} from '../../../../../src/domain/codebook/nec/chapter-9-table-5.ts'
import { circularMils } from '../../../../../src/domain/codebook/nec/chapter-9-table-8.ts'
import {
  conduitFill,
  fillLimit,
  mostConductors,
} from '../../../../../src/domain/codebook/nec/conduit-fill.ts'
import { cellOf } from '../../../../../src/domain/codebook/printed.ts'

const PIECES = CONDUITS.flatMap(conduit => TRADE_SIZES.map(tradeSize => ({ conduit, tradeSize })))
const SIZES = Object.keys(TABLE_5_AREAS.rows)
const SHARES = { '60 %': 0.6, '53 %': 0.53, '31 %': 0.31, '40 %': 0.4 } as const

// The area is printed to 0.001 in², its diameter to 0.001 in; both are rounded, or made from the metric row.
test.each(PIECES)('$conduit $tradeSize: the whole area is π/4 of its diameter squared', piece => {
  const diameter = cellOf(TABLE_4_DIAMETERS, piece.tradeSize, piece.conduit) ?? Number.NaN
  const area = conduitArea(piece.conduit, piece.tradeSize, '100 %') ?? Number.NaN
  const rounding = 0.0005 + (Math.PI / 2) * diameter * 0.0005
  expect(Math.abs(area - (Math.PI / 4) * diameter ** 2)).toBeLessThan(rounding)
})

test.each(PIECES)(
  '$conduit $tradeSize: the shares are shares of the whole, both rounded',
  piece => {
    const whole = conduitArea(piece.conduit, piece.tradeSize, '100 %') ?? Number.NaN
    for (const [column, share] of Object.entries(SHARES)) {
      const area = conduitArea(piece.conduit, piece.tradeSize, column as keyof typeof SHARES)
      expect(Math.abs((area ?? Number.NaN) - share * whole)).toBeLessThan(0.0005 * (1 + share))
    }
  },
)

test.each(CONDUITS)('%s: a larger trade size holds more, in every column', conduit => {
  const { columns, rows } = TABLE_4[conduit]
  expect(Object.keys(rows).sort()).toEqual([...TRADE_SIZES].sort())
  columns.forEach((_, at) => {
    const areas = TRADE_SIZES.map(size => rows[size]?.[at] ?? Number.NaN)
    areas.slice(1).forEach((area, index) => {
      expect(area).toBeGreaterThan(areas[index] ?? Number.NaN)
    })
  })
})

test.each(TRADE_SIZES)(
  'trade size %s: plastic of schedule 80 is narrower than 40, 40 than EMT',
  size => {
    const whole = (['PVC 80', 'PVC 40', 'EMT'] as const).map(
      conduit => conduitArea(conduit, size, '100 %') ?? Number.NaN,
    )
    expect([...whole].sort((a, b) => a - b)).toEqual(whole)
    expect(new Set(whole).size).toBe(3)
  },
)

test.each(SIZES)('%s: the area of the conductor is π/4 of its diameter squared', size => {
  const diameter = cellOf(TABLE_5_DIAMETERS, size, 'THWN-2') ?? Number.NaN
  const rounding = 0.00005 + (Math.PI / 2) * diameter * 0.0005
  expect(
    Math.abs((conductorArea(size) ?? Number.NaN) - (Math.PI / 4) * diameter ** 2),
  ).toBeLessThan(rounding)
})

test.each(SIZES)('%s: insulation and strands take room: 1.3 to 3.1 times the metal', size => {
  const metal = ((circularMils(size) ?? Number.NaN) * Math.PI) / 4e6
  const times = (conductorArea(size) ?? Number.NaN) / metal
  expect(times).toBeGreaterThan(1.3)
  expect(times).toBeLessThan(3.1)
})

test('a larger conductor takes more room', () => {
  const areas = SIZES.map(size => conductorArea(size) ?? Number.NaN)
  areas.slice(1).forEach((area, index) => {
    expect(area).toBeGreaterThan(areas[index] ?? Number.NaN)
  })
})

test.each(CONDUITS)('%s: as many as may go in fit, one more does not', conduit => {
  for (const tradeSize of TRADE_SIZES)
    for (const size of SIZES) {
      const piece = { conduit, tradeSize }
      const most = mostConductors(piece, size) ?? Number.NaN
      const area = conductorArea(size) ?? Number.NaN
      const taken = (count: number) =>
        conduitFill(
          piece,
          Array.from({ length: count }, () => size),
        )
      // From 0.8 of a conductor on one more counts: that much may be over.
      if (most >= 1)
        expect(taken(most)?.taken).toBeLessThanOrEqual(
          (fillLimit(piece, most) ?? 0) + 0.2 * area + 1e-9,
        )
      const more = Math.max(3, most + 1)
      expect(taken(more)?.taken).toBeGreaterThan((fillLimit(piece, more) ?? 0) - 0.2 * area * more)
      if (most >= 3) expect(taken(most + 1)?.taken).toBeGreaterThan(fillLimit(piece, most + 1) ?? 0)
    }
})

test('two conductors may take less than three, three less than one', () => {
  const limits = [2, 3, 1].map(count => fillLimit({ conduit: 'EMT', tradeSize: '1' }, count))
  expect([...limits].sort()).toEqual(limits)
})

test('a larger conduit never takes fewer, a larger conductor never goes in more often', () => {
  for (const conduit of CONDUITS) {
    const counts = TRADE_SIZES.map(tradeSize =>
      SIZES.map(size => mostConductors({ conduit, tradeSize }, size) ?? Number.NaN),
    )
    counts.forEach((row, at) => {
      row.forEach((count, index) => {
        expect(count).toBeGreaterThanOrEqual(row[index + 1] ?? 0)
        expect(count).toBeLessThanOrEqual(counts[at + 1]?.[index] ?? Number.POSITIVE_INFINITY)
      })
    })
  }
})
