import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Unit } from '../../../src/base/entered.ts'
import { DIMENSIONS, parseQuantity } from '../../../src/base/entered.ts'

const si = (unit: Unit, text: string): number | string => {
  const read = parseQuantity(unit, text)
  return read.ok ? read.value.si : read.failure.reason
}

describe('a quantity as people write it', () => {
  // Exact by definition: NIST SP 811, appendix B.8.
  test.each([
    ['m', '35 ft', 10.668],
    ['m', '1 in', 0.0254],
    ['m', '240 mm', 0.24],
    ['V', '240 V', 240],
    ['V', '0.24 kV', 240],
    ['A', '4 mA', 0.004],
    ['Ω', '25 mohm', 0.025],
    ['Ω', '1 MΩ', 1e6],
    ['W', '5.5 kW', 5500],
    ['K', '104 °F', 313.15],
    ['K', '40 °C', 313.15],
    ['N·m', '20 in-lb', 2.259696580552],
  ] as const)('%s: %s', (unit, text, value) => {
    expect(si(unit, text)).toBeCloseTo(value, 9)
  })

  test.each([
    ['A', '12', 'no-unit'],
    ['A', 'twelve A', 'no-number'],
    ['A', '12 V', 'wrong-unit'],
    ['A', '12 a', 'wrong-unit'],
    ['V', '5 MV', 'wrong-unit'],
    ['A', '1e9 A', 'out-of-range'],
    ['A', '-3 A', 'out-of-range'],
    ['A', '0 A', 'out-of-range'],
    ['V', '0 V', 'out-of-range'],
    ['Ω', '0 ohm', 'out-of-range'],
    ['A', 'NaN A', 'no-number'],
    ['A', 'Infinity A', 'no-number'],
    ['A', '1e999 A', 'out-of-range'],
    ['A', '12 constructor', 'wrong-unit'],
    ['A', '12 __proto__', 'wrong-unit'],
    ['A', '', 'no-number'],
  ] as const)('%s: “%s” is refused: %s', (unit, text, reason) => {
    expect(si(unit, text)).toBe(reason)
  })

  test('never throws, and keeps what was entered', () => {
    const units = Object.keys(DIMENSIONS) as Unit[]
    fc.assert(
      fc.property(fc.constantFrom(...units), fc.string(), (unit, text) => {
        const read = parseQuantity(unit, text)
        return read.ok ? read.value.text === text.trim() : read.failure.may.length > 0
      }),
      { seed: 20_261_125, numRuns: 2000 },
    )
  })

  test('what is printed reads back', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1000, noNaN: true }), amps => {
        const read = parseQuantity('A', `${amps} A`)
        return read.ok && read.value.si === amps
      }),
      { seed: 20_261_125, numRuns: 2000 },
    )
  })
})
