import { expect, test } from 'vitest'
import {
  ratingAtTerminal,
  TERMINAL_CELSIUS,
} from '../../../src/domain/codebook/bs-7671/section-512.ts'
import { amps4D4A } from '../../../src/domain/codebook/bs-7671/table-4d4a.ts'
import { amps4E4A } from '../../../src/domain/codebook/bs-7671/table-4e4a.ts'
import { ampsB523 } from '../../../src/domain/codebook/hd-60364/b-52-3.ts'
import { CONFLICT, SECOND, SIZES, TERMINALS } from './cases.ts'

const cells = SECOND.flatMap(({ column, amps }) =>
  SIZES.map((mm2, at) => ({ column, mm2, carries: amps[at] ?? Number.NaN })),
).filter(({ column, mm2 }) => column !== CONFLICT.column || mm2 !== CONFLICT.mm2)

test.each(cells)('BS 7671 4E4A: $column, $mm2 mm² carries $carries A', each =>
  expect(amps4E4A(each.mm2, each.column)).toBe(each.carries),
)

test('the cell in which two pages differ is the lesser, which the harmonised table has too', () => {
  expect(cells).toHaveLength(47)
  expect(amps4E4A(CONFLICT.mm2, CONFLICT.column)).toBe(CONFLICT.lesser)
  expect(ampsB523(CONFLICT.mm2, 'D1')).toBe(CONFLICT.lesser)
  expect(CONFLICT.greater - CONFLICT.lesser).toBeLessThanOrEqual(3)
})

test.each(SIZES)('at a terminal for 70 °C the table for 70 °C holds: %d mm²', mm2 => {
  expect(TERMINAL_CELSIUS).toBe(TERMINALS)
  const [at70, at90] = [amps4D4A(mm2, 'C 2') ?? Number.NaN, amps4E4A(mm2, 'C 2') ?? Number.NaN]
  expect(ratingAtTerminal(at70, at90, TERMINALS)).toBe(at70)
  expect(at70).toBeLessThan(at90)
})
