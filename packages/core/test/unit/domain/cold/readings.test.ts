import { describe, expect, test } from 'vitest'
import type { Job } from '../../../../src/index.ts'
import { demoBox } from '../../../support/demo.ts'
import {
  coldDemo,
  DEMO,
  NOTHING,
  planned,
  read,
  slipped,
  surveyed,
  withPrimary,
} from './cold-job.ts'

const { job, landing } = DEMO
const bare = (of: Job = job) => coldDemo({ plugged: NOTHING, supply: 'off' }, landing, of)

const asks = (reading: ReturnType<typeof read>): readonly string[] =>
  reading.kind === 'not-shown' ? reading.asks.map(each => `${each.kind} ${each.subject}`) : []

describe('an element', () => {
  // What the trade expects of a good one, cold: common practice, no source.
  test('5.5 kW at 240 V reads 10 to 11 Ω, alone and in its place', () => {
    for (const reading of [
      read(bare(), 'heater.hot', 'heater.common'),
      read(coldDemo(), 'box.H1', 'box.H2'),
    ]) {
      if (reading.kind !== 'ohms') throw new Error(reading.kind)
      expect(reading.expected).toBeGreaterThan(10)
      expect(reading.expected).toBeLessThan(11)
    }
  })

  test('4 kW at 240 V reads 14 to 15 Ω', () => {
    const other = planned('three-wire-240', 'alder-240')
    const cold = coldDemo({ plugged: NOTHING }, other.landing, other.job)
    const reading = read(cold, 'heater.hot', 'heater.common')
    if (reading.kind !== 'ohms') throw new Error(reading.kind)
    expect(reading.expected).toBeGreaterThan(14)
    expect(reading.expected).toBeLessThan(15)
  })

  // `reference/water-heater-4500-at-208` prints 12.8 Ω for 4500 W, `element-down-rating` 10.47 Ω.
  test.each([
    [4500, 12.8],
    [5500, 10.47],
  ])('%i W: what is in print lies in its band, near the middle', (watts, printed) => {
    const heater = job.loads.find(each => each.id === 'heater')
    if (heater?.kind !== 'heater') throw new Error('no heater')
    const power = { kind: 'known', value: { si: watts, text: `${watts} W` } } as never
    const circuits = heater.circuits.map(each => ({ ...each, power }))
    const of = {
      ...job,
      loads: job.loads.map(each => (each === heater ? { ...heater, circuits } : each)),
    }
    const reading = read(bare(of), 'heater.hot', 'heater.common')
    if (reading.kind !== 'ohms') throw new Error(reading.kind)
    expect(Math.abs(reading.expected - printed)).toBeLessThan(0.02)
    expect(reading.low).toBeLessThan(0.91 * printed)
    expect(reading.high).toBeGreaterThan(1.09 * printed)
  })

  test('with one lead left off its stud reads open between the studs', () => {
    const off = slipped(landing, { ends: { 'heater.hot': 'loose' } })
    expect(read(coldDemo({}, off), 'box.H1', 'box.H2').kind).toBe('open')
    expect(read(coldDemo({}, off), 'heater.hot', 'box.H2').kind).toBe('ohms')
  })

  test('of unknown power is asked for', () => {
    const heater = job.loads.find(each => each.id === 'heater')
    if (heater?.kind !== 'heater') throw new Error('no heater')
    const circuits = heater.circuits.map(({ power: _, ...each }) => each)
    const of = {
      ...job,
      loads: job.loads.map(each => (each === heater ? { ...heater, circuits } : each)),
    }
    expect(asks(read(bare(of), 'heater.hot', 'heater.common'))).toEqual(['element heater.element'])
  })
})

describe('a jumper', () => {
  test('left in reads a dead short between neutral and second leg; out, open', () => {
    const left = slipped(landing, { jumpers: { J1: 'in' } })
    const short = read(coldDemo({ plugged: NOTHING, supply: 'off' }, left), 'box.A2', 'box.A3')
    expect(short).toMatchObject({ kind: 'ohms', low: 0 })
    expect(short.kind === 'ohms' && short.high).toBeLessThan(0.25)
    expect(read(bare(), 'box.A2', 'box.A3').kind).toBe('open')
  })
})

describe('a motor', () => {
  const both = surveyed(job, 'pump-a', { high: '1.8 ohm', low: '5.5 ohm' })

  test('of two speeds reads less from common to high than from common to low', () => {
    const cold = bare(both)
    const [high, low] = [
      read(cold, 'pump-a.common', 'pump-a.high'),
      read(cold, 'pump-a.common', 'pump-a.low'),
    ]
    if (high.kind !== 'ohms' || low.kind !== 'ohms') throw new Error('not shown')
    expect(high.expected).toBeLessThan(low.expected)
    expect(high.high).toBeLessThan(low.low)
    const across = read(cold, 'pump-a.high', 'pump-a.low')
    expect(across.kind === 'ohms' && across.expected).toBeCloseTo(7.3, 1)
  })

  test('that nobody measured is not shown, and asks for that winding alone', () => {
    expect(asks(read(bare(), 'pump-a.common', 'pump-a.high'))).toEqual(['winding pump-a.high'])
    expect(asks(read(bare(), 'pump-a.high', 'pump-a.low'))).toEqual([
      'winding pump-a.high',
      'winding pump-a.low',
    ])
    const one = surveyed(job, 'pump-a', { high: '1.8 ohm' })
    expect(read(bare(one), 'pump-a.common', 'pump-a.high').kind).toBe('ohms')
    expect(asks(read(bare(one), 'pump-a.high', 'pump-a.low'))).toEqual(['winding pump-a.low'])
  })

  test('never reads its impedance in running: 240 V over 10 A says nothing', () => {
    const reading = read(bare(), 'pump-a.common', 'pump-a.high')
    expect(reading).toMatchObject({ kind: 'not-shown' })
    expect(reading.greatest).toBeUndefined()
  })

  test('with its strap moved since the survey is asked again', () => {
    const strapped = planned('strapped-115', 'rowan-2')
    const load = strapped.job.loads.find(each => 'straps' in each && each.straps)
    if (!load || load.kind === 'probe') throw new Error('no strap')
    const [circuit] = load.circuits
    const [a = '', b = ''] = circuit?.across ?? []
    const of = surveyed(strapped.job, load.id, { [circuit?.id ?? '']: '3 ohm' })
    const straps = { [load.id]: load.straps?.found ?? '' }
    const names = [`${load.id}.${a}`, `${load.id}.${b}`] as const
    const found = slipped(strapped.landing, { straps })
    expect(read(coldDemo({ plugged: NOTHING }, found, of), ...names).kind).toBe('ohms')
    expect(strapped.landing.straps[load.id]).not.toBe(load.straps?.found)
    expect(read(coldDemo({ plugged: NOTHING }, strapped.landing, of), ...names).kind).toBe(
      'not-shown',
    )
  })

  test('with a capacitor says that the meter first shows a charge', () => {
    const of: Job = {
      ...both,
      loads: both.loads.map(each =>
        each.kind === 'pump' && each.id === 'pump-a'
          ? {
              ...each,
              capacitors: [
                {
                  id: 'run',
                  use: 'run',
                  capacitance: { si: 35e-6, text: '35 uF' },
                  place: 'on the motor',
                } as never,
              ],
            }
          : each,
      ),
    }
    expect(read(bare(of), 'pump-a.common', 'pump-a.high').charges).toEqual(['pump-a'])
    expect(read(bare(of), 'heater.hot', 'heater.common').charges).toEqual([])
    expect(read(bare(both), 'pump-a.common', 'pump-a.high').charges).toEqual([])
  })
})

describe('a board', () => {
  test('passes from line to neutral through a transformer that nobody measured: not shown', () => {
    expect(asks(read(bare(), 'box.A1', 'box.A2'))).toEqual(['primary box.T1'])
  })

  test('with the primary’s ohms in the papers shows them', () => {
    const reading = read(bare(withPrimary(job, '38 ohm')), 'box.A1', 'box.A2')
    if (reading.kind !== 'ohms') throw new Error(reading.kind)
    expect(reading.expected).toBeGreaterThan(38)
    expect(reading.expected).toBeLessThan(38.1)
  })

  test('is open from line to line and to earth, contacts being open', () => {
    for (const [a, b] of [
      ['A1', 'A3'],
      ['A1', 'A4'],
      ['A2', 'A4'],
      ['A1', 'B1'],
      ['A3', 'H2'],
    ])
      expect(read(bare(), `box.${a}`, `box.${b}`).kind).toBe('open')
  })

  test('a probe reads its curve alone, and nothing certain in its socket', () => {
    const alone = read(
      coldDemo({ plugged: NOTHING, celsius: 25 }),
      'water-probe.signal',
      'water-probe.common',
    )
    expect(alone.kind === 'ohms' && alone.expected).toBeCloseTo(10_000, 0)
    // 5301.5 Ω at 40 °C: `reference/beta-equation-thermistor`.
    const warm = read(
      coldDemo({ plugged: NOTHING, celsius: 40 }),
      'water-probe.signal',
      'water-probe.common',
    )
    expect(warm.kind === 'ohms' && Math.abs(warm.expected - 5301.5)).toBeLessThan(0.3)
    expect(asks(read(coldDemo(), 'box.S1', 'box.S2'))).toEqual(['input box.water'])
  })

  test.each(['heron-4', 'bittern-8'])(
    '%s: neutral behind an open disconnect is off earth just where it is opened',
    box => {
      const tub = box === 'heron-4' ? 'everyday-240-circulation' : 'large-60'
      const other = planned(tub, box)
      expect(demoBox(box).id).toBe(box)
      const cold = (supply: 'off' | 'open' | 'closed') =>
        coldDemo({ plugged: NOTHING, supply }, other.landing, other.job)
      expect(read(cold('off'), 'box.A2', 'box.A4').kind).toBe('open')
      expect(read(cold('closed'), 'box.A2', 'box.A4').kind).toBe('ohms')
      expect(read(cold('open'), 'box.A2', 'box.A4').kind).toBe(box === 'heron-4' ? 'open' : 'ohms')
    },
  )

  test('a cord that is out ties neutral to earth nowhere', () => {
    const { job: of, landing: at } = planned('cord-120-15', 'plover-1')
    expect(read(coldDemo({ plugged: NOTHING }, at, of), 'box.A2', 'box.A4').kind).toBe('open')
  })
})
