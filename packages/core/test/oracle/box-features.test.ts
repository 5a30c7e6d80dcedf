import { describe, expect, it } from 'vitest'
import { buildNetwork } from './build-network.ts'
import { switchesIn } from './configurations.ts'
import { ONE_PUMP_PLAN, onePumpJob } from './one-pump-job.ts'
import type { Judgement, OracleJob } from './oracle.ts'
import { judgeLanding, readJob, statesOf, wrongLandings } from './oracle.ts'
import type { Edit } from './sample-job.ts'
import { SAMPLE_FILES, SAMPLE_PLAN, withEdits, withEnds, withJumpers } from './sample-job.ts'
import { numberNetwork, solveNetwork, voltsBetween } from './solve-dense.ts'

const plan = SAMPLE_PLAN
const withBox = (...edits: readonly Edit[]): OracleJob =>
  readJob({ ...SAMPLE_FILES, box: withEdits(SAMPLE_FILES.box, edits) }, plan)
const withSurvey = (...edits: readonly Edit[]): OracleJob =>
  readJob({ ...SAMPLE_FILES, survey: withEdits(SAMPLE_FILES.survey, edits) }, plan)

const RIGHT: Judgement = { class: 'right', reasons: [] }

function expectHazard(judged: Judgement, reason: string): void {
  expect(judged.class).toBe('hazardous')
  expect(judged.reasons).toContainEqual(expect.stringContaining(reason))
}

describe('a contact that rests closed', () => {
  const resting = (contact: string): Edit => [
    `id: ${contact}, kind: contact`,
    `id: ${contact}, kind: contact, rest: closed`,
  ]
  const opening = (command: string, contact: string): Edit => [
    new RegExp(`(id: ${command}, label: [^,]*), closes: \\[.*?\\]`, 'gu'),
    `$1, opens: [${contact}]`,
  ]

  it('keeps on what its command opens', () => {
    expectHazard(
      judgeLanding(withBox(resting('R5'), opening('ozone', 'R5')), plan),
      '6a on while off: ozonator.input',
    )
    expect(judgeLanding(withBox(resting('R8'), opening('light', 'R8')), plan)).toEqual(RIGHT)
  })

  it('is open while a command that opens it is on', () => {
    const job = withBox(resting('R8'), opening('light', 'R8'))
    const network = buildNetwork(job, plan, {})
    const at = network.switches.findIndex(each => each.name === 'box.R8')
    expect(switchesIn(job, network, [], 'closed')[at]).toBe(1)
    expect(switchesIn(job, network, ['circulate', 'ozone'], 'closed')[at]).toBe(1)
    expect(switchesIn(job, network, ['light'], 'closed')[at]).toBe(0)
  })

  it('holds two speeds apart where one contact changes over', () => {
    // high in series before low: low rests on what high leaves
    const shared: Edit = ['across: [L1-F, PA-LO]', 'across: [PA-HI, PA-LO]']
    const together = (edit: Edit) => judgeLanding(withBox(shared, edit), plan).reasons
    expect(together(resting('R2'))).toContainEqual(
      expect.stringContaining('8 two circuits: pump-a'),
    )
    const over: Edit = [
      'label: pump A high, closes: [R1]',
      'label: pump A high, closes: [R1], opens: [R2]',
    ]
    expect(judgeLanding(withBox(shared, resting('R2'), over), plan).reasons).toEqual([])
  })
})

describe('a contact that leaks while it is open', () => {
  const leaks = (amps: string) =>
    judgeLanding(
      withBox(['id: R5, kind: contact', `id: R5, kind: contact, leakage: ${amps}`]),
      plan,
    )

  it('lets through its leakage at the volts of one leg', () => {
    // 600 Ω before some 480 Ω; 6 kΩ before them
    expectHazard(leaks('200 mA'), '6a on while off: ozonator.input')
    expect(leaks('20 mA')).toEqual(RIGHT)
  })
})

describe('load kinds', () => {
  const kind = (name: string) =>
    judgeLanding(
      withSurvey(['kind: ozonator', `kind: ${name}`]),
      withEnds(plan, { 'ozonator.hot': 'box.A1' }),
    )

  it('lets audio be always on, and nothing else', () => {
    expectHazard(kind('sanitiser'), '6a on while off: ozonator.input')
    expect(kind('audio').class).toBe('harmless')
  })
})

const TAPS = '{ t100: 100 V, t120: 120 V, t208: 208 V }'

describe('a transformer with taps', () => {
  const tapped: readonly Edit[] = [
    ['rated: 20 VA', `rated: 20 VA, taps: { jumper: J9, volts: ${TAPS} }`],
    [
      'jumpers:\n    - id: J1',
      `jumpers:
    - { id: J9, positions: [{ id: t100, joins: [] }, { id: t120, joins: [] }, { id: t208, joins: [] }], factory: t120, rated: 1 A }
    - id: J1`,
    ],
  ]
  const job = withBox(...tapped)

  it('takes the primary volts of the tap', () => {
    expect(judgeLanding(job, plan)).toEqual(RIGHT)
    expectHazard(judgeLanding(job, withJumpers(plan, { J9: 't100' })), '3 low voltage: box.T1')
  })

  it('does not find another tap right, though it joins nothing', () => {
    expect(judgeLanding(job, withJumpers(plan, { J9: 't208' })).class).toBe('harmless')
  })

  it('has its other taps tried, as a jumper’s positions', () => {
    const names = [...wrongLandings(job)].map(each => each.name)
    expect(names).toEqual(expect.arrayContaining(['J9 t100', 'J9 t208', 'J9 t208 and J2 v120']))
  })
})

describe('an auto-transformer', () => {
  // 115 V for the pump out of 230 V, the neutral shared
  const edits = (isolating: string): readonly Edit[] => [
    ['across: [L, P-HOT]', 'across: [MID, P-HOT]'],
    [
      'parts:',
      `parts:
    - { id: AT, kind: transformer, primary: [L, N], secondary: [MID, N], volts: { primary: 230 V, secondary: 115 V }, rated: 2 kVA${isolating} }`,
    ],
  ]
  const job = (volts: string, isolating = ', isolating: false') =>
    onePumpJob({ box: edits(isolating), tub: [[/volts: 230 V\n/gu, `volts: ${volts} # plate\n`]] })

  it('feeds a pump of its own volts, and no other', () => {
    expect(judgeLanding(job('115 V'), ONE_PUMP_PLAN)).toEqual(RIGHT)
    expect(judgeLanding(job('230 V'), ONE_PUMP_PLAN).reasons).toContainEqual(
      expect.stringContaining('2 volts: pump.run'),
    )
  })

  it('has mains nodes on its secondary and no insulation of low voltage', () => {
    const insulation = (of: OracleJob): string[] =>
      buildNetwork(of, ONE_PUMP_PLAN, {})
        .branches.filter(each => each.what === 'insulation' && each.board === 'box')
        .map(each => `${each.a} ${each.r / 1e6}`)
    // nothing else hangs on this one
    const spare: Edit = [
      'parts:',
      `parts:
    - { id: SP, kind: transformer, isolating: false, primary: [L, N], secondary: [SPARE, N], volts: { primary: 230 V, secondary: 115 V }, rated: 1 kVA }`,
    ]
    expect(insulation(onePumpJob({ box: [spare] }))).toContain('box.SPARE 50')
    expect(insulation(job('115 V'))).toContain('box.MID 50')
    expect(insulation(job('115 V'))).not.toContain('box.N 5')
    expect(insulation(job('115 V', ''))).not.toContain('box.MID 50')
    expect(insulation(job('115 V', ''))).toContain('box.N 5')
  })

  it('divides the volts', () => {
    const own = job('115 V')
    const network = buildNetwork(own, ONE_PUMP_PLAN, {})
    const solution = solveNetwork(numberNetwork(network), switchesIn(own, network, [], 'closed'))
    expect(voltsBetween(solution, 'box.MID', 'box.N')).toBeCloseTo(115, 1)
  })
})

describe('draws that are summed line by line', () => {
  const on = (lines: string): Edit => [
    'assumes: { pump-a-high: 12 A, pump-a-low: 4 A, pump-b: 12 A, circulate: 2 A, heat: 23 A, ozone: 1 A }',
    `assumes: { pump-a-high: 12 A, pump-a-low: 4 A, pump-b: 12 A, circulate: 2 A, heat: 23 A, ozone: 1 A }\n    assumesOn: ${lines}`,
  ]
  const split = '{ pump-a-high: leg1, pump-b: leg1, heat: leg2 }'
  const all = ['circulate', 'pump-a-high', 'pump-b', 'heat', 'ozone']
  const has = (job: OracleJob, currentLimit: string) =>
    statesOf(job, { ...plan.settings, currentLimit }).all.some(state =>
      all.every(each => state.includes(each)),
    )

  it('lets each line draw as much as the setting', () => {
    expect(has(withBox(on(split)), '40 A')).toBe(true)
    expect(has(withBox(), '40 A')).toBe(false)
  })

  it('counts on every line what is named on none', () => {
    // 24 A and 23 A on the lines, 3 A more on each
    expect(has(withBox(on(split), ['24 A, 32 A', '26 A, 27 A']), '27 A')).toBe(true)
    expect(has(withBox(on(split), ['24 A, 32 A', '26 A, 27 A']), '26 A')).toBe(false)
  })

  it('finds the breaker that both lines together overload', () => {
    const survey = withEdits(SAMPLE_FILES.survey, [['breaker: 50 A', 'breaker: 40 A']])
    const judged = (...edits: readonly Edit[]) => {
      const box = withEdits(SAMPLE_FILES.box, edits)
      return judgeLanding(readJob({ ...SAMPLE_FILES, survey, box }, plan), plan)
    }
    expectHazard(judged(on(split)), '1c overloaded: gf.P1 4')
    expect(judged()).toEqual(RIGHT)
  })
})
