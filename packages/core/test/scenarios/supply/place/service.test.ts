import { ENGLISH } from '@tubwright/words'
import { describe, expect, test } from 'vitest'
import { knownSi } from '../../../support/surveyed.ts'
import type { ServiceText } from './yard-tub.ts'
import { found, one, tubAt, tubIn } from './yard-tub.ts'

const KILOWATT = 1000
const TUB = 48 * 240 // C19: 11.52 kVA, by its plate and not by a breaker of 60 A

/** 1500 ft² with range, dryer and water heater; no heating or cooling that runs on it. */
const HOUSE: ServiceText = {
  main: '100 A',
  area: '1500 ft2',
  complete: 'yes',
  loads: [
    { id: 'range', label: 'Range', kind: 'range', power: '12 kW' },
    { id: 'dryer', label: 'Dryer', kind: 'dryer', power: '5 kW' },
    { id: 'tank', label: 'Water heater', kind: 'water-heater', power: '4.5 kW' },
  ],
}
const withLoads = (...loads: NonNullable<ServiceText['loads']>): ServiceText => ({
  ...HOUSE,
  loads: [...(HOUSE.loads ?? []), ...loads],
})
const other = (power: string) => ({ id: 'other', label: 'Other', kind: 'other', power }) as const

/** 8 kVA whole, 40 % of what is above, worked by hand. */
const byHand = (plates: number): number => 8000 + 0.4 * (1500 * 3 + 3 * 1500 + plates - 8000)

describe('C19 [SUPPLY-60] room on a service of 100 A', () => {
  test('the tub counts by its plate: 48 A at 240 V are 11.52 kVA', () => {
    const finding = one(tubAt('US', HOUSE), 'SUPPLY-60')
    expect(finding.verdict).toBe('holds')
    expect(finding.params['tubs']).toBeCloseTo(TUB, 6)
    expect(finding.params['may']).toBe(24 * KILOWATT)
    expect(finding.params['is']).toBeCloseTo(byHand(21_500 + TUB), 0)
    expect(ENGLISH.tellCode(finding)).toBe(
      'With the tub by its plate (11.52 kVA) the house counts for 21.61 kVA; a main breaker of 100 A gives 24 kVA.',
    )
  })

  test('two such tubs are over 24 kVA: a bigger service', () => {
    const second = (id: string) => ({ id, label: id, kind: 'tub', power: '11.52 kW' }) as const
    const both = one(tubAt('US', withLoads(second('a'), second('b'))), 'SUPPLY-60')
    expect(both).toMatchObject({ verdict: 'breaks', severity: 'warning' })
    expect(both.params['is']).toBeCloseTo(byHand(21_500 + 2 * TUB), 0)
    // Listed once it is this very tub, and counts once.
    const once = one(tubAt('US', withLoads(second('a'))), 'SUPPLY-60')
    expect(once.params['is']).toBeCloseTo(byHand(21_500 + TUB), 0)
  })

  test.each([
    ['just inside', -10, 'holds'],
    ['at 24 kVA', 0, 'holds'],
    ['just outside', 10, 'breaks'],
  ])('%s', (_, more, verdict) => {
    const rest = (24_000 - byHand(21_500 + TUB)) / 0.4 + more
    expect(one(tubAt('US', withLoads(other(`${rest} W`))), 'SUPPLY-60').verdict).toBe(verdict)
  })

  test('heating that is there counts whole by one reading and in part by the other', () => {
    const heating = { id: 'h', label: 'Heating', kind: 'heating', power: '5 kW' } as const
    const finding = one(tubAt('US', withLoads(heating)), 'SUPPLY-60')
    expect(finding.verdict).toBe('experts-differ')
    expect(finding.readings?.strict).toBeCloseTo(byHand(21_500 + TUB) + 5000, 0)
    expect(finding.readings?.lenient).toBeCloseTo(byHand(21_500 + TUB + 5000), 0)
    const cooling = { ...heating, id: 'c', kind: 'cooling', power: '4 kW' } as const
    expect(one(tubAt('US', withLoads(heating, cooling)), 'SUPPLY-60').params['is']).toBeCloseTo(
      byHand(21_500 + TUB) + 5000,
      0,
    )
  })

  test('without the whole house an electrician has to calculate', () => {
    const finding = one(tubAt('US', { main: '100 A' }), 'SUPPLY-60', 'electrician')
    expect(finding).toMatchObject({ verdict: 'not-shown', asks: [] })
    expect(ENGLISH.tellCode(finding)).toContain(
      'needs a demand calculation of the whole house by an electrician. The tub counts by its plate, 11.52 kVA',
    )
    expect(found(tubAt('US', { main: '101 A' }), 'SUPPLY-60')).toEqual([])
    expect(found(tubAt('US', {}), 'SUPPLY-60')).toHaveLength(1)
    expect(found(tubIn('US'), 'SUPPLY-60')).toEqual([])
  })

  test('a list that may not be whole is never enough, and may be too much already', () => {
    const partly = tubAt('US', { ...HOUSE, complete: 'no' })
    expect(found(partly, 'SUPPLY-60').map(each => each.verdict)).toEqual(['not-shown', 'not-shown'])
    const open = tubAt('US', { ...HOUSE, complete: { unknown: 'owner unsure' } })
    expect(one(open, 'SUPPLY-60').asks).toEqual(['service.complete'])
    const much = { ...withLoads(other('40 kW')), complete: 'no' as const }
    expect(one(tubAt('US', much), 'SUPPLY-60').verdict).toBe('breaks')
  })

  test('of unknown loads those are asked for that decide', () => {
    const vague = withLoads({ ...other('1 kW'), power: { unknown: 'not visible' } })
    expect(one(tubAt('US', vague), 'SUPPLY-60').asks).toEqual(['service.loads.other.power'])
    const small = withLoads({
      ...other('1 kW'),
      power: { from: '1 kW', to: '2 kW', source: 'owner' },
    })
    expect(one(tubAt('US', small), 'SUPPLY-60')).toMatchObject({ verdict: 'holds', asks: [] })
  })

  test('Canada counts by its own rule, never below 24 kW', () => {
    // 139 m²: 5000 + 1000; range 6000; tub whole; 25 % of dryer and tank. Worked by hand.
    const finding = one(tubAt('CA', HOUSE), 'SUPPLY-60')
    expect(finding.params['is']).toBeCloseTo(6000 + 6000 + TUB + 0.25 * 9500, 0)
    expect(finding).toMatchObject({ verdict: 'breaks', clause: { standard: 'CE Code' } })
    const bare = one(tubAt('CA', { ...HOUSE, loads: [] }), 'SUPPLY-60')
    expect(bare).toMatchObject({ verdict: 'holds', params: { is: 24_000, may: 24_000 } })
  })

  test('books without a calculation have nothing to say', () => {
    for (const region of ['UK', 'EU', 'AU', 'NZ'] as const)
      expect(one(tubAt(region, HOUSE), 'SUPPLY-60')).toMatchObject({
        verdict: 'not-shown',
        isCovered: false,
        asks: [],
      })
  })
})

describe('C21 [SUPPLY-53] a circuit beyond portable tubs', () => {
  const at = (amps: number) => {
    const survey = tubIn('US')
    return one(
      { ...survey, supply: { ...survey.supply, breaker: knownSi('A', amps) } },
      'SUPPLY-53',
    )
  }

  test.each([
    [50, 'holds'],
    [60, 'holds'],
    [70, 'not-shown'],
    [125, 'not-shown'],
  ])('%d A: %s', (amps, verdict) => expect(at(amps).verdict).toBe(verdict))

  test('is work for an engineer or an electrician, each branch protected by itself', () => {
    expect(at(125)).toMatchObject({ severity: 'caution', isTight: false })
    expect(ENGLISH.tellCode(at(125))).toBe(
      'The breaker is 125 A; circuits of portable tubs go up to 60 A. Beyond, each branch gets a ground-fault device of its own: work for an engineer or an electrician.',
    )
    expect(at(60).isTight).toBe(false)
  })

  test('is a figure of North America', () => {
    for (const region of ['UK', 'EU', 'AU', 'NZ'] as const)
      expect(found(tubIn(region), 'SUPPLY-53')).toEqual([])
  })
})
