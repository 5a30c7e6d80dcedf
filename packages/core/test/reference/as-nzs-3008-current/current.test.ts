import { expect, test } from 'vitest'
import { ampsTable4 } from '../../../src/domain/codebook/as-nzs/table-4.ts'
import { ampsTable5 } from '../../../src/domain/codebook/as-nzs/table-5.ts'
import { ampsTable10 } from '../../../src/domain/codebook/as-nzs/table-10.ts'
import { ampsB522 } from '../../../src/domain/codebook/hd-60364/b-52-2.ts'
import { MISNAMED, SIZES, TABLE_4_SECOND, TABLE_5_SECOND, TABLE_10_SECOND } from './cases.ts'

const cells = <Column extends string>(second: Readonly<Record<Column, readonly number[]>>) =>
  (Object.keys(second) as Column[]).flatMap(column =>
    second[column].map((carries, at) => ({ column, carries, mm2: SIZES[at] ?? Number.NaN })),
  )

test.each(cells(TABLE_4_SECOND))('3008 table 4: $column, $mm2 mm² carries $carries A', each =>
  expect(ampsTable4(each.mm2, each.column)).toBe(each.carries),
)

test.each(TABLE_5_SECOND.map((carries, at) => ({ carries, mm2: SIZES[at + 1] ?? Number.NaN })))(
  '3008 table 5: enclosed, $mm2 mm² carries $carries A',
  ({ mm2, carries }) => expect(ampsTable5(mm2, 'enclosed')).toBe(carries),
)

test.each(cells(TABLE_10_SECOND))('3008 table 10: $column, $mm2 mm² carries $carries A', each =>
  expect(ampsTable10(each.mm2, each.column)).toBe(each.carries),
)

test('a figure for 30 °C under the name of this book is not this book’s', () => {
  expect(ampsB522(MISNAMED.mm2, 'B1')).toBe(MISNAMED.carries)
  expect(ampsTable4(MISNAMED.mm2, 'enclosed')).not.toBe(MISNAMED.carries)
})
