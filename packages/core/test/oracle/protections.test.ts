import { describe, expect, it } from 'vitest'
import { ONE_PUMP_PLAN, onePumpJob } from './one-pump-job.ts'
import type { Judgement, OracleJob } from './oracle.ts'
import { judgeLanding, readJob } from './oracle.ts'
import { PLAIN_120_FILES, PLAIN_120_PLAN, PLAIN_240_FILES, PLAIN_240_PLAN } from './plain-jobs.ts'
import type { Edit } from './sample-job.ts'
import {
  GARDEN_FILES,
  GARDEN_PLAN,
  SAMPLE_FILES,
  SAMPLE_PLAN,
  withEdits,
  withEnds,
} from './sample-job.ts'

const RIGHT: Judgement = { class: 'right', reasons: [] }

function expectHazard(judged: Judgement, reason: string): void {
  expect(judged.class).toBe('hazardous')
  expect(judged.reasons).toContainEqual(expect.stringContaining(reason))
}

const garden = (edits: {
  readonly survey?: readonly Edit[]
  readonly breaker?: readonly Edit[]
  readonly isolator?: readonly Edit[]
}): OracleJob =>
  readJob(
    {
      ...GARDEN_FILES,
      survey: withEdits(GARDEN_FILES.survey, edits.survey ?? []),
      devices: [
        withEdits(GARDEN_FILES.devices[0] ?? '', edits.breaker ?? []),
        withEdits(GARDEN_FILES.devices[1] ?? '', edits.isolator ?? []),
      ],
    },
    GARDEN_PLAN,
  )

describe('an overloaded fuse or pole', () => {
  const smallOutputs = (blower: string) =>
    garden({
      survey: [
        ['amps: 0.5 A', 'amps: 5.5 A'],
        ['amps: 3.1 A', `amps: ${blower}`],
        ['size: 0.75 mm2', 'size: 1.5 mm2'],
      ],
    })

  it('finds a fuse that two motors together keep above its rating', () => {
    expectHazard(judgeLanding(smallOutputs('5.9 A'), GARDEN_PLAN), '1c overloaded: box.F3 1')
    expect(judgeLanding(smallOutputs('3.9 A'), GARDEN_PLAN)).toEqual(RIGHT)
  })

  it('counts a motor’s plate amps though its volts be fewer', () => {
    // 10 A by the impedance at 230 V would be 10.4 A on the plates
    expectHazard(judgeLanding(smallOutputs('4.9 A'), GARDEN_PLAN), '1c overloaded: box.F3 10.')
  })

  it('finds a breaker that the setting lets the box overload', () => {
    const breaker = (amps: number): OracleJob => {
      const survey = withEdits(SAMPLE_FILES.survey, [['breaker: 50 A', `breaker: ${amps} A`]])
      return readJob({ ...SAMPLE_FILES, survey }, SAMPLE_PLAN)
    }
    expectHazard(judgeLanding(breaker(30), SAMPLE_PLAN), '1c overloaded: gf.P1 3')
    expect(judgeLanding(breaker(35), SAMPLE_PLAN)).toEqual(RIGHT)
  })

  it('finds nothing where the fuse blows for certain', () => {
    const reasons = (amps: string) =>
      judgeLanding(
        garden({
          survey: [
            ['amps: 0.5 A', `amps: ${amps}`],
            ['size: 0.75 mm2', 'size: 6 mm2'],
          ],
        }),
        GARDEN_PLAN,
      ).reasons.filter(each => each.includes('box.F3'))
    expect(reasons('25 A')).toHaveLength(1)
    expect(reasons('33 A')).toEqual([]) // 31.6 A of 3 × 10 A by the impedance
  })
})

describe('mains on what is made for low volts', () => {
  const job = readJob(PLAIN_240_FILES, PLAIN_240_PLAN)
  const judged = (ends: Readonly<Record<string, string>>) =>
    judgeLanding(job, withEnds(PLAIN_240_PLAN, ends))

  it('finds the plan right', () => {
    expect(judgeLanding(job, PLAIN_240_PLAN)).toEqual(RIGHT)
  })

  it('finds a probe that lies on mains terminals with both leads', () => {
    expectHazard(
      judged({ 'water-probe.signal': 'box.E1', 'water-probe.common': 'box.E3' }),
      '3 mixed: water-probe',
    )
    expectHazard(
      judged({ 'limit-probe.signal': 'box.A1', 'limit-probe.common': 'box.A3' }),
      '3 mixed: limit-probe',
    )
  })

  it('finds a keypad or a light with one lead there and the other off', () => {
    expectHazard(
      judged({ 'keypad.hot': 'box.E1', 'keypad.common': 'insulated' }),
      '3 mixed: keypad',
    )
    const onPumpB = { 'light.hot': 'box.X1', 'light.common': 'insulated' }
    expectHazard(
      judgeLanding(garden({}), withEnds(GARDEN_PLAN, onPumpB)),
      '3 mixed: light joined to mains by copper',
    )
  })

  it('finds nothing where the lead is on earth, nor where a mains load has one lead off', () => {
    expect(judged({ 'keypad.hot': 'box.E4', 'keypad.common': 'insulated' }).class).toBe('harmless')
    expect(judged({ 'pump-b.hot': 'box.E1', 'pump-b.common': 'insulated' }).class).toBe('harmless')
  })
})

describe('a device soon enough for people', () => {
  it('is asked for 6 mA in the US', () => {
    const edits: readonly Edit[] = [
      ['device: cord-plug-ground-fault', 'device: residual-current-breaker-2'],
      ['from: L1', 'from: L'],
    ]
    const landed = withEnds(PLAIN_120_PLAN, { 'cord.leg1@plug': 'plug.L' })
    const survey = withEdits(PLAIN_120_FILES.survey, edits)
    expectHazard(
      judgeLanding(readJob({ ...PLAIN_120_FILES, survey }, landed), landed),
      '5 supply: supply trips at 0.03 A, people need 0.006 A',
    )
    expect(judgeLanding(readJob(PLAIN_120_FILES, PLAIN_120_PLAN), PLAIN_120_PLAN)).toEqual(RIGHT)
  })

  it('is asked for 30 mA elsewhere', () => {
    const to = (most: string) => garden({ breaker: [['to: 30 mA', `to: ${most}`]] })
    expectHazard(judgeLanding(to('31 mA'), GARDEN_PLAN), '5 supply: supply trips at 0.031 A')
    expect(judgeLanding(to('29 mA'), GARDEN_PLAN)).toEqual(RIGHT)
  })

  it('may be the second of two', () => {
    const job = garden({ breaker: [['to: 30 mA', 'to: 100 mA']], isolator: [SECOND_DEVICE] })
    expect(judgeLanding(job, GARDEN_PLAN)).toEqual(RIGHT)
  })
})

/** A ground-fault device in the isolator. */
const SECOND_DEVICE: Edit = [
  'fedAt:',
  '    - { id: RC2, kind: ground-fault, sums: [S1, SN], trip: { from: 15 mA, to: 30 mA } }\nfedAt:',
]

describe('several ground-fault devices', () => {
  const round = withEnds(GARDEN_PLAN, {
    'last.line@isolator': 'isolator.L-in',
    'last.neutral@isolator': 'isolator.N-in',
  })
  const bypassed = (job: OracleJob) =>
    judgeLanding(job, round).reasons.filter(each => each.startsWith('5a'))

  it('finds one wired round only where no other stands before it', () => {
    expect(bypassed(garden({ isolator: [SECOND_DEVICE] }))).toEqual([])
    const alone: Edit = [/^.*kind: ground-fault.*$/gmu, '']
    expect(bypassed(garden({ breaker: [alone], isolator: [SECOND_DEVICE] }))).not.toEqual([])
  })
})

describe('a ground-fault device built into the box', () => {
  const inside: readonly Edit[] = [
    ['across: [L, P-HOT]', 'across: [L-IN, P-HOT]'],
    ['across: [L, N]', 'across: [L-IN, N-IN]'],
    ['id: P2, node: N,', 'id: P2, node: N-IN,'],
    [
      'feeds:',
      `    - { id: B1, kind: switch, across: [L, L-IN], rated: 32 A }
    - { id: B2, kind: switch, across: [N, N-IN], rated: 32 A }
    - { id: GB, kind: ground-fault, sums: [B1, B2], trip: { from: 15 mA, to: 30 mA } }
feeds:`,
    ],
  ]
  const none: Edit = [/^.*kind: ground-fault.*$/gmu, '']

  it('counts where the supply has none', () => {
    const job = onePumpJob({ device: [none], box: inside })
    expect(judgeLanding(job, ONE_PUMP_PLAN)).toEqual(RIGHT)
    expectHazard(
      judgeLanding(onePumpJob({ device: [none] }), ONE_PUMP_PLAN),
      '5 supply: supply no ground-fault device',
    )
  })

  it('finds the line brought in behind it', () => {
    const behind = withEnds(ONE_PUMP_PLAN, { 'run.line@box': 'box.P1' })
    expectHazard(
      judgeLanding(onePumpJob({ device: [none], box: inside }), behind),
      '5a bypassed: box.P1',
    )
    expect(judgeLanding(onePumpJob({ box: inside }), behind).class).toBe('harmless')
  })

  it('takes neutral on earth before it for the supply side', () => {
    const tied = withEnds(ONE_PUMP_PLAN, { 'run.neutral@rcd': 'rcd.E' })
    const reasons = (job: OracleJob) =>
      judgeLanding(job, tied).reasons.filter(each => each.startsWith('4a'))
    expect(reasons(onePumpJob({ device: [none], box: inside }))).toEqual([])
    expect(reasons(onePumpJob({ box: inside }))).toEqual([
      '4a metal: box.N joined to earth by copper',
    ])
  })
})

describe('a box whose electronics lack their volts', () => {
  const cut = withEnds(SAMPLE_PLAN, { 'run.neutral@box': 'insulated' })
  const withBox = (...edits: readonly Edit[]): OracleJob =>
    readJob({ ...SAMPLE_FILES, box: withEdits(SAMPLE_FILES.box, edits) }, SAMPLE_PLAN)

  it('runs nothing, whatever its output would do', () => {
    expect(judgeLanding(withBox(), cut)).toEqual({ class: 'harmless', reasons: [] })
  })

  it('runs dry where they have them all the same, or where it has none', () => {
    const elsewhere: Edit = ['across: [LV, LV-COM], volts: 12 V', 'across: [L1, L2], volts: 240 V']
    expectHazard(judgeLanding(withBox(elsewhere), cut), '7a dry heater: heater.element')
    const none: Edit = [/^.*kind: electronics.*$/gmu, '']
    expectHazard(judgeLanding(withBox(none), cut), '7a dry heater: heater.element')
  })

  it('runs at more than half of them', () => {
    // some 12 V behind the transformer
    const volts = (plate: string): Edit => [
      'volts: 12 V, power: 3 W',
      `volts: ${plate}, power: 3 W`,
    ]
    const dry = withEnds(SAMPLE_PLAN, { 'circulation.hot': 'insulated' })
    expectHazard(judgeLanding(withBox(volts('22 V')), dry), '7a dry heater: heater.element')
    expect(judgeLanding(withBox(volts('26 V')), dry).class).toBe('harmless')
  })
})
