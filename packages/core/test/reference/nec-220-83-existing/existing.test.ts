import { expect, test } from 'vitest'
import { dwellingLoad } from '../../../src/domain/codebook/nec/section-220-82.ts'
import { existingDwellingLoad } from '../../../src/domain/codebook/nec/section-220-83.ts'
import { COOLING, EXISTING, FORM, HOUSE, TUB, WITH_TUB } from './cases.ts'

const withTub = { ...HOUSE, plates: [...HOUSE.plates, TUB] }

test('NEC 220.83: a house before and after a tub comes', () => {
  expect(existingDwellingLoad(HOUSE)).toBe(EXISTING)
  expect(existingDwellingLoad(withTub)).toBe(WITH_TUB)
  expect(WITH_TUB - EXISTING).toBe((TUB * FORM.restPercent) / 100)
  expect(existingDwellingLoad(withTub, COOLING)).toBe(WITH_TUB + COOLING)
})

test('NEC 220.83: up to 8 kVA nothing is taken off', () => {
  const plain = (va: number) => existingDwellingLoad({ area: 0, circuits: 0, plates: [va] })
  expect(plain(FORM.first)).toBe(FORM.first)
  expect(plain(FORM.first + 1000)).toBe(FORM.first + 400)
  expect(plain(FORM.first - 1)).toBe(FORM.first - 1)
})

test('NEC 220.83 is 1200 VA below 220.82 from 10 kVA on, and never above', () => {
  for (const va of [100, 8000, 9000, 10_000, 40_000]) {
    const loads = { area: 0, circuits: 0, plates: [va] }
    const less = dwellingLoad(loads, []) - existingDwellingLoad(loads)
    expect(less).toBeCloseTo(0.6 * Math.min(2000, Math.max(0, va - 8000)), 6)
  }
})
