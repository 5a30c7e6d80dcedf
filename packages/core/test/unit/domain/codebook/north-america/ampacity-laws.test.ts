import { expect, test } from 'vitest'
import { CE_TABLE_2 } from '../../../../../src/domain/codebook/ce-code/table-2.ts'
import { CE_TABLE_4 } from '../../../../../src/domain/codebook/ce-code/table-4.ts'
import {
  CE_TABLE_5A,
  ceAmbientFactor,
} from '../../../../../src/domain/codebook/ce-code/table-5a.ts'
import {
  CONDUCTOR_SIZES,
  conductorAmps,
} from '../../../../../src/domain/codebook/conductor-amps.ts'
import { correctedAmps } from '../../../../../src/domain/codebook/nec/corrected-ampacity.ts'
import {
  ambientFactor,
  TABLE_310_15_B_1,
} from '../../../../../src/domain/codebook/nec/table-310-15-b-1.ts'
import { adjustmentFactor } from '../../../../../src/domain/codebook/nec/table-310-15-c-1.ts'
import {
  HEAT_COLUMNS,
  necAmps,
  TABLE_310_16,
} from '../../../../../src/domain/codebook/nec/table-310-16.ts'
import { conductorSize } from '../../../../../src/domain/conductor.ts'

const TABLES = [
  { name: 'NEC copper', table: TABLE_310_16.copper },
  { name: 'NEC aluminium', table: TABLE_310_16.aluminium },
  { name: 'CE copper', table: CE_TABLE_2 },
  { name: 'CE aluminium', table: CE_TABLE_4 },
]

const rising = (values: readonly (number | undefined)[]) =>
  values.slice(1).every((value, index) => (value ?? 0) > (values[index] ?? Number.NaN))

test.each(TABLES.flatMap(each => HEAT_COLUMNS.map((column, at) => ({ ...each, column, at }))))(
  '$name at $column: a larger conductor carries more',
  ({ table, at }) => expect(rising(Object.values(table.rows).map(row => row[at]))).toBe(true),
)

test.each(TABLES)('$name: hotter insulation carries more', ({ table }) => {
  for (const row of Object.values(table.rows)) expect(rising(row)).toBe(true)
})

test('aluminium carries less than copper, and at most a gauge or two less', () => {
  const copper = Object.keys(TABLE_310_16.copper.rows)
  for (const size of Object.keys(TABLE_310_16.aluminium.rows))
    for (const column of HEAT_COLUMNS) {
      const amps = necAmps('aluminium', size, column) ?? Number.NaN
      const twoSmaller = copper[Math.max(0, copper.indexOf(size) - 2)] ?? ''
      expect(amps).toBeLessThan(necAmps('copper', size, column) ?? 0)
      expect(amps).toBeGreaterThanOrEqual(necAmps('copper', twoSmaller, column) ?? Number.NaN)
    }
})

// The heat that leaves goes with the excess over the air: amps with its root. Printed whole fives of
// amps; the columns were not computed alike, so a band only.
test.each(Object.keys(TABLE_310_16.copper.rows))(
  'copper %s: the columns stand to each other as the roots of their excess over 30 °C, within 12 %%',
  size => {
    for (const [hot, excess] of [
      ['60 °C', 30],
      ['90 °C', 60],
    ] as const) {
      const ratio = (necAmps('copper', size, hot) ?? 0) / (necAmps('copper', size, '75 °C') ?? 0)
      const small = size === '14 AWG' || size === '12 AWG' || size === '8 AWG'
      expect(Math.abs(ratio / Math.sqrt(excess / 45) - 1)).toBeLessThan(small ? 0.12 : 0.07)
    }
  },
)

const formula = (rated: number, air: number) => Math.sqrt((rated - air) / (rated - 30))

test.each(
  TABLE_310_15_B_1.bands.flatMap(({ upTo }) => HEAT_COLUMNS.map(column => ({ upTo, column }))),
)('NEC: the factor at $upTo °C, $column, is the root of the excess within 0.005', each => {
  const rated = Number.parseInt(each.column, 10)
  const factor = ambientFactor(each.upTo, each.column)
  if (each.upTo >= rated) expect(factor).toBeUndefined()
  else expect(Math.abs((factor ?? Number.NaN) - formula(rated, each.upTo))).toBeLessThan(0.005)
})

test.each(
  CE_TABLE_5A.bands.slice(1).flatMap(({ upTo }) => HEAT_COLUMNS.map(column => ({ upTo, column }))),
)('CE: the factor at $upTo °C, $column, is the root of the excess within 0.005', each => {
  const rated = Number.parseInt(each.column, 10)
  const factor = ceAmbientFactor(each.upTo, each.column)
  if (each.upTo >= rated) expect(factor).toBeUndefined()
  else expect(Math.abs((factor ?? Number.NaN) - formula(rated, each.upTo))).toBeLessThan(0.005)
})

test('in hot air the hotter insulation loses less, in cold air it gains less', () => {
  for (let celsius = -10; celsius <= 55; celsius += 1) {
    const factors = HEAT_COLUMNS.map(column => ambientFactor(celsius, column) ?? Number.NaN)
    const ordered = celsius > 30 ? factors : [...factors].reverse()
    if (celsius <= 25 || celsius > 30) expect(rising(ordered)).toBe(true)
    else expect(factors).toEqual([1, 1, 1])
  }
})

test('more heat around, and more conductors, never let a conductor carry more', () => {
  for (const size of Object.keys(TABLE_310_16.copper.rows)) {
    let last = Number.POSITIVE_INFINITY
    for (let ambient = 0; ambient <= 85; ambient += 5) {
      const amps = correctedAmps({
        metal: 'copper',
        size,
        insulation: '90 °C',
        terminals: '75 °C',
        ambient,
        loaded: 3,
      })
      expect(amps).toBeLessThanOrEqual(last)
      last = amps ?? Number.NaN
    }
  }
  const shares = Array.from({ length: 60 }, (_, index) => adjustmentFactor(index + 1) ?? Number.NaN)
  shares.slice(1).forEach((share, index) => {
    expect(share).toBeLessThanOrEqual(shares[index] ?? 0)
  })
})

test('all conductors together carry more the more they are, but for the step to ten', () => {
  const steps = [3, 6, 9, 20, 30, 40, 60].map(count => count * (adjustmentFactor(count) ?? 0))
  expect(rising(steps)).toBe(true)
  expect(10 * (adjustmentFactor(10) ?? 0)).toBeLessThan(9 * (adjustmentFactor(9) ?? 0))
})

test('the short list of the wiring sheets is the 75 °C column of copper', () => {
  const sizes = CONDUCTOR_SIZES.filter(size => /^\d+ AWG$/u.test(size)).filter(
    size => necAmps('copper', size, '75 °C') !== undefined,
  )
  expect(sizes.length).toBeGreaterThan(8)
  for (const size of sizes)
    expect(conductorAmps(conductorSize.parse(size))?.carries).toBe(necAmps('copper', size, '75 °C'))
})
