import { expect, test } from 'vitest'
import { ceTerminalColumn } from '../../../src/domain/codebook/ce-code/rule-4-006.ts'
import { CE_TABLE_2, ceAmps } from '../../../src/domain/codebook/ce-code/table-2.ts'
import { CE_TABLE_4 } from '../../../src/domain/codebook/ce-code/table-4.ts'
import { TABLE_310_16 } from '../../../src/domain/codebook/nec/table-310-16.ts'
import { ALUMINIUM, COPPER, COPPER_SIZES, IN_2012, TERMINALS } from './cases.ts'

test.each(COPPER)('CE table 2 at $column, 14 to 4/0 AWG', ({ column, amps }) =>
  expect(COPPER_SIZES.map(size => ceAmps('copper', size, column))).toEqual(amps),
)

test.each(ALUMINIUM)('CE table 4, $size', ({ size, amps }) =>
  expect(CE_TABLE_4.rows[size]).toEqual(amps),
)

test('CE tables 2 and 4: every row was compared, and both are those of the NEC', () => {
  expect(Object.keys(CE_TABLE_2.rows)).toEqual(COPPER_SIZES)
  expect(Object.keys(CE_TABLE_4.rows)).toEqual(ALUMINIUM.map(({ size }) => size))
  expect(CE_TABLE_2.rows).toEqual(TABLE_310_16.copper.rows)
  expect(CE_TABLE_4.rows).toEqual(TABLE_310_16.aluminium.rows)
  expect(ceAmps('aluminium', '14 AWG', '60 °C')).toBeUndefined()
})

test.each(IN_2012)('CE Code of 2012: $amps A for $metal $size at 60 °C is not today’s', each =>
  expect(ceAmps(each.metal, each.size, '60 °C')).toBe(each.amps - 5),
)

test.each(TERMINALS)('CE rule 4-006: $equipment A, marked $marked: $column', each =>
  expect(ceTerminalColumn(each)).toBe(each.column),
)
