import { expect, test } from 'vitest'
import { ADDITIONAL_PROTECTION } from '../../../src/domain/codebook/bs-7671/section-415.ts'
import {
  answerTo,
  breakMilliseconds,
  CLASS_A_SECONDS,
  classASeconds,
} from '../../../src/domain/codebook/residual-current.ts'
import { BREAKS, CLASS_A, SIDE_BY_SIDE, TRIPS, TWICE } from './cases.ts'

test.each(CLASS_A)('UL 943: $milliamps mA, open within $seconds s', ({ milliamps, seconds }) => {
  const printed = classASeconds(milliamps) ?? Number.NaN
  // Three digits: half a per cent.
  expect(Math.abs(printed / seconds - 1)).toBeLessThan(0.005)
})

test.each(CLASS_A_SECONDS.map(each => each))('UL 943: (20/$upTo)^1.43 is $seconds s', each =>
  expect(Math.abs(each.seconds / (20 / each.upTo) ** 1.43 - 1)).toBeLessThan(0.005),
)

test('below 6 mA no time holds, between two lines the shorter, above the last the last', () => {
  expect(classASeconds(5.99)).toBeUndefined()
  expect(classASeconds(12)).toBe(classASeconds(15))
  expect(classASeconds(265)).toBe(classASeconds(264))
})

test.each(TRIPS)('$device trips from $from mA on', ({ device, from }) => {
  expect(answerTo(device, from)).toBe('trips')
  expect(answerTo(device, from - 0.1)).toBe('may trip')
  expect(answerTo(device, 0)).toBe('holds')
})

test.each(SIDE_BY_SIDE)('$milliamps mA: class A $classA, 30 mA $thirty', each => {
  expect(answerTo('class A', each.milliamps)).toBe(each.classA)
  expect(answerTo('30 mA', each.milliamps)).toBe(each.thirty)
})

test.each(BREAKS)('IEC 61008: $column, $multiple times: $milliseconds ms', each =>
  expect(breakMilliseconds(each.multiple, each.column)).toBe(each.milliseconds),
)

test('at twice the rating the two sources of the wait differ by 10 ms', () => {
  expect(breakMilliseconds(2, 'general')).toBe(TWICE.general)
  expect(breakMilliseconds(2, 'selective')).toBe(TWICE.selective)
  expect(breakMilliseconds(2, 'selective, at least')).toBe(TWICE.waits)
  expect(TWICE.waits - TWICE.instrument).toBe(10)
})

test('additional protection is a general device at five times its rating', () =>
  expect(breakMilliseconds(ADDITIONAL_PROTECTION.atMultiple, 'general')).toBe(
    ADDITIONAL_PROTECTION.milliseconds,
  ))
