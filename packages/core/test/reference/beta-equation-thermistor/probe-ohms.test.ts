import { expect, test } from 'vitest'
import { probeOhms, shownCelsius } from '../../../src/domain/wiring/sensing.ts'
import { WORKED } from './cases.ts'

test.each(WORKED)('10 kΩ, 3950 K at $celsius °C', ({ celsius, ohms }) => {
  // Half of the last digit given.
  expect(Math.abs(probeOhms('10k', celsius) - ohms)).toBeLessThanOrEqual(0.05)
  expect(shownCelsius('10k', probeOhms('10k', celsius))).toBeCloseTo(celsius, 9)
})

// The field readings that the 30k curve was fitted to: 48,840 Ω at 59 °F and 16,149 Ω at 104 °F.
test.each([
  { fahrenheit: 59, ohms: 48_840 },
  { fahrenheit: 104, ohms: 16_149 },
])('30k curve at $fahrenheit °F, within 0.2 K of an owner’s reading', ({ fahrenheit, ohms }) => {
  expect(Math.abs(shownCelsius('30k', ohms) - (fahrenheit - 32) / 1.8)).toBeLessThan(0.2)
})
