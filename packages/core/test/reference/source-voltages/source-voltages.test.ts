import { expect, test } from 'vitest'
import { magnitude, subtract, ZERO } from '../../../src/base/complex.ts'
import { BANDS, EMFS } from '../../../src/domain/wiring/figures.ts'
import { BAND, BETWEEN } from './cases.ts'

test.each(BETWEEN)('$system: $from to $to is $volts V', ({ system, from, to, volts }) => {
  const a = EMFS[system][from] ?? ZERO
  const b = (to && EMFS[system][to]) ?? ZERO
  // Printed to four digits.
  expect(Math.abs(magnitude(subtract(a, b)) - volts)).toBeLessThan(0.06)
})

test.each(BAND)('$region: $nominal V lies between $least and $most V', each => {
  const { low, high } = BANDS[each.region]
  // 208 V is printed in whole volts.
  expect(Math.abs(low * each.nominal - each.least)).toBeLessThan(0.5)
  expect(Math.abs(high * each.nominal - each.most)).toBeLessThan(0.5)
})
