import { describe, expect, it } from 'vitest'
import { buildNetwork } from './build-network.ts'
import { switchesIn } from './configurations.ts'
import type { OracleJob, RawLanding, State } from './oracle.ts'
import { judgeLanding, wrongLandings } from './oracle.ts'
import { withEnds } from './sample-job.ts'
import type { Settled } from './settle-state.ts'
import { settleState } from './settle-state.ts'
import { numberNetwork, voltsBetween } from './solve-dense.ts'
import { TWO_CIRCUIT_PLAN, twoCircuitJob } from './two-circuit-job.ts'

const job = twoCircuitJob()
const plan = TWO_CIRCUIT_PLAN
const ends = (changes: Readonly<Record<string, string>>): RawLanding => withEnds(plan, changes)

const settledIn = (landing: RawLanding, state: State, of: OracleJob = job): Settled => {
  const network = buildNetwork(of, landing, {})
  return settleState(of, numberNetwork(network), switchesIn(of, network, state, 'closed'))
}
const reasonsOf = (kind: string, landing: RawLanding, of: OracleJob = job): readonly string[] =>
  judgeLanding(of, landing).reasons.filter(each => each.startsWith(kind))

describe('a tub on two circuits', () => {
  it('finds the plan right, though one device alone does not open both', () => {
    expect(judgeLanding(job, plan)).toEqual({ class: 'right', reasons: [] })
  })

  it('brings the line that the survey names to the second device', () => {
    const { solution } = settledIn(plan, [])
    expect(voltsBetween(solution, 'one.L-IN', 'two.L-IN')).toBeCloseTo(240, 2)
    const sameLeg = twoCircuitJob({ tub: [['leg1: leg2', 'leg1: leg1']] })
    const same = settledIn(plan, [], sameLeg).solution
    expect(voltsBetween(same, 'one.L-IN', 'two.L-IN')).toBeLessThan(0.1)
  })

  it('tries the ends of both circuits, each on its own board', () => {
    const names = [...wrongLandings(job)].map(each => each.name)
    expect(names).toContain('first.hot@one to one.N')
    expect(names).toContain('second.hot@two to two.N')
    expect(names).toContain('second.hot@box to box.A1')
    expect(names).not.toContain('second.hot@two to one.N')
  })
})

describe('trips of two circuits', () => {
  const SHORT = {
    one: { 'first.hot@box': 'box.A2' },
    two: { 'second.hot@box': 'box.B2' },
  }
  const alwaysOn = { 'pump.hot': 'box.A1' }

  it('leaves the other circuit as it is', () => {
    expect(settledIn(ends(SHORT.two), [])).toMatchObject({ tripped: ['two'], cleared: 0 })
    const both = ends({ ...SHORT.two, ...alwaysOn })
    expect(reasonsOf('6a', both)).toEqual([expect.stringContaining('6a on while off: pump.run')])
  })

  it('opens what hangs on its own', () => {
    const both = ends({ ...SHORT.one, ...alwaysOn })
    expect(settledIn(both, [])).toMatchObject({ tripped: ['one'], cleared: 0 })
    expect(judgeLanding(job, both).class).toBe('harmless')
  })

  it('is clear when both have tripped, or a pole in the box', () => {
    const both = ends({ ...SHORT.one, ...SHORT.two })
    expect(settledIn(both, [])).toMatchObject({ cleared: 2 })
    expect(judgeLanding(job, both).class).toBe('harmless')
    const pole = twoCircuitJob({
      box: [
        ['across: [B, B-L]', 'across: [B-P, B-L]'],
        ['parts:', 'parts:\n    - { id: PB, kind: pole, across: [B, B-P], rated: 1 A }'],
      ],
    })
    expect(settledIn(plan, ['pump', 'heat'], pole)).toMatchObject({ tripped: ['box'], cleared: 2 })
  })

  it('looks again: what has no return any more trips no more', () => {
    // the heater returns by the other circuit: both sums are off by its 11.7 A
    const crossed = ends({ 'heater.common': 'box.A2' })
    expect(settledIn(crossed, ['pump', 'heat'])).toMatchObject({ tripped: ['one'], cleared: 0 })
  })

  it('opens the pole at the most amps first', () => {
    // legs of opposite phase meet; the pump draws from the one whose copper is thicker
    const met = ends({ 'second.hot@box': 'box.A1' })
    const { tripped, solution } = settledIn(met, ['pump'])
    expect(tripped).toEqual(['two'])
    expect(voltsBetween(solution, 'box.A')).toBeCloseTo(119.4, 1)
    const thick = twoCircuitJob({ tub: [['14 AWG, from', '10 AWG, from']] })
    expect(settledIn(met, ['pump'], thick).tripped).toEqual(['one'])
  })

  it('is dead where the circuit of the electronics has tripped', () => {
    const shorted = ends(SHORT.one)
    expect(reasonsOf('7a', shorted)).toEqual([])
    const elsewhere = twoCircuitJob({ box: [['across: [A, A-N]', 'across: [B, B-N]']] })
    expect(reasonsOf('7a', shorted, elsewhere)).toHaveLength(1)
  })
})

describe('what each circuit asks for', () => {
  it('judges conductors by the breaker of their own', () => {
    const size = (from: string, to: string) =>
      twoCircuitJob({ tub: [[new RegExp(`${from} AWG, from`, 'gu'), `${to} AWG, from`]] })
    expect(reasonsOf('1b', plan, size('12', '14'))).toEqual([
      '1b conductor: second.hot 14 AWG behind 20 A',
      '1b conductor: second.neutral 14 AWG behind 20 A',
    ])
    expect(reasonsOf('1b', plan, size('14', '12'))).toEqual([])
  })

  it('judges a main earth by the breaker of its own', () => {
    const tab = (amps: number) =>
      twoCircuitJob({ box: [[/(id: B3.*rated: )20 A/gu, `$1${amps} A`]] })
    expect(reasonsOf('4d', plan, tab(19))).toEqual([
      '4d main earth: second.earth@box on 19 A behind 20 A',
    ])
    const first = twoCircuitJob({ box: [[/(id: A3.*rated: )20 A/gu, '$119 A']] })
    expect(reasonsOf('4d', plan, first)).toEqual([])
  })

  it('trips each pole by the breaker of its own', () => {
    const draws = twoCircuitJob({
      tub: [
        ['amps: 8 A', 'amps: 50 A'],
        ['power: 1.4 kW', 'power: 6.3 kW'],
      ],
    })
    // 48 A or so on each: above three times 15 A, below three times 20 A
    expect(settledIn(plan, ['pump', 'heat'], draws)).toMatchObject({ tripped: ['one'], cleared: 0 })
  })

  it('takes the earth of any circuit', () => {
    const off = { 'first.earth@box': 'insulated' }
    expect(reasonsOf('4a', ends(off))).toEqual([])
    expect(reasonsOf('4a', ends({ ...off, 'second.earth@box': 'insulated' }))).toContainEqual(
      expect.stringContaining('4a metal: box'),
    )
  })

  it('watches the earth of the second source', () => {
    // 4.5 mA to earth: more than `trip.from`, less than `trip.to`
    const leaking = (ohms: number) =>
      twoCircuitJob({
        box: [
          [
            'parts:',
            `parts:\n    - { id: U2, kind: electronics, across: [B, PE], volts: 120 V, power: ${14400 / ohms} W }`,
          ],
        ],
      })
    const none = ends({ 'first.earth@box': 'insulated' })
    expect(reasonsOf('4c', none, leaking(26_000))).toContainEqual(
      expect.stringContaining('4c earth: source of two'),
    )
    expect(reasonsOf('4c', none, leaking(40_000))).toEqual([])
  })

  it('finds either device wired round', () => {
    const round = ends({ 'second.hot@two': 'two.I' })
    expect(reasonsOf('5', round)).toContainEqual(
      expect.stringContaining('5d disconnect wired round: box.B1'),
    )
    expect(reasonsOf('5', ends({ 'second.hot@two': 'two.N' }))).toEqual([])
  })
})
