import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ceMostContinuous } from '../../../../../src/domain/codebook/ce-code/rule-8-104.ts'
import {
  CE_TABLE_13,
  ceGreatestBreaker,
} from '../../../../../src/domain/codebook/ce-code/table-13.ts'
import {
  CE_TABLE_16,
  ceBondingConductor,
} from '../../../../../src/domain/codebook/ce-code/table-16.ts'
import {
  circularMils,
  TABLE_8_AREA,
} from '../../../../../src/domain/codebook/nec/chapter-9-table-8.ts'
import { terminalColumn } from '../../../../../src/domain/codebook/nec/section-110-14-c.ts'
import { greatestBreaker } from '../../../../../src/domain/codebook/nec/section-240-4-b.ts'
import {
  isStandard,
  nextStandard,
  SECTION_240_6,
} from '../../../../../src/domain/codebook/nec/section-240-6.ts'
import {
  earthConductor,
  scaledEarth,
  TABLE_250_122,
} from '../../../../../src/domain/codebook/nec/table-250-122.ts'
import { necAmps, TABLE_310_16 } from '../../../../../src/domain/codebook/nec/table-310-16.ts'

const SETTINGS = { seed: 20_262, numRuns: 400 } as const
const SIZES = Object.keys(TABLE_8_AREA.rows)
const mils = (size: string | undefined) => circularMils(size ?? '') ?? Number.NaN

test.each(SECTION_240_6.ratings)('%i A computed stays %i A: the last bits do not count', rating => {
  expect(nextStandard(rating * (1 + 1e-12))).toBe(rating)
  expect(nextStandard(rating * 0.1 * 10)).toBe(rating)
  expect(nextStandard(rating * (1 + 1e-7))).not.toBe(rating)
  expect(isStandard(rating * (1 - 1e-12))).toBe(true)
  expect(isStandard(rating * (1 + 1e-7))).toBe(false)
})

test('the next standard rating is standard, at or above, and none lies between', () =>
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 6000, noNaN: true }), amps => {
      const next = nextStandard(amps) ?? Number.NaN
      expect(isStandard(next)).toBe(true)
      expect(next).toBeGreaterThanOrEqual(amps * (1 - 1e-9))
      expect(SECTION_240_6.ratings.filter(each => each >= amps && each < next)).toEqual([])
    }),
    SETTINGS,
  ))

test.each([6000.1, Number.POSITIVE_INFINITY, Number.NaN])('%d A has no next rating', amps =>
  expect(nextStandard(amps)).toBeUndefined(),
)

test('the greatest breaker is the next rating up to 800 A, and never over above it', () =>
  fc.assert(
    fc.property(fc.double({ min: 15, max: 6000, noNaN: true }), amps => {
      const breaker = greatestBreaker(amps) ?? Number.NaN
      expect(isStandard(breaker)).toBe(true)
      if (breaker < 800) expect(breaker).toBeGreaterThanOrEqual(amps * (1 - 1e-9))
      if (amps > 800) expect(breaker).toBeLessThanOrEqual(amps * (1 + 1e-9))
    }),
    SETTINGS,
  ))

test.each([
  { name: 'NEC 250.122', bands: TABLE_250_122.bands },
  { name: 'CE table 16', bands: CE_TABLE_16.bands },
])('$name: a larger breaker asks a larger earth, aluminium about two gauges more', ({ bands }) => {
  bands.forEach((band, index) => {
    for (const metal of ['copper', 'aluminium'] as const)
      if (index > 0) expect(mils(band[metal])).toBeGreaterThan(mils(bands[index - 1]?.[metal]))
    const ratio = mils(band.aluminium) / mils(band.copper)
    expect(ratio).toBeGreaterThan(1.4)
    expect(ratio).toBeLessThan(1.7)
  })
})

test('an earth by the table is never larger than the conductors that its breaker needs', () => {
  for (const { upTo } of TABLE_250_122.bands.filter(band => band.upTo <= 200)) {
    const legs = Object.keys(TABLE_310_16.copper.rows).find(
      size => (necAmps('copper', size, terminalColumn({ circuit: upTo })) ?? 0) >= upTo,
    )
    expect(mils(earthConductor(upTo, 'copper'))).toBeLessThanOrEqual(mils(legs))
  }
})

test('from 60 A on Canada and the United States ask the same earth', () => {
  for (const amps of [60, 100, 200, 300, 400, 500, 600])
    for (const metal of ['copper', 'aluminium'] as const)
      expect(ceBondingConductor(amps, metal)).toBe(earthConductor(amps, metal))
})

test('a scaled earth: not under the table, not over the legs, in proportion within a gauge', () =>
  fc.assert(
    fc.property(
      fc.constantFrom(...TABLE_250_122.bands.map(({ upTo }) => upTo)),
      fc.integer({ min: 2, max: SIZES.length - 1 }),
      fc.integer({ min: 0, max: SIZES.length - 1 }),
      (breaker, from, more) => {
        const needed = SIZES[from] ?? ''
        const chosen = SIZES[Math.min(SIZES.length - 1, from + more)] ?? ''
        const table = mils(earthConductor(breaker, 'copper'))
        fc.pre(mils(needed) >= table)
        const earth = scaledEarth({ breaker, metal: 'copper', needed, chosen })
        const asked = (table * mils(chosen)) / mils(needed)
        expect(mils(earth)).toBeGreaterThanOrEqual(table)
        expect(mils(earth)).toBeLessThanOrEqual(mils(chosen))
        expect(mils(earth)).toBeGreaterThanOrEqual(asked * 0.999)
        expect(mils(SIZES[SIZES.indexOf(earth ?? '') - 1])).toBeLessThan(asked)
      },
    ),
    SETTINGS,
  ))

test('legs that were not made larger keep the earth of the table', () => {
  for (const { upTo, copper } of TABLE_250_122.bands)
    expect(
      scaledEarth({ breaker: upTo, metal: 'copper', needed: '500 kcmil', chosen: '500 kcmil' }),
    ).toBe(copper)
})

test('legs made smaller than needed do not make the earth smaller', () =>
  expect(
    scaledEarth({ breaker: 200, metal: 'copper', needed: '500 kcmil', chosen: '250 kcmil' }),
  ).toBe('6 AWG'))

test('CE: the breaker is never under what the conductor carries, but for small ones', () =>
  fc.assert(
    fc.property(fc.double({ min: 1, max: 600, noNaN: true }), amps => {
      const breaker = ceGreatestBreaker({ metal: 'copper', size: '6 AWG', amps }) ?? Number.NaN
      expect(breaker).toBeGreaterThanOrEqual(amps * (1 - 1e-9))
      expect(isStandard(breaker)).toBe(true)
      expect(ceGreatestBreaker({ metal: 'copper', size: '14 AWG', amps })).toBeLessThanOrEqual(15)
    }),
    SETTINGS,
  ))

test('CE: breakers of table 13 never fall', () => {
  const breakers = CE_TABLE_13.bands.map(({ breaker }) => breaker)
  expect([...breakers].sort((a, b) => a - b)).toEqual(breakers)
})

test('CE: marked for more, a breaker carries more; in free air its conductors less', () =>
  fc.assert(
    fc.property(
      fc.integer({ min: 15, max: 200 }),
      fc.integer({ min: 15, max: 200 }),
      (breaker, amps) => {
        const most = (mark: '80 %' | '100 %', laid: 'raceway or cable' | 'single in free air') =>
          ceMostContinuous({ breaker, amps, mark, laid })
        expect(most('80 %', 'raceway or cable')).toBeCloseTo(0.8 * Math.min(breaker, amps), 9)
        for (const laid of ['raceway or cable', 'single in free air'] as const)
          expect(most('100 %', laid)).toBeGreaterThan(most('80 %', laid))
        for (const mark of ['80 %', '100 %'] as const)
          expect(most(mark, 'single in free air')).toBeLessThanOrEqual(
            most(mark, 'raceway or cable'),
          )
      },
    ),
    SETTINGS,
  ))
