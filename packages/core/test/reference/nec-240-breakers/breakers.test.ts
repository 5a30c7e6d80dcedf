import { expect, test } from 'vitest'
import {
  greatestBreaker,
  SECTION_240_4_B,
} from '../../../src/domain/codebook/nec/section-240-4-b.ts'
import { smallConductorBreaker } from '../../../src/domain/codebook/nec/section-240-4-d.ts'
import {
  isStandard,
  nextStandard,
  SECTION_240_6,
} from '../../../src/domain/codebook/nec/section-240-6.ts'
import { necAmps } from '../../../src/domain/codebook/nec/table-310-16.ts'
import { FUSES_2017, NEXT_SIZE_UP, NOT_MADE, RATINGS, SMALL } from './cases.ts'

test('NEC 240.6(A): the ratings of two pages are the same', () =>
  expect(SECTION_240_6.ratings).toEqual(RATINGS))

test.each(RATINGS.slice(1).map((rating, index) => ({ rating, below: RATINGS[index] ?? 0 })))(
  'NEC 240.6(A): just above $below A comes $rating A',
  ({ rating, below }) => {
    expect(nextStandard(below)).toBe(below)
    expect(nextStandard(below + 0.001)).toBe(rating)
    expect(isStandard(rating)).toBe(true)
    expect(isStandard((rating + below) / 2)).toBe(false)
  },
)

test('NEC 240.6(A): fuses add four ratings; 601 A of 2017 is not one of them', () => {
  expect(SECTION_240_6.fusesOnly).toEqual(FUSES_2017.filter(amps => amps !== 601))
  for (const amps of FUSES_2017) expect(isStandard(amps)).toBe(false)
})

test.each(NOT_MADE)('NEC 240.6(A): $amps A is not made, $next A is', ({ amps, next }) => {
  expect(isStandard(amps)).toBe(false)
  expect(nextStandard(amps)).toBe(next)
})

test.each(NEXT_SIZE_UP)('NEC 240.4(B): $breaker A before what carries $carries A', each =>
  expect(greatestBreaker(each.carries)).toBe(each.breaker),
)

test('NEC 240.4(C): above 800 A not over what the conductor carries', () => {
  expect(SECTION_240_4_B.upTo).toBe(800)
  expect(greatestBreaker(799)).toBe(800)
  expect(greatestBreaker(801)).toBe(800)
  expect(greatestBreaker(999)).toBe(800)
  expect(greatestBreaker(1000)).toBe(1000)
})

test('NEC 240.6(A): where factors leave little, the next standard rating, which of fuses goes down to 10 A', () => {
  expect(greatestBreaker(14.9)).toBe(15)
  expect(greatestBreaker(10.1)).toBe(15)
  expect(greatestBreaker(8.7)).toBe(10)
})

test.each(SMALL)('NEC 240.4(D): $breaker A before $metal $size', ({ metal, size, breaker }) => {
  expect(smallConductorBreaker(metal, size)).toBe(breaker)
  expect(necAmps(metal, size, '75 °C')).toBeGreaterThan(breaker)
})

test('NEC 240.4(D) says nothing of 8 AWG, nor of 14 AWG aluminium', () => {
  expect(smallConductorBreaker('copper', '8 AWG')).toBeUndefined()
  expect(smallConductorBreaker('aluminium', '8 AWG')).toBeUndefined()
  expect(smallConductorBreaker('aluminium', '14 AWG')).toBeUndefined()
})
