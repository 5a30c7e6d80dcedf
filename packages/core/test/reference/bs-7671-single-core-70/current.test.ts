import { expect, test } from 'vitest'
import { amps4D1A } from '../../../src/domain/codebook/bs-7671/table-4d1a.ts'
import { METHOD_A1, ROW_25, SECOND } from './cases.ts'

const cells = (columns: typeof SECOND) =>
  columns.flatMap(({ column, sizes, amps }) =>
    sizes.map((mm2, at) => ({ column, mm2, carries: amps[at] ?? Number.NaN })),
  )

test.each(cells(SECOND))('BS 7671 4D1A: $column, $mm2 mm² carries $carries A', each =>
  expect(amps4D1A(each.mm2, each.column)).toBe(each.carries),
)

test.each(cells(METHOD_A1))('BS 7671 4D1A: $column, $mm2 mm² is method A1, $carries A', each => {
  const rounding = each.column === 'A 2' && each.mm2 === 2.5 ? 0.5 : 0
  const printed = amps4D1A(each.mm2, each.column) ?? Number.NaN
  expect(Math.abs(printed - each.carries)).toBeLessThanOrEqual(rounding)
})

test.each(ROW_25)('BS 7671 4D1A: $column, 25 mm² carries $carries A', each =>
  expect(amps4D1A(25, each.column)).toBe(each.carries),
)
