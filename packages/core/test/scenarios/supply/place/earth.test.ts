import { ENGLISH } from '@tubwright/words'
import { describe, expect, test } from 'vitest'
import { earthed, found, one, tubIn, verdictOf } from './yard-tub.ts'

const rail = (distance: string) =>
  tubIn('UK', { metal: [{ id: 'lamp', label: 'Metal lamp post', distance, bonded: 'yes' }] })

describe('C35 [SUPPLY-51] neutral and earth as one', () => {
  const combined = one(earthed(tubIn('UK'), 'TN-C-S'), 'SUPPLY-51')

  test('the designer decides: nothing is advised, and no reading stands as the safe one', () => {
    expect(combined.verdict).toBe('experts-differ')
    expect(combined.readings).toBeUndefined()
    const told = ENGLISH.tellCode(combined)
    expect(told).toContain('The designer of the installation decides: nothing is advised here.')
    expect(told).toContain('20 Ω or less')
  })

  test('it is asked for, and no question where the earth comes apart', () => {
    expect(one(tubIn('UK'), 'SUPPLY-51')).toMatchObject({
      verdict: 'not-shown',
      asks: ['supply.earthing'],
    })
    for (const earthing of ['TN-S', 'TT'] as const)
      expect(verdictOf(earthed(tubIn('UK'), earthing), 'SUPPLY-51')).toBe('holds')
  })

  test('C36: the water is read against a spike in the soil, never against the earth of the tub', () => {
    expect(ENGLISH.tellCode(combined)).toContain(
      'read against a spike in the soil 2 to 3 m away, never against the earth of the tub',
    )
  })

  test('elsewhere in Europe and the south it is not covered, in North America no question', () => {
    for (const region of ['EU', 'AU', 'NZ'] as const)
      expect(one(earthed(tubIn(region), 'TN-C-S'), 'SUPPLY-51')).toMatchObject({
        verdict: 'not-shown',
        isCovered: false,
      })
    for (const region of ['US', 'CA'] as const)
      expect(found(tubIn(region), 'SUPPLY-51')).toEqual([])
  })
})

describe('C37 [SUPPLY-52] two earths within reach', () => {
  const judged = (distance: string, earthing: 'TN-S' | 'TN-C-S' | 'TT' = 'TN-C-S') =>
    one(earthed(rail(distance), earthing), 'SUPPLY-52')

  test.each([
    ['1.9 m', 'experts-differ', undefined],
    ['2 m', 'experts-differ', undefined],
    ['2.1 m', 'experts-differ', { strict: 2.5, lenient: 2, decides: 'designer' }],
    ['2.5 m', 'experts-differ', { strict: 2.5, lenient: 2, decides: 'designer' }],
    ['2.6 m', 'holds', undefined],
  ])('earthed metal at %s: %s', (distance, verdict, readings) => {
    const finding = judged(distance)
    expect(finding.verdict).toBe(verdict)
    expect(finding.readings).toEqual(readings)
  })

  test('an electrode of its own is the other earth; one earth alone is no question', () => {
    expect(judged('1 m', 'TT').verdict).toBe('experts-differ')
    expect(judged('1 m', 'TN-S').verdict).toBe('holds')
  })

  test('it is handed to the designer', () => {
    expect(ENGLISH.tellCode(judged('1 m'))).toContain('the designer has to know of it')
  })

  test('what is far is not asked about', () => {
    expect(one(rail('4 m'), 'SUPPLY-52')).toMatchObject({ verdict: 'holds', asks: [] })
    expect(one(rail('1 m'), 'SUPPLY-52').asks).toEqual(['supply.earthing'])
    for (const region of ['US', 'CA', 'EU', 'AU', 'NZ'] as const)
      expect(found({ ...rail('1 m'), region }, 'SUPPLY-52')).toEqual([])
  })
})
