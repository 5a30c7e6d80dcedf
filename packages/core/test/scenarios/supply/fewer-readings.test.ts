import { describe, expect, test } from 'vitest'
import { possibleFaults } from '../../../src/domain/wiring/supply-faults.ts'
import type { MeterReading, SupplyCondition } from '../../../src/stages/diagnose/supply/artifact.ts'
import type { Random } from '../../engines/circuit/support/random.ts'
import { seeded } from '../../engines/circuit/support/random.ts'
import { condition, isWithin, keysOf, predictor } from './named.ts'
import { circumstancesOf } from './supply-jobs.ts'
import { readingsOf, truthWith } from './truth.ts'

const SEED = 40_077
const CASES = 40
const TUBS = ['everyday-240-circulation', 'wye-208', 'garden-230', 'three-phase-400'] as const

/** Everything that fits the one fits the other too, with no less of ohms and source. */
function expectSuperset(more: SupplyCondition, less: SupplyCondition): void {
  const all = keysOf(more)
  for (const [key, each] of keysOf(less)) {
    const kept = all.get(key)
    expect(kept, key).toBeDefined()
    if (!kept) continue
    expect(isWithin(each.source, kept.source), key).toBe(true)
    if (each.ohms && kept.ohms) expect(isWithin(each.ohms, kept.ohms), key).toBe(true)
  }
}

function widened(reading: MeterReading, random: Random): MeterReading {
  if (reading.kind !== 'volts' || reading.value.kind !== 'known') return reading
  const { si } = reading.value.value
  const at = (value: number) => ({ si: value as typeof si, text: `${value} V` })
  return {
    ...reading,
    value: {
      kind: 'range',
      from: at(Math.max(0, si - 5 * random.next())),
      to: at(si + 5 * random.next()),
      source: 'read while it moved',
    },
  }
}

const unread = (reading: MeterReading): MeterReading => ({
  ...reading,
  value: { kind: 'unknown', reason: 'not measured' },
})

describe.each(TUBS)(`less known never loses a fault: %s (seed ${SEED})`, id => {
  const of = predictor(circumstancesOf(id))
  const { alone, circumstances, measurables, band } = of
  const faults = possibleFaults(alone, 0.01)
  const random = seeded(SEED + TUBS.indexOf(id))
  const cases = Array.from({ length: CASES }, () => {
    const truth = truthWith(random.pick(faults), of, band, random)
    return readingsOf(alone, circumstances, measurables, truth, random)
  })

  test('with readings left out, one after the other', () => {
    let grew = 0
    for (const readings of cases) {
      let kept = readings
      let before = condition(of, kept)
      while (kept.length > 0) {
        kept = kept.filter(() => random.next() > 0.3)
        const after = condition(of, kept)
        expectSuperset(after, before)
        if (after.fits.length > before.fits.length) grew++
        before = after
      }
      expect(before.fits.length + before.neverShown.length).toBe(of.candidates.length)
    }
    expect(grew).toBeGreaterThan(CASES)
  })

  test('a reading that is unknown is as one that was not taken', () => {
    for (const readings of cases) {
      const at = random.below(readings.length)
      const told = readings.map((each, index) => (index === at ? unread(each) : each))
      const left = readings.filter((_, index) => index !== at)
      expect(condition(of, told)).toEqual(condition(of, left))
    }
  })

  test('with readings as ranges around what was read', () => {
    for (const readings of cases) {
      const wide = readings.map(each => (random.next() < 0.5 ? widened(each, random) : each))
      expectSuperset(condition(of, wide), condition(of, readings))
    }
  })

  test('in any order the same fits', () => {
    for (const readings of cases) {
      const turned = keysOf(condition(of, readings.toReversed()))
      expect([...turned.keys()]).toEqual([...keysOf(condition(of, readings)).keys()])
    }
  })
})
