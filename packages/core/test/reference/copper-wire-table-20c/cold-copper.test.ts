import { expect, test } from 'vitest'
import { conductorResistance, conductorSize, copperAt } from '../../../src/domain/conductor.ts'
import { PRINTED_COLD } from './cases.ts'

// 0.5 %: our areas are rounded to three figures.
const AREAS = 0.005

test.each(PRINTED_COLD)('copper at 20 °C: $size', ({ size, ohmsPerKilofoot }) => {
  const at75 = conductorResistance(conductorSize.parse(size), 304.8)
  expect(Math.abs(copperAt(at75, 20) / ohmsPerKilofoot - 1)).toBeLessThan(AREAS)
})
