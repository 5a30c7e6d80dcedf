import { ENGLISH } from '@tubwright/words'
import { describe, expect, test } from 'vitest'
import type { Region } from '../../../../src/index.ts'
import { yard } from '../../../../src/index.ts'
import { demoTub } from '../../../support/demo.ts'
import type { YardText } from './yard-tub.ts'
import { found, one, report, tubIn, verdictOf } from './yard-tub.ts'

const outdoors = (region: Region, yard: YardText) => tubIn(region, { setting: 'outdoors', ...yard })

const outlet = (distance: string, groundFault: 'yes' | 'no' = 'yes'): YardText => ({
  receptacles: [{ id: 'wall', label: 'Wall outlet', distance, groundFault, feedsTub: 'no' }],
})
const light = (distance: string, height: string, groundFault: 'yes' | 'no' = 'yes') => ({
  lights: [{ id: 'lamp', label: 'Lamp', distance, height, groundFault }],
})
const wall = (distance: string): YardText => ({
  switches: [{ id: 's', label: 'Patio switch', distance }],
})
const rail = (distance: string, bonded: 'yes' | 'no' = 'no'): YardText => ({
  metal: [{ id: 'rail', label: 'Rail', distance, bonded }],
})

describe.each(['UK', 'EU'] as const)('zones by the book of the %s', region => {
  // The border of a zone belongs to the zone.
  test.each([
    ['1.9 m', 'breaks'],
    ['2 m', 'breaks'],
    ['2.1 m', 'holds'],
  ])('outlet, isolator and switch at %s: %s', (distance, verdict) => {
    expect(verdictOf(outdoors(region, outlet(distance)), 'SUPPLY-42')).toBe(verdict)
    expect(verdictOf(outdoors(region, wall(distance)), 'SUPPLY-46')).toBe(verdict)
    expect(verdictOf(outdoors(region, { disconnect: { distance } }), 'SUPPLY-40', 'near')).toBe(
      verdict,
    )
  })

  test.each([
    ['3.4 m', 'no', 'breaks'],
    ['3.5 m', 'no', 'breaks'],
    ['3.6 m', 'no', 'holds'],
    ['3.5 m', 'yes', 'holds'],
  ] as const)('an outlet at %s, protected %s: %s', (distance, groundFault, verdict) =>
    expect(verdictOf(outdoors(region, outlet(distance, groundFault)), 'SUPPLY-43')).toBe(verdict),
  )

  test.each([
    ['2 m', '1 m', 'yes', 'breaks'],
    ['2.1 m', '1 m', 'yes', 'holds'],
    ['2.1 m', '1 m', 'no', 'breaks'],
    ['3.5 m', '1 m', 'no', 'breaks'],
    ['3.6 m', '1 m', 'no', 'holds'],
    ['0 m', '2.5 m', 'no', 'breaks'],
    ['0 m', '2.6 m', 'no', 'holds'],
  ] as const)(
    'a light %s level, %s over water flush with the floor, protected %s: %s',
    (distance, height, groundFault, verdict) =>
      expect(
        verdictOf(
          outdoors(region, { ...light(distance, height, groundFault), rimHeight: '0 m' }),
          'SUPPLY-45',
        ),
      ).toBe(verdict),
  )

  test('what is over the floor counts: the rim lifts a light out of the zone', () => {
    const lamp = (rimHeight?: string) =>
      one(
        outdoors(region, { ...light('1 m', '2 m', 'no'), ...(rimHeight ? { rimHeight } : {}) }),
        'SUPPLY-45',
      )
    expect(lamp('0.9 m').verdict).toBe('holds')
    expect(lamp('0.5 m').verdict).toBe('breaks')
    expect(lamp().asks).toEqual(['yard.rimHeight'])
  })

  test('lengths stand in metres', () => {
    const told = ENGLISH.tellCode(one(outdoors(region, outlet('1.998 m')), 'SUPPLY-42'))
    expect(told).toContain('is 1.998 m from the tub; outlets belong beyond 2 m')
    expect(told).not.toMatch(/\bft\b|\bin\b/u)
  })

  test('what the book does not have is not covered, and asks for nothing', () => {
    const gaps = ['SUPPLY-41', 'SUPPLY-48', 'SUPPLY-49', 'SUPPLY-50']
    const bare = outdoors(region, {})
    for (const rule of gaps)
      expect(one(bare, rule)).toMatchObject({ verdict: 'not-shown', isCovered: false, asks: [] })
    expect(one(bare, 'SUPPLY-40', 'sight')).toMatchObject({ isCovered: false, asks: [] })
    const corded = { receptacles: [{ id: 'a', label: 'A', distance: '3 m', feedsTub: 'yes' }] }
    expect(one(outdoors(region, corded as YardText), 'SUPPLY-44')).toMatchObject({
      isCovered: false,
    })
    expect(found(outdoors(region, outlet('3 m')), 'SUPPLY-44')).toEqual([])
  })
})

describe('the United Kingdom', () => {
  test.each([
    ['3.5 m', 'no', 'breaks'],
    ['3.6 m', 'no', 'holds'],
    ['1 m', 'yes', 'holds'],
  ] as const)('[SUPPLY-47] metal at %s, bonded %s: %s', (distance, bonded, verdict) =>
    expect(verdictOf(outdoors('UK', rail(distance, bonded)), 'SUPPLY-47')).toBe(verdict),
  )

  test('in a room the zones of a bathroom count, which are not here', () => {
    const room = (distance: string) =>
      one(tubIn('UK', { setting: 'indoors', ...outlet(distance) }), 'SUPPLY-42')
    expect(room('1.9 m').verdict).toBe('breaks')
    expect(room('3 m')).toMatchObject({ verdict: 'not-shown', message: 'not-covered-in-a-room' })
    const open = one(tubIn('UK', outlet('3 m')), 'SUPPLY-42')
    expect(open).toMatchObject({ verdict: 'not-shown', asks: ['yard.setting'] })
  })
})

test('Europe: which metal is bonded was not read', () => {
  expect(one(outdoors('EU', rail('1 m')), 'SUPPLY-47').isCovered).toBe(false)
})

describe.each(['AU', 'NZ'] as const)('%s: the zones of a tub of its own were not found', region => {
  test.each([
    ['3.4 m', 'not-shown'],
    ['3.5 m', 'not-shown'],
    ['3.6 m', 'holds'],
  ])('outside those of a pool it holds, nearer it is open: %s %s', (distance, verdict) => {
    expect(verdictOf(outdoors(region, outlet(distance)), 'SUPPLY-42')).toBe(verdict)
    expect(verdictOf(outdoors(region, wall(distance)), 'SUPPLY-46')).toBe(verdict)
    expect(verdictOf(outdoors(region, light(distance, '1 m')), 'SUPPLY-45')).toBe(verdict)
    expect(verdictOf(outdoors(region, { disconnect: { distance } }), 'SUPPLY-40', 'near')).toBe(
      verdict,
    )
  })

  test.each([
    ['1.24 m', 'breaks'],
    ['1.25 m', 'breaks'],
    ['1.26 m', 'holds'],
  ])('[SUPPLY-47] metal within arm’s reach: %s %s', (distance, verdict) =>
    expect(verdictOf(outdoors(region, rail(distance)), 'SUPPLY-47')).toBe(verdict),
  )

  test('[SUPPLY-43] which outlets need protection is not covered', () => {
    expect(one(outdoors(region, outlet('3 m', 'no')), 'SUPPLY-43').isCovered).toBe(false)
  })
})

describe('Canada', () => {
  test.each([
    ['1.4 m', 'breaks'],
    ['1.5 m', 'holds'],
    ['1.6 m', 'holds'],
  ])('[SUPPLY-42] an outlet at %s: %s', (distance, verdict) =>
    expect(verdictOf(outdoors('CA', outlet(distance)), 'SUPPLY-42')).toBe(verdict),
  )

  test.each([
    ['2.9 m', 'no', 'breaks'],
    ['3 m', 'no', 'breaks'],
    ['3.1 m', 'no', 'holds'],
    ['2.9 m', 'yes', 'holds'],
  ] as const)('[SUPPLY-43] an outlet at %s, protected %s: %s', (distance, groundFault, verdict) =>
    expect(verdictOf(outdoors('CA', outlet(distance, groundFault)), 'SUPPLY-43')).toBe(verdict),
  )

  test.each([
    ['0.9 m', 'breaks'],
    ['1 m', 'experts-differ'],
    ['1.4 m', 'experts-differ'],
    ['1.5 m', 'holds'],
  ])('[SUPPLY-46] switches and disconnect at %s: %s', (distance, verdict) => {
    expect(verdictOf(outdoors('CA', wall(distance)), 'SUPPLY-46')).toBe(verdict)
    const apart = { ...demoTub('large-60'), region: 'CA' as const }
    const placed = { ...apart, yard: yard.parse({ setting: 'outdoors', disconnect: { distance } }) }
    expect(verdictOf(placed, 'SUPPLY-40', 'near')).toBe(verdict)
  })

  test.each([
    ['1.5 m', '2.9 m', 'breaks'],
    ['2.9 m', '0 m', 'breaks'],
    ['3 m', '0 m', 'holds'],
    ['1.5 m', '3 m', 'holds'],
  ])(
    '68-068: a disconnect with ground-fault protection at %s, reached over %s: %s',
    (distance, reach, verdict) =>
      expect(
        verdictOf(outdoors('CA', { disconnect: { distance, reach } }), 'SUPPLY-40', 'near'),
      ).toBe(verdict),
  )

  test('both readings are shown, and the stricter one is in the sentence', () => {
    const finding = one(outdoors('CA', wall('1.2 m')), 'SUPPLY-46')
    expect(finding.readings).toEqual({ strict: 1.5, lenient: 1, decides: 'authority' })
    expect(ENGLISH.tellCode(finding)).toContain(
      'Patio switch is 3 ft 11 in (1.2 m) from the tub; 4 ft 11 in (1.5 m) is the least.',
    )
  })

  test.each([
    ['9 m', 'yes', 'holds'],
    ['9.1 m', 'yes', 'not-shown'],
    ['5 m', 'no', 'not-shown'],
  ] as const)(
    '[SUPPLY-40] %s away, in sight %s: %s, for a lock would do',
    (distance, inSight, verdict) => {
      const finding = one(
        outdoors('CA', { disconnect: { distance, inSight } }),
        'SUPPLY-40',
        'sight',
      )
      expect(finding.verdict).toBe(verdict)
      if (verdict !== 'holds') expect(finding.message).toBe('disconnect-lock')
    },
  )

  test.each([
    ['1.4 m', 'no', 'breaks'],
    ['1.4 m', 'yes', 'not-shown'],
    ['1.5 m', 'yes', 'holds'],
    ['3 m', 'no', 'breaks'],
    ['3.1 m', 'no', 'holds'],
  ] as const)(
    '[SUPPLY-45] a light at %s, protected %s: %s, however high',
    (distance, groundFault, verdict) =>
      expect(verdictOf(outdoors('CA', light(distance, '5 m', groundFault)), 'SUPPLY-45')).toBe(
        verdict,
      ),
  )

  test.each([
    ['3 m', 'not-shown'],
    ['3.1 m', 'holds'],
  ])('[SUPPLY-47] metal at %s that is not bonded: %s, for inspectors differ', (distance, verdict) =>
    expect(verdictOf(outdoors('CA', rail(distance)), 'SUPPLY-47')).toBe(verdict),
  )

  test('[SUPPLY-50] a dwelling needs no switch for its users', () => {
    expect(verdictOf(outdoors('CA', { dwelling: 'one-family' }), 'SUPPLY-50')).toBe('holds')
    expect(one(outdoors('CA', { dwelling: 'other' }), 'SUPPLY-50').message).toBe('emergency-needed')
  })
})

describe('regions are never mixed', () => {
  const yard: YardText = {
    setting: 'outdoors',
    dwelling: 'one-family',
    selfContained: 'yes',
    rimHeight: '20 in',
    groundBonded: 'no',
    disconnect: { distance: '3 ft', inSight: 'no' },
    ...outlet('3 ft', 'no'),
    ...light('1 ft', '1 ft', 'no'),
    ...wall('1 ft'),
    ...rail('1 ft'),
    bond: { size: '10 AWG', strands: 'stranded' },
  }
  /** Every figure of article 680 that a yard is judged by, in metres. */
  const AMERICAN = [5, 50, 6, 20, 10, 15, 12, 7.5, 28 / 12, 2.5].map(feet => feet * 0.3048)
  const BOOKS = {
    US: 'NEC',
    CA: 'CE Code',
    UK: 'BS 7671',
    EU: 'HD 60364',
    AU: 'AS/NZS',
    NZ: 'AS/NZS',
  }

  test.each(Object.entries(BOOKS) as [Region, string][])(
    '%s is judged by %s alone',
    (region, book) => {
      const findings = report(tubIn(region, yard)).yard
      expect(findings.length).toBeGreaterThan(10)
      for (const { clause } of findings)
        if (clause) expect(clause.standard.startsWith(book)).toBe(true)
      if (region === 'US') return
      const limits = findings.flatMap(({ params }) =>
        ['may', 'least', 'below', 'near'].flatMap(name => {
          const value = params[name]
          return typeof value === 'number' ? [value] : []
        }),
      )
      expect(limits.length).toBeGreaterThan(3)
      for (const limit of limits)
        expect(AMERICAN.some(each => Math.abs(each - limit) < 1e-3)).toBe(false)
      expect(JSON.stringify(findings)).not.toContain('AWG')
    },
  )
})
