import { expect, test } from 'vitest'
import { amps4D2A } from '../../../src/domain/codebook/bs-7671/table-4d2a.ts'
import { SECOND } from './cases.ts'

const cells = SECOND.flatMap(({ column, sizes, amps }) =>
  sizes.map((mm2, at) => ({ column, mm2, carries: amps[at] ?? Number.NaN })),
)

test.each(cells)('BS 7671 4D2A: $column, $mm2 mm² carries $carries A', each =>
  expect(amps4D2A(each.mm2, each.column)).toBe(each.carries),
)
