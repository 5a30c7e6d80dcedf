import { ENGLISH } from '@tubwright/words'
import { describe, expect, test } from 'vitest'
import { demoTub } from '../../../support/demo.ts'
import type { YardText } from './yard-tub.ts'
import { found, one, report, tubIn, verdictOf } from './yard-tub.ts'

const tub = (yard: YardText) => tubIn('US', { setting: 'outdoors', ...yard })
const told = (yard: YardText, rule: string, topic = '') =>
  ENGLISH.tellCode(one(tub(yard), rule, topic))

test('without a yard nothing is said of one', () => {
  expect(report(tubIn('US')).yard).toEqual([])
})

describe('C62, C63 [SUPPLY-40] the disconnect', () => {
  const near = (distance: string, more = {}) =>
    verdictOf(tub({ disconnect: { distance, ...more } }), 'SUPPLY-40', 'near')
  const sight = (distance: string, inSight: 'yes' | 'no' = 'yes') =>
    verdictOf(tub({ disconnect: { distance, inSight } }), 'SUPPLY-40', 'sight')

  test.each([
    ['4 ft 11 in, just inside', '59 in', 'breaks'],
    ['at 5 ft', '5 ft', 'holds'],
    ['5 ft 1 in, just outside', '61 in', 'holds'],
  ])('%s', (_, distance, verdict) => expect(near(distance)).toBe(verdict))

  test.each([
    ['49 ft', 'holds'],
    ['50 ft', 'holds'],
    ['51 ft', 'breaks'],
  ])('%s and in sight: %s', (distance, verdict) => expect(sight(distance)).toBe(verdict))

  test('seen the other way only, from the disconnect to the tub, is not in sight', () => {
    expect(sight('20 ft', 'no')).toBe('breaks')
    expect(told({ disconnect: { distance: '20 ft', inSight: 'no' } }, 'SUPPLY-40', 'sight')).toBe(
      'The disconnect is not seen from the equipment of the tub: that the tub is seen from the disconnect is not enough. Up to 50 ft away and in view it would serve: move the disconnect or the tub.',
    )
  })

  test('a fixed barrier makes the way longer, never shorter', () => {
    expect(near('3 ft', { reach: '59 in' })).toBe('breaks')
    expect(near('3 ft', { reach: '5 ft' })).toBe('holds')
    expect(near('6 ft', { reach: '3 ft' })).toBe('holds')
    expect(near('3 ft', { reach: { unknown: 'does not exist' } })).toBe('breaks')
    const open = one(
      tub({ disconnect: { distance: '3 ft', reach: { unknown: 'not measured' } } }),
      'SUPPLY-40',
      'near',
    )
    expect(open).toMatchObject({ verdict: 'not-shown', asks: ['yard.disconnect.reach'] })
  })

  test('a range that straddles the figure holds if it is in the far part', () => {
    const range = (from: string, to: string) =>
      verdictOf(
        tub({ disconnect: { distance: { from, to, source: 'paced' } } }),
        'SUPPLY-40',
        'near',
      )
    expect(range('2 ft', '4 ft')).toBe('breaks')
    expect(range('4 ft', '7 ft')).toBe('provided')
    expect(range('5 ft', '7 ft')).toBe('holds')
  })

  test('both remedies are offered, the cheaper one named', () => {
    expect(told({ disconnect: { distance: '4 ft' } }, 'SUPPLY-40', 'near')).toBe(
      'The disconnect is 4 ft from the tub as one reaches for it; 5 ft is the least. Where it is too near, move the disconnect or the tub: moving the tub often costs less.',
    )
  })

  test('where nobody has named one, it is asked for', () => {
    expect(one(tub({}), 'SUPPLY-40', 'near').asks).toEqual(['yard.disconnect.distance'])
    expect(one(tub({}), 'SUPPLY-40', 'sight').asks).toEqual([
      'yard.disconnect.inSight',
      'yard.disconnect.distance',
    ])
  })

  test('the clause is that of the adopted edition, or of the one that was read whole', () => {
    const clause = (yard: YardText, codeEdition?: '2023') =>
      one(
        {
          ...tub(yard),
          ...(codeEdition ? { codeEdition: { kind: 'known', value: codeEdition } as const } : {}),
        },
        'SUPPLY-40',
        'near',
      ).clause
    const yard = { disconnect: { distance: '4 ft' } }
    expect(clause(yard)).toMatchObject({ edition: '2020', clause: '680.13', read: 'page' })
    expect(clause(yard, '2023')).toMatchObject({ edition: '2023', read: 'memory' })
  })
})

describe('C65 [SUPPLY-41] an outlet for other things', () => {
  const outlet = (distance: string, id = 'wall') => ({
    id,
    label: `Outlet ${id}`,
    distance,
    feedsTub: 'no' as const,
  })
  const convenience = (setting: 'indoors' | 'outdoors', ...distances: readonly string[]) =>
    verdictOf(
      tub({ setting, receptacles: distances.map((each, index) => outlet(each, `o${index}`)) }),
      'SUPPLY-41',
    )

  test.each([
    ['5 ft', 'breaks'],
    ['6 ft', 'holds'],
    ['13 ft', 'holds'],
    ['20 ft', 'holds'],
    ['21 ft', 'breaks'],
  ])('outdoors at %s: %s', (distance, verdict) =>
    expect(convenience('outdoors', distance)).toBe(verdict),
  )

  test.each([
    ['71 in', 'breaks'],
    ['6 ft', 'holds'],
    ['10 ft', 'holds'],
    ['11 ft', 'breaks'],
  ])('indoors at %s: %s', (distance, verdict) =>
    expect(convenience('indoors', distance)).toBe(verdict),
  )

  test('right at the tub is wrong, and the words say so', () => {
    const at = { receptacles: [outlet('1 ft')] }
    expect(verdictOf(tub(at), 'SUPPLY-41')).toBe('breaks')
    expect(told(at, 'SUPPLY-41')).toBe(
      'No outlet for other things stands between 6 ft and 20 ft from the tub; one right at the tub is too near and does not count. Where an inspector wants it elsewhere, ask for it in writing.',
    )
  })

  test('one of several is enough; the one that feeds the tub does not count', () => {
    expect(convenience('outdoors', '2 ft', '40 ft', '15 ft')).toBe('holds')
    expect(convenience('outdoors')).toBe('breaks')
    const own = { ...outlet('10 ft'), feedsTub: 'yes' as const }
    expect(verdictOf(tub({ receptacles: [own] }), 'SUPPLY-41')).toBe('breaks')
    expect(verdictOf(tub({ receptacles: [own, outlet('12 ft', 'b')] }), 'SUPPLY-41')).toBe('holds')
  })

  test('only what can still decide is asked for', () => {
    const unknown = { unknown: 'not measured' as const }
    const asks = (yard: YardText) => one(tub(yard), 'SUPPLY-41').asks
    const open = { ...outlet('1 ft', 'open'), distance: unknown }
    expect(asks({ receptacles: [open, outlet('10 ft', 'good')] })).toEqual([])
    expect(asks({ receptacles: [open, outlet('30 ft', 'far')] })).toEqual([
      'yard.receptacles.open.distance',
    ])
    const perhaps = { ...outlet('10 ft', 'perhaps'), feedsTub: unknown }
    expect(asks({ receptacles: [perhaps] })).toEqual(['yard.receptacles.perhaps.feedsTub'])
    expect(asks({ receptacles: [{ ...perhaps, distance: '3 ft' }] })).toEqual([])
    expect(asks({ setting: { unknown: 'owner unsure' }, receptacles: [outlet('15 ft')] })).toEqual([
      'yard.setting',
    ])
    expect(asks({})).toEqual(['yard.receptacles'])
  })

  test('many outlets of which nothing is known are no burden', () => {
    const receptacles = Array.from({ length: 40 }, (_, index) => ({
      id: `o${index}`,
      label: `Outlet ${index}`,
    }))
    expect(one(tub({ receptacles }), 'SUPPLY-41')).toMatchObject({ verdict: 'not-shown' })
  })
})

describe('C67 [SUPPLY-42] [SUPPLY-43] [SUPPLY-44] outlets and the cord of a plug-in tub', () => {
  const outlet = (distance: string, more: object = {}): YardText => ({
    receptacles: [{ id: 'wall', label: 'Wall outlet', distance, ...more }],
  })

  test.each([
    ['71 in', 'breaks'],
    ['6 ft', 'holds'],
    ['73 in', 'holds'],
  ])('[SUPPLY-42] any outlet at %s: %s', (distance, verdict) =>
    expect(verdictOf(tub(outlet(distance)), 'SUPPLY-42')).toBe(verdict),
  )

  test.each([
    ['outdoors', '19 ft', 'no', 'breaks'],
    ['outdoors', '20 ft', 'no', 'breaks'],
    ['outdoors', '21 ft', 'no', 'holds'],
    ['outdoors', '20 ft', 'yes', 'holds'],
    ['indoors', '10 ft', 'no', 'breaks'],
    ['indoors', '11 ft', 'no', 'holds'],
  ] as const)('[SUPPLY-43] %s at %s, protected %s: %s', (setting, distance, groundFault, verdict) =>
    expect(verdictOf(tub({ ...outlet(distance, { groundFault }), setting }), 'SUPPLY-43')).toBe(
      verdict,
    ),
  )

  test('[SUPPLY-43] far away nobody asks whether it is protected', () => {
    expect(one(tub(outlet('30 ft')), 'SUPPLY-43')).toMatchObject({ verdict: 'holds', asks: [] })
    expect(one(tub(outlet('12 ft')), 'SUPPLY-43').asks).toEqual([
      'yard.receptacles.wall.groundFault',
    ])
  })

  test.each([
    ['5 ft', 'breaks', 'holds'],
    ['6 ft', 'holds', 'holds'],
    ['15 ft', 'holds', 'holds'],
    ['16 ft', 'holds', 'breaks'],
  ])(
    '[SUPPLY-44] the outlet of the tub at %s: near enough not to reach %s, for its cord %s',
    (distance, least, most) => {
      const own = tub(outlet(distance, { feedsTub: 'yes' }))
      expect(verdictOf(own, 'SUPPLY-42')).toBe(least)
      expect(verdictOf(own, 'SUPPLY-44')).toBe(most)
    },
  )

  test('[SUPPLY-44] which outlet it is, is asked for only where the cord would not reach', () => {
    const plugIn = (yard: YardText) => ({ ...demoTub('cord-120-15'), yard: tub(yard).yard })
    expect(one(plugIn(outlet('12 ft')), 'SUPPLY-44')).toMatchObject({ verdict: 'holds', asks: [] })
    expect(one(plugIn(outlet('18 ft')), 'SUPPLY-44').asks).toEqual([
      'yard.receptacles.wall.feedsTub',
    ])
    expect(found(plugIn(outlet('18 ft', { feedsTub: 'no' })), 'SUPPLY-44')).toEqual([])
    const two: YardText = {
      receptacles: [
        { id: 'own', label: 'Own', distance: '8 ft', feedsTub: 'yes' },
        { id: 'other', label: 'Other', distance: '18 ft' },
      ],
    }
    expect(found(plugIn(two), 'SUPPLY-44').map(each => each.subjects)).toEqual([
      ['yard.receptacles.own'],
    ])
  })

  test('behind 50 A no tub has a cord: nobody asks for its outlet', () => {
    expect(found(tub(outlet('18 ft')), 'SUPPLY-44')).toEqual([])
    expect(verdictOf(tub(outlet('18 ft')), 'SUPPLY-41')).toBe('holds')
  })

  test('lengths stand in feet and inches', () => {
    expect(told(outlet('1.5 m'), 'SUPPLY-42')).toContain('is 4 ft 11 in from the tub; 6 ft is')
    expect(told(outlet('1.82 m'), 'SUPPLY-42')).toContain('is 5 ft 11.7 in from the tub')
  })
})

describe('C69 [SUPPLY-45] lights', () => {
  const light = (distance: string, height: string, more: object = {}): YardText => ({
    lights: [{ id: 'porch', label: 'Porch light', distance, height, ...more }],
  })
  const judged = (setting: 'indoors' | 'outdoors', yard: YardText) =>
    verdictOf(tub({ ...yard, setting }), 'SUPPLY-45')

  test.each([
    ['4 ft', '11 ft', 'breaks'],
    ['5 ft', '11 ft', 'breaks'],
    ['61 in', '1 ft', 'holds'],
    ['0 ft', '143 in', 'breaks'],
    ['0 ft', '12 ft', 'holds'],
    ['0 ft', '13 ft', 'holds'],
  ])('outdoors %s level, %s up: %s', (distance, height, verdict) =>
    expect(judged('outdoors', light(distance, height, { groundFault: 'yes' }))).toBe(verdict),
  )

  test.each([
    ['2 ft', '89 in', 'no', 'breaks'],
    ['2 ft', '89 in', 'yes', 'not-shown'],
    ['2 ft', '7.5 ft', 'no', 'breaks'],
    ['2 ft', '7.5 ft', 'yes', 'holds'],
    ['2 ft', '143 in', 'no', 'breaks'],
    ['2 ft', '12 ft', 'no', 'holds'],
    ['61 in', '3 ft', 'no', 'holds'],
  ] as const)(
    'indoors %s level, %s up, protected %s: %s',
    (distance, height, groundFault, verdict) =>
      expect(judged('indoors', light(distance, height, { groundFault }))).toBe(verdict),
  )

  test('a fitting below 7 ft 6 in is not ruled on: its make is asked for', () => {
    const low = { ...light('2 ft', '6 ft', { groundFault: 'yes' }), setting: 'indoors' as const }
    expect(one(tub(low), 'SUPPLY-45')).toMatchObject({ message: 'light-sealed', asks: [] })
    expect(told(low, 'SUPPLY-45')).toContain('lower than 7 ft 6 in only fittings sealed for it')
  })

  test('a gazebo that is closed in is a question for the inspector', () => {
    const gazebo = {
      ...light('4 ft', '8 ft', { groundFault: 'yes' }),
      setting: { unknown: 'owner unsure' as const },
    }
    expect(one(tub(gazebo), 'SUPPLY-45')).toMatchObject({
      verdict: 'not-shown',
      asks: ['yard.setting'],
    })
    expect(one(tub(gazebo), 'SUPPLY-45', 'gazebo')).toMatchObject({
      verdict: 'not-shown',
      message: 'not-covered-gazebo',
    })
    // Where both answers agree, nobody is asked.
    const far = { ...gazebo, ...light('9 ft', '8 ft') }
    expect(found(tub(far), 'SUPPLY-45').map(each => each.verdict)).toEqual(['holds'])
  })
})

describe('[SUPPLY-46] wall switches', () => {
  test.each([
    ['59 in', 'breaks'],
    ['5 ft', 'holds'],
    ['61 in', 'holds'],
  ])('at %s: %s', (distance, verdict) =>
    expect(
      verdictOf(tub({ switches: [{ id: 's', label: 'Patio switch', distance }] }), 'SUPPLY-46'),
    ).toBe(verdict),
  )
})

describe('[SUPPLY-47] metal', () => {
  test.each([
    ['59 in', 'no', 'breaks'],
    ['5 ft', 'no', 'breaks'],
    ['61 in', 'no', 'holds'],
    ['59 in', 'yes', 'holds'],
  ] as const)('at %s, bonded %s: %s', (distance, bonded, verdict) =>
    expect(
      verdictOf(tub({ metal: [{ id: 'm', label: 'Rail', distance, bonded }] }), 'SUPPLY-47'),
    ).toBe(verdict),
  )
})

describe('[SUPPLY-48] the bonding conductor', () => {
  const bond = (size: string, strands: 'solid' | 'stranded') =>
    verdictOf(tub({ bond: { size, strands } }), 'SUPPLY-48')

  test.each([
    ['10 AWG', 'solid', 'breaks'],
    ['8 AWG', 'solid', 'holds'],
    ['6 AWG', 'solid', 'holds'],
    ['8 AWG', 'stranded', 'breaks'],
    ['6 AWG', 'stranded', 'breaks'],
  ] as const)('%s %s: %s', (size, strands, verdict) => expect(bond(size, strands)).toBe(verdict))

  test('where none was named it is asked for, unless nothing has to be joined', () => {
    const exempt = { selfContained: 'yes', rimHeight: '36 in' } as const
    const far = { id: 'm', label: 'Rail', distance: '8 ft' }
    const near = { ...far, distance: '3 ft' }
    const asks = (yard: YardText) => one(tub(yard), 'SUPPLY-48').asks
    expect(one(tub({ ...exempt, metal: [far] }), 'SUPPLY-48')).toMatchObject({
      verdict: 'holds',
      message: 'bond-not-needed',
    })
    expect(asks({ ...exempt, metal: [near] })).toEqual(['yard.bond.size', 'yard.bond.strands'])
    expect(asks({ ...exempt, rimHeight: '20 in', metal: [far] })).toEqual([
      'yard.bond.size',
      'yard.bond.strands',
    ])
    expect(asks(exempt)).toEqual(['yard.bond.size', 'yard.bond.strands', 'yard.metal'])
    expect(asks({ ...exempt, metal: [{ ...far, distance: { unknown: 'not measured' } }] })).toEqual(
      ['yard.bond.size', 'yard.bond.strands', 'yard.metal.m.distance'],
    )
  })
})

describe('C66 [SUPPLY-49] ground and floor, and a deck built later', () => {
  const ground = (yard: YardText) => one(tub({ selfContained: 'yes', ...yard }), 'SUPPLY-49')

  test.each([
    ['27 in', 'no', 'breaks', false],
    ['27 in', 'yes', 'holds', false],
    ['28 in', 'no', 'holds', true],
    ['29 in', 'no', 'holds', false],
    // Flush with the deck.
    ['0 in', 'no', 'breaks', false],
  ] as const)(
    'rim %s over the highest surface, bonded %s: %s',
    (rimHeight, groundBonded, verdict, isTight) =>
      expect(ground({ rimHeight, groundBonded })).toMatchObject({ verdict, isTight }),
  )

  test('it is asked for at every visit, and exactly 28 in is borderline', () => {
    expect(told({ selfContained: 'yes', rimHeight: '28 in' }, 'SUPPLY-49')).toBe(
      'The rim stands 28 in over every surface within 30 in of it; from 28 in on ground and floor need no bonding. Steps that do not conduct do not count. A deck built later ends this: ask at every visit. Exactly at its limit: no margin.',
    )
  })

  test('a tub that is not listed as one piece, or indoors not on a floor, has no exemption', () => {
    const high = { rimHeight: '36 in', groundBonded: 'no' } as const
    expect(ground({ ...high, selfContained: 'no' }).verdict).toBe('breaks')
    expect(ground({ ...high, rimHeight: '0 in', setting: 'indoors' })).toMatchObject({
      verdict: 'holds',
      message: 'ground-on-a-floor',
    })
    expect(ground({ ...high, selfContained: 'no', setting: 'indoors' }).verdict).toBe('breaks')
  })

  test('C72: a used tub without a label is not known to be listed', () => {
    const found = ground({
      rimHeight: '36 in',
      groundBonded: 'no',
      selfContained: { unknown: 'not visible' },
    })
    expect(found).toMatchObject({ verdict: 'not-shown', asks: ['yard.selfContained'] })
  })

  test('a rim that nobody measured is asked for, once bonding is no answer', () => {
    expect(ground({ groundBonded: 'yes' })).toMatchObject({ verdict: 'holds', asks: [] })
    expect(ground({ groundBonded: 'no' }).asks).toEqual(['yard.rimHeight'])
  })
})

describe('[SUPPLY-50] a switch for users that stops the pumps', () => {
  test('is no matter of one-family homes', () => {
    expect(one(tub({ dwelling: 'one-family' }), 'SUPPLY-50')).toMatchObject({
      verdict: 'holds',
      message: 'emergency-none',
    })
  })

  test('is needed elsewhere, 5 ft away: whether it is there is to be looked at', () => {
    expect(verdictOf(tub({ dwelling: 'other' }), 'SUPPLY-50')).toBe('not-shown')
    expect(told({ dwelling: 'other' }, 'SUPPLY-50')).toContain('in sight and 5 ft from the tub')
    expect(one(tub({}), 'SUPPLY-50').asks).toEqual(['yard.dwelling'])
  })
})

test('C71: a split tub on a long run has the same yard as any other', () => {
  const yard: YardText = {
    setting: 'outdoors',
    disconnect: { distance: '12 ft', inSight: 'yes' },
    switches: [{ id: 's', label: 'Patio switch', distance: '4 ft' }],
  }
  const split = { ...demoTub('split-240'), yard: tub(yard).yard }
  expect(found(split, 'SUPPLY-40').map(each => each.verdict)).toEqual(['holds', 'holds'])
  expect(verdictOf(split, 'SUPPLY-46')).toBe('breaks')
})
