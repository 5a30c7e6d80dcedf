import { expect, test } from 'vitest'
import {
  motorConductorAmps,
  motorsConductorAmps,
} from '../../../src/domain/codebook/nec/section-430-22-24.ts'
import { lockedRotorAmps, TABLE_430_7_B } from '../../../src/domain/codebook/nec/table-430-7-b.ts'
import { motorAmps, TABLE_430_248 } from '../../../src/domain/codebook/nec/table-430-248.ts'
import {
  BOUNDS,
  FOUR_MOTORS,
  FULL_LOAD,
  HELD,
  HELD_50_HP,
  LETTERS,
  MIXED,
  ONE_MOTOR,
} from './cases.ts'

test.each(FULL_LOAD)('NEC 430.248: $power', ({ power, amps }) =>
  expect(
    (['115 V', '200 V', '208 V', '230 V'] as const).map(volts => motorAmps(power, volts)),
  ).toEqual(amps),
)

test('NEC 430.248 and 430.7(B): every row was compared', () => {
  expect(Object.keys(TABLE_430_248.rows)).toEqual(FULL_LOAD.map(({ power }) => power))
  expect(Object.keys(TABLE_430_7_B.rows)).toEqual(LETTERS.map(({ letter }) => letter))
})

test.each(LETTERS)(
  'NEC 430.7(B): letter $letter, within the 0.01 in which two pages part',
  each => {
    const [least, most] = TABLE_430_7_B.rows[each.letter] ?? []
    expect(least).toBe(each.least)
    if (each.most === undefined) expect(most).toBeUndefined()
    else expect(Math.abs((most ?? Number.NaN) - each.most)).toBeLessThan(0.011)
  },
)

test.each(BOUNDS.map((bound, index) => ({ bound, index })))(
  'NEC 430.7(B): one letter ends where the next begins, at $bound',
  ({ bound, index }) => {
    const rows = Object.values(TABLE_430_7_B.rows)
    expect(rows[index]?.[1]).toBeCloseTo(bound - 0.01, 9)
    expect(rows[index + 1]?.[0]).toBe(bound)
  },
)

test.each(HELD)('$horsepower hp, $volts V, letter $letter: $least to $most A', each => {
  const held = lockedRotorAmps({ ...each, phases: 1 })
  expect(Math.abs((held?.least ?? 0) - each.least)).toBeLessThan(0.1)
  expect(Math.abs((held?.most ?? 0) - each.most)).toBeLessThan(0.1)
})

test('50 hp of three phases: √3 counts once, and the page is within 3.1 %', () => {
  const held = lockedRotorAmps(HELD_50_HP.motor)
  expect(held?.least).toBeCloseTo(HELD_50_HP.least, 1)
  expect(held?.most).toBeCloseTo(HELD_50_HP.most, 1)
  expect(Math.abs((held?.least ?? 0) / HELD_50_HP.page[0] - 1)).toBeLessThan(0.031)
  expect(Math.abs((held?.most ?? 0) / HELD_50_HP.page[1] - 1)).toBeLessThan(0.031)
})

test('a letter that is not used has no current, and V has no upper end', () => {
  const motor = { horsepower: 1, volts: 230, phases: 1 } as const
  for (const letter of ['I', 'O', 'Q', 'l', ''])
    expect(lockedRotorAmps({ ...motor, letter })).toBeUndefined()
  expect(lockedRotorAmps({ ...motor, letter: 'V' })?.most).toBeUndefined()
})

test.each(ONE_MOTOR)('NEC 430.22: $fullLoad A asks $least A of its conductors', each =>
  expect(motorConductorAmps(each.fullLoad)).toBe(each.least),
)

test('NEC 430.24: four motors ask 367 A, not 420 A', () => {
  expect(motorsConductorAmps(FOUR_MOTORS)).toBe(FOUR_MOTORS.least)
  const every = FOUR_MOTORS.motors.reduce((sum, each) => sum + motorConductorAmps(each), 0)
  expect(every).toBe(FOUR_MOTORS.wrong)
})

test('NEC 430.24: motors, a heater and a light together', () => {
  expect(motorsConductorAmps(MIXED)).toBeCloseTo(MIXED.least, 6)
  expect(motorsConductorAmps({ ...MIXED, motors: [8, 12] })).toBeCloseTo(MIXED.least, 6)
  expect(motorsConductorAmps({ motors: [] })).toBe(0)
})
