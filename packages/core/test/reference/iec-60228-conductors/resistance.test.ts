import { expect, test } from 'vitest'
import { AREAS_MM2, ohmsAt20C, warmed } from '../../../src/domain/codebook/iec-60228.ts'
import { COIL, MULTIPLIERS, RESISTIVITY, SECOND, TO_20C } from './cases.ts'

const cells = SECOND.flatMap(({ conductor, ohms, sizes }) =>
  ohms.map((each, at) => ({ conductor, ohms: each, mm2: sizes[at] ?? Number.NaN })),
)

test.each(cells)('IEC 60228: $conductor $mm2 mm² has $ohms Ω/km', each =>
  expect(ohmsAt20C(each.mm2, 1000, each.conductor)).toBeCloseTo(each.ohms, 9),
)

// Printed to three digits.
test.each(TO_20C)('IEC 60228: from $celsius °C to 20 °C, $factor', ({ celsius, factor }) =>
  expect(Math.abs(1 / warmed(celsius) - factor)).toBeLessThan(0.001),
)

test.each(MULTIPLIERS)('at $celsius °C, $multiplier of 20 °C', ({ celsius, multiplier }) =>
  expect(warmed(celsius)).toBeCloseTo(multiplier, 9),
)

test('a hot coil lies within 0.7 % of both published rules', () => {
  const hot = (COIL.ohms * warmed(COIL.to)) / warmed(COIL.from)
  expect(Math.abs(hot / COIL.published - 1)).toBeLessThan(0.007)
  expect(Math.abs(hot / COIL.copper - 1)).toBeLessThan(0.007)
})

test.each(AREAS_MM2)(
  '%d mm² is allowed up to 8 %% more than its area of copper has, never less',
  mm2 => {
    const share = ((ohmsAt20C(mm2, 1, 'rigid') ?? Number.NaN) * mm2) / RESISTIVITY
    expect(share).toBeGreaterThan(1)
    expect(share).toBeLessThan(1.08)
  },
)
