import { expect, test } from 'vitest'
import { circularMils } from '../../../src/domain/codebook/nec/chapter-9-table-8.ts'
import {
  earthConductor,
  SCALING_SLACK,
  scaledEarth,
  TABLE_250_122,
} from '../../../src/domain/codebook/nec/table-250-122.ts'
import { BANDS, EDGES, LARGER_LEGS, SECOND_PAGE } from './cases.ts'

const mils = (size: string) => circularMils(size) ?? Number.NaN

test.each(SECOND_PAGE)('NEC 250.122: up to $upTo A', ({ upTo, copper, aluminium }) => {
  expect(earthConductor(upTo, 'copper')).toBe(copper)
  expect(earthConductor(upTo, 'aluminium')).toBe(aluminium)
  expect(earthConductor(upTo + 1, 'copper')).not.toBe(copper)
})

test('NEC 250.122: all bands were compared, above them there is none', () => {
  expect(TABLE_250_122.bands).toHaveLength(SECOND_PAGE.length)
  expect(earthConductor(1201, 'copper')).toBeUndefined()
})

test.each(BANDS)('NEC 250.122: copper behind $from and $to A', ({ from, to, copper }) => {
  expect(earthConductor(from, 'copper')).toBe(copper)
  expect(earthConductor(to, 'copper')).toBe(copper)
})

test.each(LARGER_LEGS)('NEC 250.122(B), $from: $breaker A, $needed made $chosen', each =>
  expect(scaledEarth({ ...each, metal: 'copper' })).toBe(each.earth),
)

test.each(EDGES)('NEC 250.122(B): $needed made $chosen asks $asked cmil of earth', each => {
  const ratio = mils(each.chosen) / mils(each.needed)
  expect(Math.abs(ratio / each.ratio - 1)).toBeLessThan(0.001)
  const asked = ratio * mils('10 AWG')
  expect(asked).toBeCloseTo(each.asked, -0.5)
  expect(scaledEarth({ ...each, breaker: 50, metal: 'copper' })).toBe(each.earth)
  const short = 1 - mils(each.earth) / asked
  expect(short).toBeGreaterThan(0)
  expect(short).toBeLessThan(SCALING_SLACK)
  expect(mils(each.strict)).toBeGreaterThan(asked * 1.2)
})

test('NEC 250.122(B): a size that is not printed has no answer', () => {
  const legs = { breaker: 50, metal: 'copper', needed: '6 AWG', chosen: '5 AWG' } as const
  expect(scaledEarth(legs)).toBeUndefined()
  expect(scaledEarth({ ...legs, breaker: 4000, chosen: '4 AWG' })).toBeUndefined()
})
