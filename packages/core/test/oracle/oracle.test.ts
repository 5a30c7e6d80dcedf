import { describe, expect, it } from 'vitest'
import { ONE_PUMP_FILES, ONE_PUMP_PLAN } from './one-pump-job.ts'
import type { Judgement, Overrides, RawLanding } from './oracle.ts'
import { judgeLanding, readJob, statesOf, wrongLandings } from './oracle.ts'
import { SAMPLE_FILES, SAMPLE_PLAN, sampleJob, withEnds, withJumpers } from './sample-job.ts'

interface Case {
  readonly name: string
  readonly landing: RawLanding
  readonly overrides?: Overrides
  readonly expected: Judgement['class']
  /** How some reason starts. */
  readonly reason?: string
  readonly why: string
}

const plan = SAMPLE_PLAN
const ends = (changes: Readonly<Record<string, string>>): RawLanding => withEnds(plan, changes)
const jumpers = (changes: Readonly<Record<string, string>>): RawLanding =>
  withJumpers(plan, changes)

const RIGHT: readonly Case[] = [
  { name: 'the plan', landing: plan, expected: 'right', why: 'nothing is moved' },
  {
    name: 'heater leads exchanged',
    landing: ends({ 'heater.hot': 'box.H2', 'heater.common': 'box.H1' }),
    expected: 'right',
    why: 'an element has no polarity',
  },
]

const HARMLESS: readonly Case[] = [
  {
    name: 'earth of a 9 A pump on a tab of 10 A',
    landing: ends({ 'pump-b.earth': 'box.D4' }),
    expected: 'harmless',
    why: 'the same node, but a terminal of lower rating',
  },
  {
    name: 'link left in',
    landing: jumpers({ J1: 'in' }),
    expected: 'harmless',
    why: 'neutral on leg 2: more than a thousand amps, the breaker opens in every state',
  },
  {
    name: 'pump A high with low',
    landing: ends({ 'pump-a.high': 'box.B2', 'pump-a.low': 'box.B1' }),
    expected: 'harmless',
    why: 'each speed answers to the other command; the circulation pump still moves the water',
  },
  {
    name: 'pump A common on low',
    landing: ends({ 'pump-a.common': 'box.B2' }),
    expected: 'harmless',
    why: 'no winding has a return: the pump is dead',
  },
  {
    name: 'neutral on the bar',
    landing: ends({ 'run.neutral@gf': 'gf.NB' }),
    expected: 'harmless',
    why: 'the transformer alone returns past the device: it trips at once',
  },
  {
    name: 'plugs of circulation pump and ozonator exchanged',
    landing: ends({
      'circulation.hot': 'box.E1',
      'circulation.common': 'box.E3',
      'circulation.earth': 'box.E4',
      'ozonator.hot': 'box.D1',
      'ozonator.common': 'box.D3',
      'ozonator.earth': 'box.D4',
    }),
    expected: 'harmless',
    why: 'ozone follows circulate in this profile: whenever heat is on, both outputs are',
  },
  {
    name: 'both legs on one pole',
    landing: ends({ 'run.leg1@gf': 'gf.L2' }),
    expected: 'harmless',
    why: 'nothing across 240 V loads, 120 V on the others',
  },
  {
    name: 'heater lead off and capped',
    landing: ends({ 'heater.hot': 'insulated' }),
    expected: 'harmless',
    why: 'the heater is dead',
  },
  {
    name: 'lower current limit',
    landing: { ...plan, settings: { ...plan.settings, currentLimit: '24 A' } },
    expected: 'harmless',
    why: 'fewer modes, each of them safe',
  },
  {
    name: 'limit probe left out',
    landing: ends({ 'limit-probe.signal': 'insulated', 'limit-probe.common': 'insulated' }),
    expected: 'harmless',
    why: 'the box sees an open probe and refuses to heat',
  },
  {
    name: 'leg 1 and neutral exchanged at both ends of the run',
    landing: ends({
      'run.leg1@gf': 'gf.N',
      'run.leg1@box': 'box.A2',
      'run.neutral@gf': 'gf.L1',
      'run.neutral@box': 'box.A1',
    }),
    expected: 'harmless',
    why: 'the same network through copper of other colours',
  },
  {
    name: 'light on the keypad’s supply',
    landing: ends({ 'light.hot': 'box.K1' }),
    expected: 'harmless',
    why: 'a 12 V light that is always on',
  },
  {
    name: 'neutral capped at the box',
    landing: ends({ 'run.neutral@box': 'insulated' }),
    expected: 'harmless',
    why: 'the transformer has no return: no command acts',
  },
  {
    name: 'keypad return on an earth tab',
    landing: ends({ 'keypad.common': 'box.D4' }),
    expected: 'harmless',
    why: 'the keypad is dead; earth is no mains',
  },
]

const HAZARDOUS: readonly Case[] = [
  {
    name: 'heater bond on a tab of 20 A',
    landing: ends({ 'heater.earth': 'box.B4' }),
    expected: 'hazardous',
    reason: '4e load earth: heater.earth',
    why: 'the heater draws 22.9 A, and a fault more',
  },
  {
    name: 'volt jumper of the 120 V loads on 240 V',
    landing: jumpers({ J4: 'v240' }),
    expected: 'hazardous',
    reason: '2 volts: circulation.run',
    why: 'twice the plate volts',
  },
  {
    name: 'volt jumper of pump A on 120 V',
    landing: jumpers({ J2: 'v120' }),
    expected: 'hazardous',
    reason: '2 volts: pump-a.high',
    why: 'a motor on half its plate volts',
  },
  {
    name: 'pump A low with common',
    landing: ends({ 'pump-a.low': 'box.B3', 'pump-a.common': 'box.B2' }),
    expected: 'hazardous',
    reason: '8 two circuits: pump-a',
    why: 'supply across high and low in series',
  },
  {
    name: 'pump A high beside low',
    landing: ends({ 'pump-a.high': 'box.B2' }),
    expected: 'hazardous',
    reason: '8 two circuits: pump-a',
    why: 'both windings on one contact',
  },
  {
    name: 'pump A high on leg 1 in',
    landing: ends({ 'pump-a.high': 'box.A1' }),
    expected: 'hazardous',
    reason: '6a on while off: pump-a.high',
    why: 'no contact is left in its path',
  },
  {
    name: 'tail capped',
    landing: ends({ 'gf.tail': 'insulated' }),
    expected: 'hazardous',
    reason: '5b blind: gf.GF',
    why: 'the electronics have no return',
  },
  {
    name: 'tail loose',
    landing: ends({ 'gf.tail': 'loose' }),
    expected: 'hazardous',
    reason: '10 loose and live: gf.tail',
    why: 'leg 1 reaches the bare tail through the box and through the electronics',
  },
  {
    name: 'earth lead of pump A off',
    landing: ends({ 'pump-a.earth': 'insulated' }),
    expected: 'hazardous',
    reason: '4a metal: pump-a',
    why: 'its metal is on nothing',
  },
  {
    name: 'cable earth on the neutral bar',
    landing: ends({ 'run.earth@gf': 'gf.NB' }),
    expected: 'hazardous',
    reason: '4a metal: box',
    why: 'earth used as neutral: no copper to the earth bar',
  },
  {
    name: 'neutral on the earth bar',
    landing: ends({ 'run.neutral@gf': 'gf.EB' }),
    expected: 'hazardous',
    reason: '4a metal: box.A2',
    why: 'neutral tied to earth on the load side',
  },
  {
    name: 'leg 1 and neutral exchanged at the device',
    landing: ends({ 'run.leg1@gf': 'gf.N', 'run.neutral@gf': 'gf.L1' }),
    expected: 'hazardous',
    reason: '6b only the neutral switched: pump-a.high',
    why: 'the contacts sit on the neutral, and the 240 V motors get half',
  },
  {
    name: 'leg 2 on the device’s neutral',
    landing: ends({ 'run.leg2@gf': 'gf.N', 'run.neutral@gf': 'gf.L2' }),
    expected: 'hazardous',
    reason: '3 low voltage: box.T1',
    why: 'what was between leg 1 and neutral lies across both legs',
  },
  {
    name: 'leg 1 on a probe',
    landing: ends({ 'run.leg1@box': 'box.S1' }),
    expected: 'hazardous',
    reason: '3 low voltage: box.S1',
    why: 'mains on a sensor terminal',
  },
  {
    name: 'heater lead on the supply',
    landing: ends({ 'heater.hot': 'box.A1', 'heater.common': 'box.A3' }),
    expected: 'hazardous',
    reason: '6a on while off: heater.element',
    why: 'neither heater nor limit contact in the path',
  },
  {
    name: 'heater past its limit contact',
    landing: ends({ 'heater.hot': 'box.A1' }),
    expected: 'hazardous',
    reason: '7b past the limit: heater.element',
    why: 'the limit contact sits in the other path only',
  },
  {
    name: 'limit probe of the other curve',
    landing: plan,
    overrides: { probeCurves: { 'limit-probe': '30k' } },
    expected: 'hazardous',
    reason: '9 sensors: limit',
    why: 'it reads some 25 °C low: the limit acts late',
  },
  {
    name: 'water and limit probes exchanged',
    landing: ends({
      'water-probe.signal': 'box.S3',
      'water-probe.common': 'box.S4',
      'limit-probe.signal': 'box.S1',
      'limit-probe.common': 'box.S2',
    }),
    expected: 'hazardous',
    reason: '9 sensors: limit',
    why: 'the limit watches the tub instead of the heater outlet',
  },
  {
    name: 'profile without circulation pump',
    landing: { ...plan, settings: { ...plan.settings, profile: 'jets-heat' } },
    expected: 'hazardous',
    reason: '7a dry heater: heater.element',
    why: 'heat runs with pump A, which moves no water through the heater',
  },
  {
    name: 'heater lead loose',
    landing: ends({ 'heater.hot': 'loose' }),
    expected: 'hazardous',
    reason: '10 loose and live: heater.hot',
    why: 'leg 2 comes through the element',
  },
  {
    name: 'leg 1 loose at the box',
    landing: ends({ 'run.leg1@box': 'loose' }),
    expected: 'hazardous',
    reason: '10 loose and live: run.leg1@box',
    why: 'a bare leg',
  },
  {
    name: 'keypad return on the return of a 120 V output',
    landing: ends({ 'keypad.common': 'box.D3' }),
    expected: 'hazardous',
    reason: '3 mixed: keypad',
    why: 'what a hand touches hangs between 12 V and the neutral',
  },
  {
    name: 'neutral on a probe’s common',
    landing: ends({ 'run.neutral@box': 'box.S2' }),
    expected: 'hazardous',
    reason: '3 mixed: box.Q2',
    why: 'the whole low-voltage side is on the neutral',
  },
  {
    name: 'cable earth on a small tab',
    landing: ends({ 'run.earth@box': 'box.E4' }),
    expected: 'hazardous',
    reason: '4d main earth: run.earth@box on 10 A behind 50 A',
    why: 'a fault to earth would burn the tab before the breaker opens',
  },
  {
    name: 'circulation pump on leg 1 in',
    landing: ends({ 'circulation.hot': 'box.A1' }),
    expected: 'hazardous',
    reason: '6a on while off: circulation.run',
    why: 'a mains load that is always on',
  },
  {
    name: 'heater common on leg 2 in',
    landing: ends({ 'heater.common': 'box.A3' }),
    expected: 'hazardous',
    reason: '7c past the second contact: heater.element',
    why: 'the box opens both poles, here only one',
  },
  {
    name: 'heater past its second contact, turned round',
    landing: ends({ 'heater.hot': 'box.A3', 'heater.common': 'box.H1' }),
    expected: 'hazardous',
    reason: '7c past the second contact: heater.element',
    why: 'the same, its leads exchanged',
  },
]

describe('the sample tub on the sample box', () => {
  const job = sampleJob()

  it.each([...RIGHT, ...HARMLESS, ...HAZARDOUS])('$name: $expected, for $why', each => {
    const judged = judgeLanding(job, each.landing, each.overrides)
    expect(judged.class, judged.reasons.join('; ')).toBe(each.expected)
    if (each.reason !== undefined)
      expect(judged.reasons).toContainEqual(expect.stringContaining(each.reason))
  })

  it('gives a hazardous landing the same class at its first hazard', () => {
    for (const { landing, overrides } of HAZARDOUS) {
      const judged = judgeLanding(job, landing, overrides, { first: true })
      expect(judged.class).toBe('hazardous')
      expect(judged.reasons).toHaveLength(1)
    }
  })

  it('tries each end, pair, plug, jumper, setting and probe once', () => {
    const all = [...wrongLandings(job)]
    // 11 ends of the box × 27 other of its 28 terminals, 5 of the device × 4 of 5; 55 + 10 pairs;
    // 2 × 16 off; 2 pairs of plugs, 7 left out; 4 jumpers, 6 pairs; 1 profile, 5 limits; 2 curves
    expect(all).toHaveLength(11 * 27 + 5 * 4 + 55 + 10 + 32 + 2 + 7 + 4 + 6 + 1 + 5 + 2)
    expect(new Set(all.map(each => each.name)).size).toBe(all.length)
  })

  it('never turns heat on without its pump, nor two speeds together', () => {
    for (const state of statesOf(job, plan.settings).all) {
      if (state.includes('heat')) expect(state).toContain('circulate')
      expect(state.includes('pump-a-high') && state.includes('pump-a-low')).toBe(false)
    }
  })
})

describe('other files', () => {
  it('finds the dry heater when ozone no longer follows the circulation pump', () => {
    const box = SAMPLE_FILES.box.replace('follows: { ozone: circulate }', 'follows: {}')
    const job = readJob({ ...SAMPLE_FILES, box }, plan)
    const exchanged = HARMLESS.find(each => each.name.startsWith('plugs'))?.landing ?? plan
    expect(judgeLanding(job, plan).class).toBe('right')
    expect(judgeLanding(job, exchanged).reasons).toContainEqual(
      expect.stringContaining('7a dry heater'),
    )
  })

  it('takes the least contact rating of the planned place for unknown amps', () => {
    const survey = SAMPLE_FILES.survey.replace('amps: 9.0 A', 'amps: { unknown: not visible }')
    const job = readJob({ ...SAMPLE_FILES, survey }, plan)
    expect(judgeLanding(job, plan).reasons).toEqual([])
    // 16 A, the motor rating of its contact, beside pump A high: above the tab that both share
    const shared = judgeLanding(job, withEnds(plan, { 'pump-a.high': 'box.C1' }))
    expect(shared.reasons).toContainEqual(expect.stringContaining('1a above rating: box.C1 26'))
  })

  it('calls a supply without a ground-fault device hazardous', () => {
    const devices = SAMPLE_FILES.devices.map(text => text.replace(/^.*kind: ground-fault.*$/mu, ''))
    const job = readJob({ ...SAMPLE_FILES, devices }, plan)
    expect(judgeLanding(job, plan).reasons).toEqual(['5 supply: supply no ground-fault device'])
  })
})

describe('230 V with a residual-current device that needs no supply', () => {
  const own = ONE_PUMP_PLAN
  const job = readJob(ONE_PUMP_FILES, own)

  it('finds the plan right, though the band ends where the plate volts do', () => {
    expect(judgeLanding(job, own)).toEqual({ class: 'right', reasons: [] })
  })

  it('does not take a figure that the plan shares for the deciding one', () => {
    const exchanged = withEnds(own, { 'probe.signal': 'box.S2', 'probe.common': 'box.S1' })
    expect(judgeLanding(job, exchanged).class).toBe('harmless')
  })

  it('finds line and neutral crossed: the contact sits in the neutral', () => {
    const crossed = withEnds(own, { 'run.line@box': 'box.N', 'run.neutral@box': 'box.L' })
    expect(judgeLanding(job, crossed).reasons).toContainEqual(
      expect.stringContaining('6b only the neutral switched: pump.run'),
    )
  })

  it('finds a pump returned through earth harmless: the device trips', () => {
    const returned = withEnds(own, { 'pump.common': 'box.E' })
    expect(judgeLanding(job, returned).class).toBe('harmless')
  })
})
