import { expect, test } from 'vitest'
import {
  conductorArea,
  TABLE_5_AREAS,
  TABLE_5_DIAMETERS,
} from '../../../src/domain/codebook/nec/chapter-9-table-5.ts'
import { cellOf } from '../../../src/domain/codebook/printed.ts'
import { SECOND_PAGE, WORKED, WRONG } from './cases.ts'

test.each(SECOND_PAGE)('NEC chapter 9 table 5: $size', ({ size, area, diameter }) => {
  expect(conductorArea(size)).toBe(area)
  expect(cellOf(TABLE_5_DIAMETERS, size, 'THWN-2')).toBe(diameter)
})

test('NEC chapter 9 table 5: every row was compared', () => {
  const sizes = SECOND_PAGE.map(({ size }) => size)
  expect(Object.keys(TABLE_5_AREAS.rows)).toEqual(sizes)
  expect(Object.keys(TABLE_5_DIAMETERS.rows)).toEqual(sizes)
})

test('the area that a forum gives for 4 AWG is no circle of its diameter', () => {
  const diameter = cellOf(TABLE_5_DIAMETERS, WRONG.size, 'THWN-2') ?? 0
  expect(Math.abs((Math.PI / 4) * diameter ** 2 - WRONG.area)).toBeGreaterThan(0.04)
})

test('three of 12, four of 10 and eight of 8 AWG take 0.4171 in²', () => {
  const sum = WORKED.sizes.reduce(
    (total, size, index) => total + (WORKED.counts[index] ?? 0) * (conductorArea(size) ?? 0),
    0,
  )
  expect(sum).toBeCloseTo(WORKED.sum, 6)
})
