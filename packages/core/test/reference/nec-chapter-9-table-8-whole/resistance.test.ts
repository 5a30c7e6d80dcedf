import { expect, test } from 'vitest'
import {
  circularMils,
  directOhms,
  ohmsAt,
} from '../../../src/domain/codebook/nec/chapter-9-table-8.ts'
import {
  ALUMINIUM,
  AREAS,
  AT_20,
  COPPER,
  LAST_SOLID,
  OTHER_TEMPERATURES,
  SIZES,
  STRANDED,
} from './cases.ts'

const ROWS = SIZES.map((size, index) => ({
  size,
  area: AREAS[index],
  copper: COPPER[index],
  aluminium: ALUMINIUM[index],
  stranding: index <= SIZES.indexOf(LAST_SOLID) ? ('solid' as const) : ('stranded' as const),
}))

test.each(ROWS)('NEC chapter 9 table 8: $size, $stranding', ({ size, stranding, ...row }) => {
  expect(circularMils(size)).toBe(row.area)
  expect(directOhms({ metal: 'copper', stranding, size })).toBe(row.copper)
  expect(directOhms({ metal: 'aluminium', stranding, size })).toBe(row.aluminium)
})

test.each(STRANDED)('NEC chapter 9 table 8: $size copper, stranded, $ohms Ω/kft', each =>
  expect(directOhms({ metal: 'copper', stranding: 'stranded', size: each.size })).toBe(each.ohms),
)

test('NEC chapter 9 table 8: no solid row above 8 AWG, no row between the gauges', () => {
  expect(directOhms({ metal: 'copper', stranding: 'solid', size: '6 AWG' })).toBeUndefined()
  expect(directOhms({ metal: 'copper', stranding: 'stranded', size: '5 AWG' })).toBeUndefined()
  expect(circularMils('10 mm²')).toBeUndefined()
})

test.each(OTHER_TEMPERATURES)('note 2: 6 AWG copper at $celsius °C, $ohms Ω/kft', each => {
  const at75 = directOhms({ metal: 'copper', stranding: 'stranded', size: '6 AWG' }) ?? Number.NaN
  expect(Math.abs(ohmsAt(at75, 'copper', each.celsius) / each.ohms - 1)).toBeLessThan(0.003)
})

test('note 2: about 82 % is left at 20 °C, and aluminium changes more', () => {
  expect(ohmsAt(1, 'copper', 20)).toBeCloseTo(AT_20, 2)
  expect(ohmsAt(1, 'aluminium', 20)).toBeLessThan(ohmsAt(1, 'copper', 20))
  expect(ohmsAt(1, 'aluminium', 75)).toBe(1)
})
