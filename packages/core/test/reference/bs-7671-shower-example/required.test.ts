import { expect, test } from 'vitest'
import {
  overloadFailure,
  requiredRating,
} from '../../../src/domain/codebook/bs-7671/section-433.ts'
import { ambientFactor4B1 } from '../../../src/domain/codebook/bs-7671/table-4b1.ts'
import { amps4D1A, TABLE_4D1A } from '../../../src/domain/codebook/bs-7671/table-4d1a.ts'
import { leastArea } from '../../../src/domain/codebook/iec-60228.ts'
import { FACTORED, SHOWER } from './cases.ts'

test('34 A are not 34.04 A: the next size is chosen', () => {
  expect(ambientFactor4B1(SHOWER.celsius, 'thermoplastic')).toBe(SHOWER.factor)
  const needed = requiredRating(SHOWER.device, [SHOWER.factor])
  expect(needed).toBeCloseTo(SHOWER.needed, 2)
  expect(amps4D1A(SHOWER.rejected.mm2, 'A 2')).toBe(SHOWER.rejected.carries)
  expect(leastArea(TABLE_4D1A, 'A 2', needed)).toBe(SHOWER.chosen.mm2)
  expect(amps4D1A(SHOWER.chosen.mm2, 'A 2')).toBe(SHOWER.chosen.carries)
  // At 30 °C, without the factor, the smaller one would have done.
  expect(leastArea(TABLE_4D1A, 'A 2', requiredRating(SHOWER.device, [1]))).toBe(SHOWER.rejected.mm2)
})

test('the smaller cable, as installed, is below its breaker', () => {
  const cable = SHOWER.rejected.carries * SHOWER.factor
  expect(overloadFailure({ load: 30, device: SHOWER.device, cable })).toBe('cable-below-device')
  const enough = SHOWER.chosen.carries * SHOWER.factor
  expect(overloadFailure({ load: 30, device: SHOWER.device, cable: enough })).toBeUndefined()
})

test('a factor multiplies a rating, and divides what is needed', () => {
  expect(FACTORED.tabulated * FACTORED.factor).toBeCloseTo(FACTORED.left, 9)
  expect(Math.abs(FACTORED.left - FACTORED.printed)).toBeLessThan(0.05)
  expect(requiredRating(FACTORED.left, [FACTORED.factor])).toBeCloseTo(FACTORED.tabulated, 9)
})
