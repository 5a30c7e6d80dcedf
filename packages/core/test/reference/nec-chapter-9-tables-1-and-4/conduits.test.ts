import { expect, test } from 'vitest'
import {
  fillPercent,
  NIPPLE,
  wholeConductors,
} from '../../../src/domain/codebook/nec/chapter-9-table-1.ts'
import {
  conduitArea,
  TABLE_4,
  TABLE_4_DIAMETERS,
  TRADE_SIZES,
} from '../../../src/domain/codebook/nec/chapter-9-table-4.ts'
import { conduitFill } from '../../../src/domain/codebook/nec/conduit-fill.ts'
import { cellOf } from '../../../src/domain/codebook/printed.ts'
import { DIFFER, EMT, FILL, FILLS, PVC, ROUNDED_UP, SECOND_PAGE, WRONG_PVC_40 } from './cases.ts'

test.each(FILL)('NEC chapter 9 table 1: $count conductors, $percent %', ({ count, percent }) =>
  expect(fillPercent(count)).toBe(percent),
)

test('a nipple of up to 24 in takes more than any other', () => {
  expect(NIPPLE).toEqual({ percent: 60, inches: 24 })
  for (const { percent } of FILL) expect(NIPPLE.percent).toBeGreaterThan(percent)
})

test.each(EMT)('NEC chapter 9 table 4, EMT $size, by the scan', ({ size, diameter, areas }) => {
  expect(TABLE_4.EMT.rows[size]).toEqual(areas)
  expect(cellOf(TABLE_4_DIAMETERS, size, 'EMT')).toBe(diameter)
})

test.each(SECOND_PAGE)('NEC chapter 9 table 4, $conduit $size, by the second page', each => {
  expect(cellOf(TABLE_4_DIAMETERS, each.size, each.conduit)).toBe(each.diameter)
  const columns = ['100 %', '31 %', '40 %', '53 %'] as const
  columns.forEach((column, index) => {
    const differs = DIFFER.find(
      cell => cell.conduit === each.conduit && cell.size === each.size && cell.column === column,
    )
    const area = conduitArea(each.conduit, each.size, column)
    expect(area).toBe(differs?.first ?? each.areas[index])
    expect(Math.abs((area ?? Number.NaN) - (each.areas[index] ?? 0))).toBeLessThan(0.0021)
  })
})

test('liquidtight conduit of metal has one page: its rows are those of plastic, type B', () => {
  expect(TABLE_4.LFMC.rows).toEqual(TABLE_4['LFNC-B'].rows)
  for (const size of TRADE_SIZES)
    expect(cellOf(TABLE_4_DIAMETERS, size, 'LFMC')).toBe(cellOf(TABLE_4_DIAMETERS, size, 'LFNC-B'))
})

test.each(PVC)('NEC chapter 9 table 4, $conduit, whole areas by the second list', each =>
  expect(TRADE_SIZES.map(size => conduitArea(each.conduit, size, '100 %'))).toEqual(each.areas),
)

test('the 40 % areas of PVC 40 that some pages print are not 40 % of its area', () => {
  const off = WRONG_PVC_40.map(
    (wrong, index) => wrong - 0.4 * (conduitArea('PVC 40', TRADE_SIZES[index] ?? '', '100 %') ?? 0),
  )
  expect(off.filter(each => Math.abs(each) > 0.001)).toHaveLength(3)
  const ours = WRONG_PVC_40.map((_, index) =>
    conduitArea('PVC 40', TRADE_SIZES[index] ?? '', '40 %'),
  )
  expect(ours).toEqual([0.114, 0.203, 0.333, 0.581])
})

test('note 7: a quotient of 7.92 is eight conductors, of 7.79 seven', () => {
  expect(wholeConductors(ROUNDED_UP.limit / ROUNDED_UP.area)).toBe(ROUNDED_UP.count)
  expect(wholeConductors(7.79)).toBe(7)
  expect(wholeConductors(7.8)).toBe(8)
})

const listOf = (sizes: string): readonly string[] =>
  sizes.split(' ').flatMap(each => {
    const [count = '', gauge = ''] = each.split('×')
    return Array.from({ length: Number(count) }, () => `${gauge} AWG`)
  })

test.each(FILLS)('$sizes in $conduit $tradeSize: $taken of $limit in²', each => {
  const fill = conduitFill(each, listOf(each.sizes))
  expect(fill?.taken).toBeCloseTo(each.taken, 6)
  expect(fill?.limit).toBe(each.limit)
  expect((fill?.taken ?? 9) <= (fill?.limit ?? 0)).toBe(each.fits)
})

test('a size or a conduit that is not printed has no fill', () => {
  expect(conduitFill({ conduit: 'EMT', tradeSize: '3' }, ['6 AWG'])).toBeUndefined()
  expect(conduitFill({ conduit: 'EMT', tradeSize: '1' }, ['6 AWG', '5 AWG'])).toBeUndefined()
})
