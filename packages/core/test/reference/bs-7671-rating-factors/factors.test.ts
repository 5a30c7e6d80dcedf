import { expect, test } from 'vitest'
import { ambientFactor4B1 } from '../../../src/domain/codebook/bs-7671/table-4b1.ts'
import { groundFactor4B2 } from '../../../src/domain/codebook/bs-7671/table-4b2.ts'
import { groupFactor4C1 } from '../../../src/domain/codebook/bs-7671/table-4c1.ts'
import { AIR_70, AIR_90, BUNCHED, GROUND_70 } from './cases.ts'

test.each(AIR_70)(
  'BS 7671 4B1: 70 °C cable in air of $celsius °C, $factor',
  ({ celsius, factor }) => expect(ambientFactor4B1(celsius, 'thermoplastic')).toBe(factor),
)

test.each(AIR_90)(
  'BS 7671 4B1: 90 °C cable in air of $celsius °C, $factor',
  ({ celsius, factor }) => expect(ambientFactor4B1(celsius, 'thermosetting')).toBe(factor),
)

test('BS 7671 4B1: the cell that older editions had at 65 °C allows nothing', () => {
  expect(ambientFactor4B1(65, 'thermoplastic')).toBeUndefined()
  expect(ambientFactor4B1(81, 'thermosetting')).toBeUndefined()
})

test.each(GROUND_70)('BS 7671 4B2: 70 °C cable in ground of $celsius °C, $factor', each =>
  expect(groundFactor4B2(each.celsius, 'thermoplastic')).toBe(each.factor),
)

test.each(BUNCHED)('BS 7671 4C1: $circuits circuits bunched, $factor', ({ circuits, factor }) =>
  expect(groupFactor4C1(circuits, 'bunched')).toBe(factor),
)
