import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  ceBasicLoad,
  ceItemisedLoad,
  ceOtherLoads,
} from '../../../../../src/domain/codebook/ce-code/section-8-200.ts'
import { heaterParts, tubProtection } from '../../../../../src/domain/codebook/nec/article-680.ts'
import {
  leastRating,
  mostContinuous,
} from '../../../../../src/domain/codebook/nec/section-210-20.ts'
import { dwellingLoad, stepped } from '../../../../../src/domain/codebook/nec/section-220-82.ts'
import { existingDwellingLoad } from '../../../../../src/domain/codebook/nec/section-220-83.ts'
import { heaterBreakers } from '../../../../../src/domain/codebook/nec/section-422-11-13.ts'
import { motorsConductorAmps } from '../../../../../src/domain/codebook/nec/section-430-22-24.ts'
import {
  lockedRotorAmps,
  TABLE_430_7_B,
} from '../../../../../src/domain/codebook/nec/table-430-7-b.ts'
import { motorAmps, TABLE_430_248 } from '../../../../../src/domain/codebook/nec/table-430-248.ts'

const SETTINGS = { seed: 20_261, numRuns: 300 } as const

const amps = fc.double({ min: 0.1, max: 300, noNaN: true })
const watts = fc.integer({ min: 0, max: 60_000 })

test('a load in two steps: no more than the load, no less than its share, and it rises', () =>
  fc.assert(
    fc.property(watts, watts, (load, more) => {
      const counted = stepped(load, 10_000, 40)
      expect(counted).toBeLessThanOrEqual(load)
      expect(counted).toBeGreaterThanOrEqual(0.4 * load - 1e-9)
      const rise = stepped(load + more, 10_000, 40) - counted
      expect(rise).toBeGreaterThanOrEqual(0.4 * more - 1e-6)
      expect(rise).toBeLessThanOrEqual(more + 1e-6)
    }),
    SETTINGS,
  ))

test('a tub among the plates adds 40 to 100 % of itself, wherever it stands among them', () =>
  fc.assert(
    fc.property(fc.array(watts, { maxLength: 6 }), watts, (plates, tub) => {
      const house = { area: 1800, circuits: 3, plates }
      for (const load of [
        (each: typeof house) => dwellingLoad(each, []),
        (each: typeof house) => existingDwellingLoad(each),
      ]) {
        const added = load({ ...house, plates: [...plates, tub] }) - load(house)
        expect(added).toBeGreaterThanOrEqual(0.4 * tub - 1e-6)
        expect(added).toBeLessThanOrEqual(tub + 1e-6)
        expect(load({ ...house, plates: [tub, ...plates] })).toBeCloseTo(load(house) + added, 6)
      }
    }),
    SETTINGS,
  ))

test('of several choices of heating and cooling the largest counts, whatever their order', () =>
  fc.assert(
    fc.property(fc.array(watts, { minLength: 1, maxLength: 4 }), choices => {
      const house = { area: 1000, circuits: 3, plates: [] }
      const heating = choices.map(va => [{ kind: 'cooling', va } as const])
      const load = dwellingLoad(house, heating)
      expect(load - dwellingLoad(house, [])).toBeCloseTo(Math.max(...choices), 6)
      expect(dwellingLoad(house, [...heating].reverse())).toBe(load)
    }),
    SETTINGS,
  ))

test('CE: the basic load rises by 1000 W a step of 90 m², and never falls', () =>
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 900 }), area => {
      const load = ceBasicLoad(area)
      expect((load - 5000) % 1000).toBe(0)
      expect(ceBasicLoad(area + 90) - load).toBe(1000)
      expect(load).toBeGreaterThanOrEqual(5000 + (1000 * (area - 90)) / 90 - 1e-6)
    }),
    SETTINGS,
  ))

test('CE: others count 25 % with a range; without one the first 6000 W count whole', () =>
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1501, max: 9000 }), { maxLength: 5 }), others => {
      const sum = others.reduce((total, each) => total + each, 0)
      expect(ceOtherLoads(others, 11_000)).toBeCloseTo(0.25 * sum, 6)
      expect(ceOtherLoads(others, 0) - ceOtherLoads(others, 11_000)).toBeCloseTo(
        0.75 * Math.min(sum, 6000),
        6,
      )
    }),
    SETTINGS,
  ))

test('CE: a tub adds its whole heater, always', () =>
  fc.assert(
    fc.property(watts, watts, (heating, tub) => {
      const house = {
        area: 140,
        floorArea: 100,
        heatingOrCooling: heating,
        range: 12_000,
        whole: [],
        others: [3000],
      }
      expect(ceItemisedLoad({ ...house, whole: [tub] }) - ceItemisedLoad(house)).toBeCloseTo(tub, 6)
    }),
    SETTINGS,
  ))

test('what a breaker carries for hours asks for that breaker again', () =>
  fc.assert(
    fc.property(amps, breaker => {
      expect(leastRating({ continuous: mostContinuous(breaker), other: 0 })).toBeCloseTo(breaker, 9)
    }),
    SETTINGS,
  ))

test('conductors of several motors: the sum and a quarter of the largest, in any order', () =>
  fc.assert(
    fc.property(fc.array(amps, { minLength: 1, maxLength: 6 }), motors => {
      const sum = motors.reduce((total, each) => total + each, 0)
      const least = motorsConductorAmps({ motors })
      expect(least).toBeCloseTo(sum + Math.max(...motors) / 4, 9)
      expect(motorsConductorAmps({ motors: [...motors].reverse() })).toBeCloseTo(least, 9)
      expect(least).toBeLessThanOrEqual(1.25 * sum + 1e-9)
    }),
    SETTINGS,
  ))

test('a heater always has a breaker between its least and its most', () =>
  fc.assert(
    fc.property(fc.double({ min: 13.4, max: 200, noNaN: true }), heater => {
      const { least, most } = heaterBreakers(heater)
      expect(least).toBeGreaterThanOrEqual(1.25 * heater - 1e-6)
      expect(most).toBeGreaterThanOrEqual(least ?? 0)
    }),
    SETTINGS,
  ))

test('no part of a heater is over 48 A, and one part fewer would be', () =>
  fc.assert(
    fc.property(amps, heater => {
      const parts = heaterParts(heater)
      expect(heater / parts).toBeLessThanOrEqual(48 + 1e-6)
      if (parts > 1) expect(heater / (parts - 1)).toBeGreaterThan(48)
    }),
    SETTINGS,
  ))

test('only a tub with its own marked protection, or one built in the field, goes without', () =>
  fc.assert(
    fc.property(
      fc.constantFrom('2017', '2020', '2023'),
      fc.constantFrom(1, 3),
      amps,
      amps,
      fc.integer({ min: 100, max: 480 }),
      (edition, phases, heater, breaker, volts) => {
        const supply = { edition, phases, heater, breaker, volts, voltsToEarth: volts / 2 } as const
        expect(tubProtection({ ...supply, unit: 'listed' })).not.toBe('none more')
        expect(tubProtection({ ...supply, unit: 'listed, protection integral and marked' })).toBe(
          'none more',
        )
      },
    ),
    SETTINGS,
  ))

test.each(['200 V', '208 V', '230 V'] as const)(
  'NEC 430.248: at %s the power of a motor is that at 115 V, within its rounding',
  volts => {
    for (const power of Object.keys(TABLE_430_248.rows)) {
      const at115 = motorAmps(power, '115 V') ?? Number.NaN
      const expected = (at115 * 115) / Number.parseInt(volts, 10)
      const printed = motorAmps(power, volts) ?? Number.NaN
      expect(Math.abs(printed - expected)).toBeLessThan(Math.max(0.051, 0.006 * expected))
    }
  },
)

test('NEC 430.248: a stronger motor takes more, and less for each horsepower', () => {
  const power = (row: string) => {
    const [whole = '', part] = row.replace(' hp', '').split('-')
    const parts = (part ?? whole).split('/').map(Number)
    const fraction = (parts[0] ?? 0) / (parts[1] ?? 1)
    return part === undefined ? fraction : Number(whole) + fraction
  }
  const rows = Object.keys(TABLE_430_248.rows)
  rows.slice(1).forEach((row, index) => {
    const smaller = rows[index] ?? ''
    const at = (each: string) => motorAmps(each, '230 V') ?? Number.NaN
    expect(at(row)).toBeGreaterThan(at(smaller))
    // Printed to whole amps from 5 hp on, and not evenly below: 5 % of room.
    expect(at(row) / power(row)).toBeLessThan((1.05 * at(smaller)) / power(smaller))
  })
})

test('with its rotor held a motor of any letter but A takes more than running', () => {
  for (const letter of Object.keys(TABLE_430_7_B.rows).slice(1)) {
    const held = lockedRotorAmps({ letter, horsepower: 2, volts: 230, phases: 1 })
    expect(held?.least).toBeGreaterThan(motorAmps('2 hp', '230 V') ?? 0)
  }
})
