import { expect, test } from 'vitest'
import {
  ceBasicLoad,
  ceDwellingLoad,
  ceItemisedLoad,
  ceOtherLoads,
  ceRangeLoad,
} from '../../../src/domain/codebook/ce-code/section-8-200.ts'
import { BASIC, EXAMPLE, LEAST, OTHERS, RANGES } from './cases.ts'

test.each(BASIC)('CE rule 8-200: $area m², $watts W', ({ area, watts }) =>
  expect(ceBasicLoad(area)).toBe(watts),
)

test.each(RANGES)('CE rule 8-200: a range of $rating W counts $watts W', ({ rating, watts }) =>
  expect(ceRangeLoad(rating)).toBe(watts),
)

test.each(OTHERS)('CE rule 8-200: others $others W, range $range W', ({ others, range, watts }) =>
  expect(ceOtherLoads(others, range)).toBe(watts),
)

test('CE rule 8-200: the worked example adds up to 152.4 A, not to what the page prints', () => {
  const load = ceDwellingLoad(EXAMPLE.dwelling)
  expect(load).toBe(EXAMPLE.sum)
  expect(load / 240).toBeCloseTo(EXAMPLE.amps, 1)
  expect(EXAMPLE.printedAmps - load / 240).toBeGreaterThan(20)
})

test('CE rule 8-200: the heater of a tub counts whole, another load a quarter', () => {
  const { dwelling } = EXAMPLE
  const tub = ceItemisedLoad({ ...dwelling, whole: [...dwelling.whole, 4000] })
  const other = ceItemisedLoad({ ...dwelling, others: [...dwelling.others, 4000] })
  expect([tub - EXAMPLE.sum, other - EXAMPLE.sum]).toEqual([4000, 1000])
})

test.each(LEAST)('CE rule 8-200: $floorArea m² of floor, at least $watts W', each => {
  const empty = { area: 90, heatingOrCooling: 0, range: 0, whole: [], others: [] }
  expect(ceDwellingLoad({ ...empty, floorArea: each.floorArea })).toBe(each.watts)
  expect(ceItemisedLoad({ ...empty, floorArea: each.floorArea })).toBe(5000)
})
