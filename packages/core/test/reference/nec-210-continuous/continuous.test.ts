import { expect, test } from 'vitest'
import {
  CONTINUOUS,
  leastRating,
  mostContinuous,
} from '../../../src/domain/codebook/nec/section-210-20.ts'
import { nextStandard } from '../../../src/domain/codebook/nec/section-240-6.ts'
import { heaterBreakers } from '../../../src/domain/codebook/nec/section-422-11-13.ts'
import { necAmps } from '../../../src/domain/codebook/nec/table-310-16.ts'
import { EIGHTY_PERCENT, HEATERS, HOURS, LIGHTING, WATER_HEATER } from './cases.ts'

test.each(EIGHTY_PERCENT)('NEC 210.20(A): a breaker of $breaker A, $most A', each => {
  expect(mostContinuous(each.breaker)).toBe(each.most)
  expect(nextStandard(leastRating({ continuous: each.most, other: 0 }))).toBe(each.breaker)
})

test('NEC 210.19(A): 24 A for three hours ask 30 A, without the three hours 24 A', () => {
  expect(CONTINUOUS.hours).toBe(HOURS)
  expect(leastRating({ continuous: LIGHTING.load, other: 0 })).toBe(LIGHTING.least)
  expect(leastRating({ continuous: 0, other: LIGHTING.load })).toBe(LIGHTING.load)
  expect(necAmps('copper', LIGHTING.size, '75 °C')).toBeGreaterThanOrEqual(LIGHTING.least)
  expect(necAmps('copper', '12 AWG', '75 °C')).toBeLessThan(LIGHTING.least)
})

test('NEC 422.11(E)(3), 422.13: 5500 W at 240 V, at least 30 A, at most 35 A', () => {
  const amps = WATER_HEATER.watts / WATER_HEATER.volts
  expect(Math.abs(amps * 1.25 - WATER_HEATER.at125)).toBeLessThan(0.15)
  expect(Math.abs(amps * 1.5 - WATER_HEATER.at150)).toBeLessThan(0.15)
  expect(heaterBreakers(amps)).toEqual({ least: WATER_HEATER.least, most: WATER_HEATER.most })
})

test.each(HEATERS)('$kilowatts kW at $volts V: a breaker of $breaker A', each => {
  const amps = (each.kilowatts * 1000) / each.volts
  const least = leastRating({ continuous: amps, other: 0 })
  expect(Math.abs(amps - each.amps)).toBeLessThan(0.01)
  expect(Math.abs(least - each.at125)).toBeLessThan(0.01)
  expect(nextStandard(least)).toBe(each.breaker)
  expect(heaterBreakers(amps).least).toBe(each.breaker)
})
