import { expect, test } from 'vitest'
import { amps4D4A } from '../../../src/domain/codebook/bs-7671/table-4d4a.ts'
import { GROUND } from './cases.ts'

const cells = GROUND.flatMap(({ column, sizes, amps }) =>
  sizes.map((mm2, at) => ({ column, mm2, carries: amps[at] ?? Number.NaN })),
)

test.each(cells)('BS 7671 4D4A: $column, $mm2 mm² carries $carries A', each =>
  expect(amps4D4A(each.mm2, each.column)).toBe(each.carries),
)
