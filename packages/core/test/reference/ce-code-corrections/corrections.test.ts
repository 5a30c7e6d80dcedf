import { expect, test } from 'vitest'
import { ceAmbientFactor } from '../../../src/domain/codebook/ce-code/table-5a.ts'
import { ceAdjustmentFactor } from '../../../src/domain/codebook/ce-code/table-5c.ts'
import { ceFillPercent } from '../../../src/domain/codebook/ce-code/table-8.ts'
import { fillPercent } from '../../../src/domain/codebook/nec/chapter-9-table-1.ts'
import { ambientFactor } from '../../../src/domain/codebook/nec/table-310-15-b-1.ts'
import { adjustmentFactor } from '../../../src/domain/codebook/nec/table-310-15-c-1.ts'
import { HEAT_COLUMNS } from '../../../src/domain/codebook/nec/table-310-16.ts'
import { AMBIENT, FILL, NUMBER } from './cases.ts'

const factorsAt = (celsius: number) => HEAT_COLUMNS.map(column => ceAmbientFactor(celsius, column))

test.each(AMBIENT)('CE table 5A at $celsius °C', ({ celsius, factors }) => {
  expect(factorsAt(celsius)).toEqual(factors)
  expect(factorsAt(celsius - 0.5)).toEqual(factors)
  expect(factorsAt(celsius + 0.5)).not.toEqual(factors)
  expect(HEAT_COLUMNS.map(column => ambientFactor(celsius, column))).toEqual(factors)
})

test('CE table 5A: cold air adds nothing, unlike in the NEC; above 80 °C there is no factor', () => {
  expect(factorsAt(5)).toEqual([1, 1, 1])
  expect(ambientFactor(5, '75 °C')).toBeGreaterThan(1)
  expect(factorsAt(80.5)).toEqual([undefined, undefined, undefined])
})

test.each(NUMBER)('CE table 5C: $from to $to conductors, $factor', ({ from, to, factor }) => {
  expect(ceAdjustmentFactor(from)).toBe(factor)
  expect(ceAdjustmentFactor(to)).toBe(factor)
  if (to < 400) expect(ceAdjustmentFactor(to + 1)).toBeLessThan(factor)
})

test('CE table 5C allows ten conductors more than the NEC does', () => {
  expect(ceAdjustmentFactor(6)).toBe(adjustmentFactor(6))
  expect(ceAdjustmentFactor(10)).toBeGreaterThan(adjustmentFactor(10) ?? 1)
})

test('CE table 8: 40 % from three on, and the order of the NEC below', () => {
  for (const count of [FILL.from, 4, 40]) expect(ceFillPercent(count)).toBe(FILL.percent)
  expect([1, 2].map(ceFillPercent)).toEqual([1, 2].map(fillPercent))
})
