import { describe, expect, test } from 'vitest'
import type { Cold, InsulationTest } from '../../../../src/index.ts'
import { earthPaths, feedOf, insulationBetween, insulationVerdict } from '../../../../src/index.ts'
import { at, coldDemo, DEMO, NOTHING, planned, slipped } from './cold-job.ts'

const { job, landing } = DEMO
const tested = (cold: Cold, one: readonly string[], other: readonly string[]): InsulationTest =>
  insulationBetween(
    cold,
    one.map(each => at(cold, each)),
    other.map(each => at(cold, each)),
  )

const unplugged = (test: InsulationTest): Readonly<Record<string, string>> =>
  test.kind === 'joined'
    ? {}
    : Object.fromEntries(
        test.unplug.map(({ part, dies, falsifies }) => [
          part.subject,
          `${dies ? 'dies' : ''}${falsifies ? 'falsifies' : ''}`,
        ]),
      )

describe('an insulation test', () => {
  test('of a heater alone: two insulations of 20 MΩ side by side, nothing to unplug', () => {
    const test = tested(coldDemo({ plugged: NOTHING }), ['heater.hot'], ['heater.metal'])
    expect(test).toMatchObject({ kind: 'insulated', volts: 500, unplug: [] })
    if (test.kind === 'insulated') {
      expect((test.expected ?? 0) / 10e6).toBeCloseTo(1, 4)
      expect((test.least ?? 0) / 5e6).toBeCloseTo(1, 4)
    }
  })

  test('of everything against earth: all that hangs on it and dies of it', () => {
    const test = tested(coldDemo({ supply: 'off' }), ['box.A1', 'box.A2', 'box.A3'], ['box.A4'])
    expect(unplugged(test)).toEqual({
      'box.U1': 'dies',
      'box.water': 'dies',
      'box.limit': 'dies',
      'ozonator.input': 'dies',
      'light.input': 'dies',
      'water-probe.probe': 'dies',
      'limit-probe.probe': 'dies',
      'keypad.input': 'dies',
    })
  })

  test('of line to neutral: the transformer’s primary passes, and the breaker’s own electronics', () => {
    expect(
      unplugged(tested(coldDemo({ plugged: NOTHING, supply: 'off' }), ['box.A1'], ['box.A2']))[
        'box.T1'
      ],
    ).toBe('falsifies')
    const live = unplugged(
      tested(coldDemo({ plugged: NOTHING, supply: 'closed' }), ['box.A1'], ['box.A2']),
    )
    expect(live).toMatchObject({ 'box.T1': 'falsifies', 'gf.GF': 'diesfalsifies' })
  })

  test('of a motor alone reaches nothing of the box', () => {
    expect(
      unplugged(tested(coldDemo({ plugged: NOTHING }), ['pump-a.common'], ['pump-a.metal'])),
    ).toEqual({})
  })

  test('of a motor behind electronics kills it: no winding is measured through them', () => {
    const loads = job.loads.map(load =>
      load.kind === 'pump' && load.id === 'pump-a'
        ? {
            ...load,
            circuits: load.circuits.map(each => ({
              ...each,
              ohms: { kind: 'unknown', reason: 'does not exist' } as const,
            })),
          }
        : load,
    )
    const cold = coldDemo({ plugged: NOTHING }, landing, { ...job, loads })
    expect(unplugged(tested(cold, ['pump-a.common'], ['pump-a.metal']))).toEqual({
      'pump-a.high': 'dies',
      'pump-a.low': 'dies',
    })
  })

  test('once what falsifies is off, is no path but insulation: some megohms', () => {
    for (const [one, other] of [
      [['box.A1'], ['box.A2']],
      [['box.A1'], ['box.A4']],
      [['box.H1'], ['box.H2']],
    ] as const) {
      const test = tested(coldDemo({ supply: 'closed' }), one, other)
      expect(
        test.kind === 'insulated' && (test.expected ?? Number.POSITIVE_INFINITY),
      ).toBeGreaterThan(1e6)
    }
  })

  test('has nothing to test where copper joins', () => {
    expect(tested(coldDemo(), ['box.B3'], ['box.A3']).kind).toBe('joined')
    expect(tested(coldDemo({ supply: 'closed' }), ['box.A2'], ['box.A4']).kind).toBe('joined')
  })

  test('a heater between what is tested falsifies it, and takes its own insulation along', () => {
    const test = tested(coldDemo(), ['box.H1'], ['box.H2'])
    expect(unplugged(test)['heater.element']).toBe('falsifies')
  })

  test('what a reading means', () => {
    const at = [20e6, 10e6, 2e6, 1e6, 0.7e6, 0.5e6, 0.4e6].map(insulationVerdict)
    expect(at).toEqual([
      'good',
      'acceptable',
      'acceptable',
      'doubtful',
      'doubtful',
      'doubtful',
      'suspect',
    ])
  })
})

describe('continuity of earth', () => {
  const paths = (cold: Cold) => {
    const feed = feedOf(cold.job)
    if (!feed) throw new Error('no feed')
    return earthPaths(cold, feed)
  }

  test('reaches every metal that is plugged in, within 0.1 Ω, and the run within 1 Ω', () => {
    const all = paths(coldDemo())
    const metals = all.filter(each => each.kind === 'metal').map(each => each.subject)
    expect(metals.sort()).toEqual(['circulation', 'heater', 'ozonator', 'pump-a', 'pump-b'])
    for (const each of all) {
      expect(each.limit).toBe(each.kind === 'run' ? 1 : 0.1)
      expect(each.holds).toBe(true)
    }
    // 35 ft of 10 AWG at 0.9989 Ω per 1000 ft, and two joints of 2 mΩ.
    const run = all.find(each => each.kind === 'run')?.expected ?? 0
    expect(Math.abs(run - (0.035 * 0.9989 + 0.004))).toBeLessThan(0.0003)
  })

  test('is copper alone: an earth lead left off is open, whatever winding joins the load', () => {
    const off = slipped(landing, { ends: { 'pump-a.earth': 'loose' } })
    const path = paths(coldDemo({}, off)).find(each => each.subject === 'pump-a')
    expect(path?.holds).toBe(false)
    expect(path?.expected).toBeUndefined()
  })

  test('is told of what is there: unplugged loads and a supply that is off have no row', () => {
    const kinds = paths(coldDemo({ plugged: NOTHING, supply: 'off' })).map(each => each.kind)
    expect(new Set(kinds)).toEqual(new Set(['terminal']))
    expect(job.box.board.terminals.filter(each => each.class === 'earth')).toHaveLength(
      kinds.length + 1,
    )
  })

  test('holds in every plan of the demo that is wired by conductors', () => {
    for (const [tub, box] of [
      ['garden-230', 'sorrel-32'],
      ['cord-120-15', 'plover-1'],
      ['large-60', 'bittern-8'],
    ] as const) {
      const other = planned(tub, box)
      for (const each of paths(coldDemo({}, other.landing, other.job)))
        expect(each.holds).toBe(true)
    }
  })
})
