import { describe, expect, it } from 'vitest'
import type { Judgement, OracleJob, RawLanding } from './oracle.ts'
import { judgeAfterReset, judgeLanding, readJob } from './oracle.ts'
import type { Edit } from './sample-job.ts'
import {
  GARDEN_FILES,
  GARDEN_PLAN,
  SAMPLE_FILES,
  SAMPLE_PLAN,
  sampleJob,
  withEdits,
  withEnds,
} from './sample-job.ts'

const plan = SAMPLE_PLAN

const withSurvey = (...edits: readonly Edit[]): OracleJob =>
  readJob({ ...SAMPLE_FILES, survey: withEdits(SAMPLE_FILES.survey, edits) }, plan)
const withBox = (...edits: readonly Edit[]): OracleJob =>
  readJob({ ...SAMPLE_FILES, box: withEdits(SAMPLE_FILES.box, edits) }, plan)

function expectHazard(judged: Judgement, reason: string): void {
  expect(judged.class).toBe('hazardous')
  expect(judged.reasons).toContainEqual(expect.stringContaining(reason))
}

const RIGHT: Judgement = { class: 'right', reasons: [] }
const HARMLESS: Judgement = { class: 'harmless', reasons: [] }

/** One terminal of the sample box, rated otherwise. */
const rated = (terminal: string, amps: number): Edit => [
  new RegExp(`(id: ${terminal},.*rated: )\\d+ A`, 'gu'),
  `$1${amps} A`,
]

describe('above rating', () => {
  const pumpLead = (size: string) => withSurvey(['hot, size: 14 AWG', `hot, size: ${size}`])

  it('finds a lead of less copper than its pump draws', () => {
    expectHazard(judgeLanding(pumpLead('20 AWG'), plan), '1a above rating: pump-b.hot 9 A on 5 A')
    expect(judgeLanding(pumpLead('18 AWG'), plan)).toEqual(RIGHT)
  })

  it('finds cable conductors of less copper than all loads together draw', () => {
    const run = (size: string) => withSurvey(['size: 6 AWG', `size: ${size}`])
    expectHazard(judgeLanding(run('12 AWG'), plan), '1a above rating: run.leg1')
    expect(judgeLanding(run('8 AWG'), plan)).toEqual(RIGHT)
  })

  it('takes a tail for 8 AWG', () => {
    expect(sampleJob().wires.find(each => each.id === 'gf.tail')?.carries).toBe(50)
  })

  it('counts once what comes by one end and leaves by another', () => {
    // some 33 A come by leg 2; 10 A of them leave by a pump's end instead of by the board
    const landing = withEnds(plan, { 'pump-a.common': 'box.A3', 'pump-b.common': 'box.A3' })
    expect(judgeLanding(withBox(rated('A3', 40)), landing)).toEqual(HARMLESS)
    expectHazard(judgeLanding(withBox(rated('A3', 30)), landing), '1a above rating: box.A3 3')
  })

  it('counts both where two ends draw from one terminal', () => {
    const landing = withEnds(plan, { 'pump-a.high': 'box.C1' })
    expectHazard(judgeLanding(withBox(rated('C1', 18)), landing), '1a above rating: box.C1 19 A')
    expect(judgeLanding(withBox(rated('C1', 18)), plan)).toEqual(RIGHT)
  })

  it('lets a motor draw its plate amps at fewer volts', () => {
    // 238.7 V of 240 V: the impedance alone would draw 16.0 A
    const plate = (amps: string) => withSurvey(['amps: 9.0 A', `amps: ${amps}`])
    expectHazard(judgeLanding(plate('16.1 A'), plan), '1a above rating: box.R3 16.1 A on 16 A')
    expect(judgeLanding(plate('15.9 A'), plan)).toEqual(RIGHT)
  })

  it('lets a 240 V motor draw its plate amps at 230 V, and a heater not', () => {
    const garden = (...edits: readonly Edit[]) =>
      readJob({ ...GARDEN_FILES, survey: withEdits(GARDEN_FILES.survey, edits) }, GARDEN_PLAN)
    const plate = (amps: string) => garden(['amps: 8.2 A', `amps: ${amps}`])
    expectHazard(judgeLanding(plate('12.3 A'), GARDEN_PLAN), '1a above rating: box.C1 12.')
    expect(judgeLanding(plate('11.8 A'), GARDEN_PLAN)).toEqual(RIGHT)
  })
})

describe('conductors behind their breaker', () => {
  const reasonsOf = (...edits: readonly Edit[]): string[] =>
    judgeLanding(withSurvey(...edits), plan).reasons.filter(each => each.startsWith('1b'))
  const breaker = (value: string): Edit => ['breaker: 50 A', `breaker: ${value}`]
  const run = (size: string): Edit => ['size: 6 AWG', `size: ${size}`]
  const earth = (size: string): Edit => ['size: 10 AWG', `size: ${size}`]

  it('finds each conductor that the breaker may not protect', () => {
    expectHazard(judgeLanding(withSurvey(run('14 AWG')), plan), '1b conductor: run.leg2')
    expect(reasonsOf(run('14 AWG'))).toHaveLength(2)
    expect(judgeLanding(withSurvey(run('8 AWG')), plan)).toEqual(RIGHT)
  })

  it('takes the greatest breaker that may be there, and none where it is unknown', () => {
    const range = (to: string) => breaker(`{ from: 40 A, to: ${to} }`)
    expect(reasonsOf(run('8 AWG'), range('60 A'))).toHaveLength(2)
    expect(reasonsOf(run('8 AWG'), range('50 A'))).toEqual([])
    expect(reasonsOf(run('8 AWG'), breaker('{ oneOf: [60 A, 40 A] }'))).toHaveLength(2)
    expect(reasonsOf(run('14 AWG'), breaker('{ unknown: behind a cover }'))).toEqual([])
  })

  it('asks an earth of the breaker’s gauge, or as great as the smallest leg', () => {
    expect(reasonsOf(earth('12 AWG'))).toEqual(['1b conductor: run.earth 12 AWG behind 50 A'])
    expect(reasonsOf(earth('12 AWG'), run('12 AWG'))).not.toContainEqual(
      expect.stringContaining('run.earth'),
    )
    expect(reasonsOf(earth('2.5 mm2'))).toEqual([])
  })
})

describe('metal and earth', () => {
  const withoutEarth: Edit = [
    '      - { id: earth, function: earth, size: 18 AWG, colour: green }',
    '',
  ]

  it('finds a mains load that has no earth lead', () => {
    expectHazard(judgeLanding(withSurvey(withoutEarth), plan), '4a metal: ozonator')
    const said = (is: boolean): Edit => ['label: Ozonator\n', `doubleInsulated: ${is}\n`]
    expectHazard(judgeLanding(withSurvey(withoutEarth, said(false)), plan), '4a metal: ozonator')
    expect(judgeLanding(withSurvey(withoutEarth, said(true)), plan)).toEqual(RIGHT)
  })

  it('asks nothing of one that is off', () => {
    const off = withEnds(plan, { 'ozonator.hot': 'insulated', 'ozonator.common': 'insulated' })
    expect(judgeLanding(withSurvey(withoutEarth), off)).toEqual(HARMLESS)
  })

  it('lets the cable’s earth be where the breaker’s amps may flow', () => {
    const moved = withEnds(plan, { 'run.earth@box': 'box.E4' })
    expectHazard(judgeLanding(withBox(rated('E4', 49)), moved), '4d main earth: run.earth@box')
    expect(judgeLanding(withBox(rated('E4', 60)), moved)).toEqual(HARMLESS)
    const unknown = withSurvey(['breaker: 50 A', 'breaker: { unknown: behind a cover }'])
    expect(judgeLanding(unknown, moved)).toEqual(HARMLESS)
  })
})

describe('a disconnect between breaker and box', () => {
  const job = readJob(GARDEN_FILES, GARDEN_PLAN)
  const round = { line: { 'last.line@isolator': 'isolator.L-in' } }
  const neutral = { 'last.neutral@isolator': 'isolator.N-in' }

  it('finds the plan right', () => {
    expect(judgeLanding(job, GARDEN_PLAN)).toEqual(RIGHT)
  })

  it('finds it wired round', () => {
    const both = withEnds(GARDEN_PLAN, { ...round.line, ...neutral })
    expectHazard(judgeLanding(job, both), '5d disconnect wired round: box.V1')
    expectHazard(judgeLanding(job, withEnds(GARDEN_PLAN, round.line)), '5d disconnect wired round')
  })

  it('finds a neutral past it harmless', () => {
    expect(judgeLanding(job, withEnds(GARDEN_PLAN, neutral))).toEqual(HARMLESS)
  })
})

describe('a heater held open', () => {
  it('asks for one open pole only where the box opens one', () => {
    const onePole = withBox([
      'id: R7, kind: contact, across: [L2, HT-2], rated: { resistive: 30 A }',
      'id: R7, kind: switch, across: [L2, HT-2], rated: 30 A',
    ])
    const landing = withEnds(plan, { 'heater.common': 'box.A3' })
    expect(judgeLanding(onePole, plan)).toEqual(RIGHT)
    expect(judgeLanding(onePole, landing)).toEqual(HARMLESS)
    expectHazard(judgeLanding(sampleJob(), landing), '7c past the second contact')
  })
})

describe('ends on one terminal', () => {
  const takes = (count: number) =>
    withBox([/(id: A4,.*?)(?: conductors: \d+,)? rated/gu, `$1 conductors: ${count}, rated`])
  const onStud: RawLanding = withEnds(plan, { 'heater.earth': 'box.A4' })

  it('finds the heater bond right on a stud that takes two', () => {
    expect(judgeLanding(takes(2), onStud)).toEqual(RIGHT)
    expect(judgeLanding(takes(1), onStud)).toEqual(HARMLESS)
  })

  it('finds a plan right that puts two there', () => {
    const job = readJob(SAMPLE_FILES, onStud)
    expect(judgeLanding(job, onStud)).toEqual(RIGHT)
  })
})

describe('after a reset', () => {
  const resetsTo = (value: string) => withBox([/^resetsTo: .*$/gmu, value])

  it('finds the heater dry in the profile that the box falls back to', () => {
    const judged = judgeAfterReset(sampleJob(), plan)
    expect(judged.class).toBe('hazardous')
    expect(judged.reasons).toContainEqual(expect.stringContaining('7a dry heater'))
    expect(judgeLanding(sampleJob(), plan)).toEqual(RIGHT)
  })

  it('finds nothing where the heater is off', () => {
    const cold = withEnds(plan, { 'heater.hot': 'insulated', 'heater.common': 'insulated' })
    expect(judgeAfterReset(sampleJob(), cold)).toEqual({ class: 'not hazardous', reasons: [] })
  })

  it('finds nothing where the settings stay, or grow less', () => {
    const nothing = { class: 'not hazardous', reasons: [] }
    expect(judgeAfterReset(resetsTo(''), plan)).toEqual(nothing)
    expect(judgeAfterReset(resetsTo('resetsTo: { currentLimit: 24 A }'), plan)).toEqual(nothing)
  })

  it('finds the terminal that more draw overloads, and does not count a figure too near', () => {
    const reset: Edit = [/^resetsTo: .*$/gmu, 'resetsTo: { currentLimit: 48 A }']
    const classOn = (amps: number) => judgeAfterReset(withBox(reset, rated('A1', amps)), plan).class
    expect(judgeLanding(withBox(reset, rated('A1', 34)), plan)).toEqual(RIGHT)
    // 34.71 A with both pumps; before, at most 33.24 A
    expect(classOn(34)).toBe('hazardous')
    expect(classOn(34.7)).toBe('not counted')
    expect(classOn(36)).toBe('not hazardous')
  })

  it('does not count what is hazardous before', () => {
    const bare = withEnds(plan, { 'heater.hot': 'loose' })
    const before = judgeLanding(sampleJob(), bare)
    expect(judgeAfterReset(sampleJob(), bare).class).toBe('not counted')
    expect(judgeAfterReset(sampleJob(), bare, {}, { before }).reasons).toEqual(before.reasons)
  })
})
