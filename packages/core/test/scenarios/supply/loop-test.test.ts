import { describe, expect, test } from 'vitest'
import {
  factorsOf,
  ohmsOf,
  placeName,
  solveSupply,
  supplyAlone,
  supplyWith,
} from '../../../src/domain/wiring/supply-alone.ts'
import type { LoopTestInput } from '../../../src/stages/diagnose/supply/loop-test.ts'
import { loopTest } from '../../../src/stages/diagnose/supply/loop-test.ts'
import { volts } from './named.ts'
import { circumstancesOf } from './supply-jobs.ts'

const amps = (si: number) => ({ si: si as never, text: `${si} A` })

const input = (
  id: string,
  between: LoopTestInput['between'],
  idle: number,
  loaded: number,
  drawn: number,
): LoopTestInput => {
  const { tub, devices } = circumstancesOf(id)
  return { tub, devices, between, idle: volts(idle), loaded: volts(loaded), amps: amps(drawn) }
}

const LEGS = ['leg1', 'leg2'] as const

describe('ohms of the loop from a known load', () => {
  test('what a solved supply drops is what it is described to have', () => {
    const { tub, devices } = circumstancesOf('large-60')
    const heater = { id: 'heater', between: LEGS, volts: 240, amps: 40, powerFactor: 1 }
    const made = supplyAlone({ tub, devices, loads: [heater] })
    if (!made.ok) throw new Error('not wired')
    const shown = (series: ReadonlyMap<string, number>) => {
      const solved = solveSupply(supplyWith(made.value, factorsOf(made.value, { series })))
      const { re, im } = solved.between('leg1', 'leg2')
      return [Math.hypot(re, im), solved.amps('heater')] as const
    }
    const [loaded, drawn] = shown(new Map())
    const sound = loopTest(input('large-60', LEGS, 240, loaded, drawn))
    if (!sound.ok) throw new Error(JSON.stringify(sound.failure))
    expect(sound.value.loopOhms).toBeCloseTo(sound.value.expectedOhms, 2)
    expect(sound.value.finding).toBe('as-described')
    expect(sound.value.look).toEqual([])
    const copper = ['run', 'last'].flatMap(cable =>
      LEGS.map(leg => ohmsOf(made.value, `cable:${cable}.${leg}`)),
    )
    expect(sound.value.copperOhms).toBeCloseTo(
      copper.reduce((a, b) => a + b),
      9,
    )

    const [low, less] = shown(new Map([['cable:last.leg2', 0.2]]))
    const joint = loopTest(input('large-60', LEGS, 240, low, less))
    if (!joint.ok) throw new Error(JSON.stringify(joint.failure))
    expect(joint.value.finding).toBe('too-much')
    expect(joint.value.excess.from).toBeGreaterThan(0.1)
    expect(joint.value.excess.from).toBeLessThan(0.2)
    expect(joint.value.excess.to).toBeGreaterThan(0.2)
    // 0.2 Ω at 39 A: 300 W in one joint.
    expect(joint.value.lostWatts.from).toBeLessThan(0.2 * less * less)
    expect(joint.value.lostWatts.to).toBeGreaterThan(0.2 * less * less)
    expect(joint.value.look.map(placeName)).toEqual([
      'source:gf',
      'gf.P1',
      'cable:run',
      'disconnect.S1',
      'cable:last',
      'gf.P2',
      'disconnect.S2',
    ])
  })

  test('what is read leaves open as much as the meters do', () => {
    const found = loopTest(input('everyday-240-plain', LEGS, 240, 235, 20))
    if (!found.ok) throw new Error(JSON.stringify(found.failure))
    expect(found.value.loopOhms).toBeCloseTo(0.25, 9)
    // 5 V ±0.65 over 20 A ±0.7.
    expect(found.value.within.from).toBeCloseTo(4.35 / 20.7, 9)
    expect(found.value.within.to).toBeCloseTo(5.65 / 19.3, 9)
  })

  test('a source that nobody surveyed leaves more open', () => {
    const given = input('everyday-240-plain', LEGS, 240, 236, 20)
    const { sourceImpedance: _, ...supply } = given.tub.supply
    const known = loopTest(given)
    const unknown = loopTest({ ...given, tub: { ...given.tub, supply } })
    if (!known.ok || !unknown.ok) throw new Error('refused')
    expect(unknown.value.expected.to).toBeGreaterThan(known.value.expected.to + 0.05)
    expect(known.value.excess.from).toBeGreaterThan(unknown.value.excess.from)
  })

  test.each([
    ['no load', input('everyday-240-plain', LEGS, 240, 236, 0), 'no-current'],
    [
      'a load the clamp cannot tell',
      input('everyday-240-plain', LEGS, 240, 236, 0.3),
      'no-current',
    ],
    ['the drop of a digit', input('everyday-240-plain', LEGS, 240, 239.4, 20), 'within-accuracy'],
    ['volts that rise', input('everyday-240-plain', LEGS, 238, 240, 20), 'within-accuracy'],
    ['no neutral', input('three-wire-240', ['leg1', 'neutral'], 120, 117, 20), 'not-arriving'],
  ] as const)('%s is refused', (_, given, reason) => {
    expect(loopTest(given)).toMatchObject({ ok: false, failure: { reason } })
  })

  test('just beyond what the meter can tell is not refused', () => {
    expect(loopTest(input('everyday-240-plain', LEGS, 240, 239.39, 20)).ok).toBe(true)
  })
})
