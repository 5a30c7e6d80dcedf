import { expect, test } from 'vitest'
import {
  HEAT_COLUMNS,
  necAmps,
  TABLE_310_16,
} from '../../../src/domain/codebook/nec/table-310-16.ts'
import { BEFORE_2011, SECOND_PAGE, SIZES, TRAPS } from './cases.ts'

test.each(SECOND_PAGE)('NEC 310.16: $metal at $column, from 14 to 4/0 AWG', each => {
  expect(each.amps).toHaveLength(SIZES.length)
  expect(SIZES.map(size => necAmps(each.metal, size, each.column))).toEqual(each.amps)
})

test.each(BEFORE_2011)(
  'NEC 310.16 before 2011: $metal at $column differs in its traps only',
  old => {
    const differ = old.amps.flatMap((amps, index) => {
      const size = SIZES[index] ?? ''
      return necAmps(old.metal, size, old.column) === amps
        ? []
        : `${old.metal} ${size} ${old.column}`
    })
    expect(differ).toEqual(
      TRAPS.filter(trap => trap.startsWith(old.metal) && trap.endsWith(old.column)),
    )
  },
)

test('NEC 310.16: no row beyond the pages, no column beside them', () => {
  expect(Object.keys(TABLE_310_16.copper.rows)).toEqual(SIZES)
  expect(Object.keys(TABLE_310_16.aluminium.rows)).toEqual(SIZES.slice(1))
  expect([...HEAT_COLUMNS]).toEqual(['60 °C', '75 °C', '90 °C'])
  expect(necAmps('copper', '5 AWG', '75 °C')).toBeUndefined()
  expect(necAmps('copper', 'toString', '75 °C')).toBeUndefined()
})
