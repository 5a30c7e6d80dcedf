import { describe, expect, it } from 'vitest'
import { buildNetwork } from './build-network.ts'
import { switchesIn } from './configurations.ts'
import type { LinesJob } from './lines-job.ts'
import { linesJob } from './lines-job.ts'
import { errorInManyDigits } from './many-digits.ts'
import { ONE_PUMP_FILES, ONE_PUMP_PLAN, onePumpJob } from './one-pump-job.ts'
import { judgeLanding, readJob } from './oracle.ts'
import type { Edit } from './sample-job.ts'
import { withEdits, withEnds } from './sample-job.ts'
import { numberNetwork, solveNetwork, voltsBetween } from './solve-dense.ts'
import { checkInSimulator } from './spice-check.ts'

const WYE: LinesJob = {
  system: 'two-legs-of-wye',
  region: 'US',
  lines: ['leg1', 'leg2'],
  neutral: '2.5 mm2',
  across: ['leg1', 'leg2'],
  volts: '208 V',
}
const TWO_LIVES: LinesJob = {
  system: 'two-lives-230',
  lines: ['leg1', 'leg2'],
  across: ['leg1', 'leg2'],
  volts: '230 V',
}
const THREE_PHASE: LinesJob = {
  system: 'three-phase-230-400',
  lines: ['leg1', 'leg2', 'leg3'],
  neutral: '2.5 mm2',
  across: ['leg3', 'neutral'],
  volts: '230 V',
}

/** Volts between two nodes of the first device, or to the reference, with nothing running. */
function idleVolts(described: LinesJob, a: string, b?: string): number {
  const { job, plan } = linesJob(described)
  const network = buildNetwork(job, plan, {})
  const solution = solveNetwork(numberNetwork(network), switchesIn(job, network, [], 'closed'))
  return voltsBetween(solution, `dev.${a}-in`, b === undefined ? '' : `dev.${b}-in`)
}

describe('volts of each source', () => {
  it('a wye: 208 V between its legs, 120 V to neutral', () => {
    expect(idleVolts(WYE, 'leg1', 'leg2')).toBeCloseTo(207.85, 2)
    expect(idleVolts(WYE, 'leg2', 'neutral')).toBeCloseTo(120, 4)
  })

  it('two lives: 230 V between them, each 132.8 V to earth', () => {
    expect(idleVolts(TWO_LIVES, 'leg1', 'leg2')).toBeCloseTo(230, 4)
    expect(idleVolts(TWO_LIVES, 'leg2')).toBeCloseTo(132.79, 2)
  })

  it('three phases: 230 V to neutral, 400 V between any two', () => {
    for (const [a, b] of [
      ['leg1', 'leg2'],
      ['leg2', 'leg3'],
      ['leg3', 'leg1'],
    ] as const) {
      expect(idleVolts(THREE_PHASE, a, 'neutral')).toBeCloseTo(230, 4)
      expect(idleVolts(THREE_PHASE, a, b)).toBeCloseTo(398.37, 2)
    }
  })

  it('a high leg: 208 V to neutral, 240 V to the other', () => {
    const delta = { ...WYE, system: 'high-leg-delta' }
    expect(idleVolts(delta, 'leg2', 'neutral')).toBeCloseTo(207.85, 2)
    expect(idleVolts(delta, 'leg1', 'leg2')).toBeCloseTo(240, 4)
  })

  it('split phase: 240 V between its legs', () => {
    expect(idleVolts({ ...WYE, system: 'split-phase' }, 'leg1', 'leg2')).toBeCloseTo(240, 4)
  })
})

describe('a motor on each source', () => {
  const judged = (described: LinesJob) => {
    const { job, plan } = linesJob(described)
    return judgeLanding(job, plan)
  }
  const RIGHT = { class: 'right', reasons: [] }
  const onVolts = (described: LinesJob) =>
    expect(judged(described).reasons).toContainEqual(expect.stringContaining('2 volts: pump.run'))

  it('finds a 240 V motor weak on 208 V', () => {
    expect(judged(WYE)).toEqual(RIGHT)
    onVolts({ ...WYE, volts: '240 V' })
  })

  it('finds a 400 V motor weak on two lives', () => {
    expect(judged(TWO_LIVES)).toEqual(RIGHT)
    onVolts({ ...TWO_LIVES, volts: '400 V' })
  })

  it('finds 400 V on a 230 V motor between two phases', () => {
    expect(judged(THREE_PHASE)).toEqual(RIGHT)
    onVolts({ ...THREE_PHASE, across: ['leg3', 'leg1'] })
  })

  it('asks less of a gauged neutral that several lines share', () => {
    const neutral = (described: LinesJob) =>
      judged(described).reasons.filter(each => /1b/u.test(each))
    const small = ['1b conductor: run.neutral 1 mm2 behind 16 A']
    // 14 AWG: 15 A as a leg, and 2.08 mm² of the 3.31 mm² that 16 A ask of an earth; legs 2.5 mm²
    expect(neutral({ ...WYE, neutral: '14 AWG' })).toHaveLength(1)
    expect(neutral({ ...WYE, neutral: '12 AWG' })).toEqual([])
    expect(neutral({ ...THREE_PHASE, neutral: '1 mm2' })).toEqual(small)
    expect(neutral({ ...THREE_PHASE, neutral: '1.5 mm2' })).toEqual([])
  })

  it('agrees with 50 digits and with a circuit simulator', async () => {
    const { job, plan } = linesJob(THREE_PHASE)
    expect(errorInManyDigits(job, plan, ['pump'])).toBeLessThan(1e-9)
    const check = await checkInSimulator(job, plan, ['pump'])
    expect(check).not.toHaveProperty('skipped')
    if (!('skipped' in check)) expect(check.worst).toBeLessThan(1e-8)
  }, 60_000)
})

describe('a feeder before the first device', () => {
  const behind = (length: string) =>
    linesJob({ ...THREE_PHASE, more: `  feeder: { length: ${length}, size: 2.5 mm2 }` })

  it('adds its copper, one way, to each conductor of the source', () => {
    expect(behind('100 m').job.sourceOhms).toBeCloseTo(0.025 + (100 * 1.21615) / 58 / 2.5, 4)
  })

  it('leaves a motor weak when it is long', () => {
    const judged = (length: string) => {
      const { job, plan } = behind(length)
      return judgeLanding(job, plan)
    }
    expect(judged('200 m').reasons).toContainEqual(expect.stringContaining('2 volts: pump.run 21'))
    expect(judged('100 m').class).toBe('right')
  })
})

describe('a plug that may be turned', () => {
  const turnable: Edit = ['frequency:', 'turnable: true\n  frequency:']
  const bothSides: readonly Edit[] = [
    ['id: P2, node: N,', 'id: P2, node: P-RET,'],
    [
      'parts:',
      'parts:\n    - { id: R2, kind: contact, across: [N, P-RET], rated: { resistive: 16 A } }',
    ],
    ['closes: [R1]', 'closes: [R1, R2]'],
  ]

  it('finds a contact that then sits in the neutral', () => {
    const job = onePumpJob({ tub: [turnable] })
    expect(judgeLanding(job, ONE_PUMP_PLAN).reasons).toEqual([
      '6b only the neutral switched: pump.run ',
    ])
    expect(judgeLanding(onePumpJob({}), ONE_PUMP_PLAN).class).toBe('right')
  })

  it('finds a box right that opens both sides', () => {
    const job = onePumpJob({ tub: [turnable], box: bothSides })
    expect(judgeLanding(job, ONE_PUMP_PLAN)).toEqual({ class: 'right', reasons: [] })
  })

  it('finds what is hazardous as it is drawn', () => {
    const job = onePumpJob({ tub: [turnable], box: bothSides })
    const bare = withEnds(ONE_PUMP_PLAN, { 'run.line@box': 'loose' })
    expect(judgeLanding(job, bare).class).toBe('hazardous')
  })

  it('finds a bare neutral that is the line the other way round', () => {
    const bare = withEnds(ONE_PUMP_PLAN, {
      'run.neutral@box': 'loose',
      'run.line@box': 'insulated',
    })
    const files = { ...ONE_PUMP_FILES, survey: withEdits(ONE_PUMP_FILES.survey, [turnable]) }
    expect(judgeLanding(readJob(files, ONE_PUMP_PLAN), bare).reasons).toContainEqual(
      expect.stringContaining('10 loose and live: run.neutral@box'),
    )
    expect(judgeLanding(onePumpJob({}), bare).class).toBe('harmless')
  })
})
