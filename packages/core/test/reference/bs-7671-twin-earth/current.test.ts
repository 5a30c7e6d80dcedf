import { expect, test } from 'vitest'
import { amps4D1A } from '../../../src/domain/codebook/bs-7671/table-4d1a.ts'
import { amps4D5 } from '../../../src/domain/codebook/bs-7671/table-4d5.ts'
import { MISNAMED, SECOND, SIZES } from './cases.ts'

const cells = SECOND.flatMap(({ column, amps }) =>
  SIZES.map((mm2, at) => ({ column, mm2, carries: amps[at] ?? Number.NaN })),
)

test.each(cells)('BS 7671 4D5: method $column, $mm2 mm² carries $carries A', each =>
  expect(amps4D5(each.mm2, each.column)).toBe(each.carries),
)

test('the figures of one page are single cores, not flat cable', () => {
  expect(SIZES.map(mm2 => amps4D1A(mm2, 'C 2'))).toEqual([...MISNAMED])
  const differ = SIZES.filter((mm2, at) => amps4D5(mm2, 'C') !== MISNAMED[at])
  expect(differ).toEqual([1, 10, 16])
})
