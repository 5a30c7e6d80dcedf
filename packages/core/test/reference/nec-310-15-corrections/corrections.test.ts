import { expect, test } from 'vitest'
import { correctedAmps } from '../../../src/domain/codebook/nec/corrected-ampacity.ts'
import {
  ambientFactor,
  TABLE_310_15_B_1,
} from '../../../src/domain/codebook/nec/table-310-15-b-1.ts'
import { adjustmentFactor } from '../../../src/domain/codebook/nec/table-310-15-c-1.ts'
import { HEAT_COLUMNS, necAmps } from '../../../src/domain/codebook/nec/table-310-16.ts'
import { AMBIENT, BASED_ON_40, COMBINED, HOT, NUMBER, RACK } from './cases.ts'

const factorsAt = (celsius: number) => HEAT_COLUMNS.map(column => ambientFactor(celsius, column))

test.each([...AMBIENT, ...HOT])('NEC 310.15(B)(1): up to $upTo °C', ({ upTo, factors }) => {
  expect(factorsAt(upTo)).toEqual(factors)
  expect(factorsAt(upTo - 4)).toEqual(factors)
  expect(factorsAt(upTo + 1)).not.toEqual(factors)
})

test('NEC 310.15(B)(1): all bands were compared, colder air is in the first, hotter air in none', () => {
  expect(TABLE_310_15_B_1.bands).toHaveLength(AMBIENT.length + HOT.length)
  expect(factorsAt(-20)).toEqual(AMBIENT[0]?.factors)
  expect(factorsAt(85.5)).toEqual([undefined, undefined, undefined])
  expect(factorsAt(Number.NaN)).toEqual([undefined, undefined, undefined])
})

// One formula, two base temperatures: the ratio of two factors is the factor on the other base. Both
// factors are rounded to 0.005; the ratio of small ones is the least certain.
test.each(BASED_ON_40)(
  'NEC 310.15(B): at $upTo °C the table based on 40 °C is another',
  ({ upTo, factors }) => {
    const other = HEAT_COLUMNS.map((column, index) => {
      const ratio = (ambientFactor(upTo, column) ?? Number.NaN) / (ambientFactor(40, column) ?? 1)
      const printed = factors[index]
      return printed === undefined || Math.abs(ratio - printed) <= 0.015
    })
    expect(other).toEqual([true, true, true])
    expect(factorsAt(upTo)).not.toEqual(factors)
  },
)

test.each(NUMBER)(
  'NEC 310.15(C)(1): $from to $to conductors, $percent %',
  ({ from, to, percent }) => {
    expect(adjustmentFactor(from)).toBe(percent / 100)
    expect(adjustmentFactor(to)).toBe(percent / 100)
    expect(adjustmentFactor(from - 1)).toBeGreaterThan(percent / 100)
  },
)

test.each([1, 2, 3])('NEC 310.15(C)(1): nothing is taken off %i conductors', loaded =>
  expect(adjustmentFactor(loaded)).toBe(1),
)

test('12 AWG in air of 55 °C: 30 A times 0.76, not times 0.84', () => {
  const carries =
    (necAmps('copper', RACK.size, '90 °C') ?? 0) * (ambientFactor(RACK.ambient, '90 °C') ?? 0)
  expect(ambientFactor(RACK.ambient, '90 °C')).toBe(RACK.factor)
  expect(ambientFactor(RACK.ambient, '90 °C')).not.toBe(RACK.wrong)
  expect(Math.abs(carries - RACK.carries)).toBeLessThan(0.05)
})

test('6 AWG at 90 °C, four in a raceway, 40 °C: 54.6 A, below what its terminals allow', () => {
  const laid = {
    metal: 'copper',
    size: '6 AWG',
    insulation: '90 °C',
    terminals: '75 °C',
    ambient: COMBINED.ambient,
    loaded: COMBINED.loaded,
  } as const
  expect(correctedAmps(laid)).toBeCloseTo(COMBINED.carries, 6)
  expect(correctedAmps({ ...laid, ambient: 30, loaded: 3 })).toBe(COMBINED.terminals)
  expect(correctedAmps({ ...laid, ambient: 10, loaded: 3 })).toBe(COMBINED.terminals)
  expect(correctedAmps({ ...laid, ambient: 90 })).toBeUndefined()
  expect(correctedAmps({ ...laid, size: '7 AWG' })).toBeUndefined()
})
