import { describe, expect, test } from 'vitest'
import { placeName } from '../../../src/domain/wiring/supply-alone.ts'
import type { SupplyFault } from '../../../src/domain/wiring/supply-faults.ts'
import { possibleFaults } from '../../../src/domain/wiring/supply-faults.ts'
import type { FittingFault, SupplyCondition } from '../../../src/stages/diagnose/supply/artifact.ts'
import { seeded } from '../../engines/circuit/support/random.ts'
import { condition, isWithin, nameOf, predictor } from './named.ts'
import { circumstancesOf, LOADS } from './supply-jobs.ts'
import type { Truth } from './truth.ts'
import { readingsOf, truthWith } from './truth.ts'

const SEED = 20_261
const CASES = 150 // a tub, fourteen tubs

const point = (value: number) => ({ from: value, to: value })

/** Whether a fit is the fault that there is, at its place, with its ohms and its source. */
function isTruth(fit: FittingFault, { fault, source }: Truth): boolean {
  if (nameOf(fit) !== nameOf({ fault })) return false
  if ('step' in fault) {
    const place = placeName(fault.step.place)
    if (!fit.places.some(each => placeName(each) === place)) return false
  }
  if ('ohms' in fault && !(fit.ohms && isWithin(point(fault.ohms), fit.ohms))) return false
  return isWithin(point(source), fit.source)
}

/** How a fault comes out, from best to worst. */
const OUTCOMES = ['named', 'comes to', 'beside', 'listed', 'lost'] as const
type Out = (typeof OUTCOMES)[number]

function outcomeOf({ named, fits, neverShown }: SupplyCondition, truth: Truth): Out {
  if (neverShown.some(each => isTruth(each, truth))) return 'beside'
  if (!fits.some(each => isTruth(each, truth))) return 'lost'
  if (named === undefined) return 'listed'
  return named === truth.fault.kind ? 'named' : 'comes to'
}

type Counts = Record<Out, number>
const none = (): Counts => ({ named: 0, 'comes to': 0, beside: 0, listed: 0, lost: 0 })
const printed = (counts: Counts): string =>
  OUTCOMES.map(each => `${each} ${counts[each]}`).join(', ')

/** Faults by kind, so that a kind with many places comes no oftener than one with none. */
function byKind(faults: readonly SupplyFault[]): readonly (readonly SupplyFault[])[] {
  const kinds = new Map<string, SupplyFault[]>()
  for (const fault of faults) kinds.set(fault.kind, [...(kinds.get(fault.kind) ?? []), fault])
  return [...kinds.values()]
}

describe(`what a fault makes a meter show never excludes it (seed ${SEED})`, () => {
  const kinds = new Map<string, Counts>()
  const total = none()

  test.each(Object.keys(LOADS))('%s', id => {
    const of = predictor(circumstancesOf(id))
    const { alone, circumstances, measurables, band } = of
    const random = seeded(SEED + Object.keys(LOADS).indexOf(id))
    const faults = byKind(possibleFaults(alone, 0.01))
    const here = none()
    const lost: unknown[] = []
    for (let index = 0; index < CASES; index++) {
      const fault = random.pick(random.pick(faults))
      const truth = truthWith(fault, of, band, random)
      const readings = readingsOf(alone, circumstances, measurables, truth, random)
      const found = condition(of, readings)
      const out = outcomeOf(found, truth)
      const kind = kinds.get(fault.kind) ?? none()
      kinds.set(fault.kind, kind)
      for (const counts of [kind, total, here]) counts[out]++
      if (out === 'lost') lost.push({ index, truth, excluded: found.excluded })
    }
    console.log(`${id}: ${CASES} cases: ${printed(here)}`)
    expect(lost).toEqual([])
  })

  test('and nearly all are named', () => {
    for (const [kind, counts] of kinds) console.log(`${kind}: ${printed(counts)}`)
    const cases = OUTCOMES.reduce((sum, each) => sum + total[each], 0)
    console.log(`seed ${SEED}: ${cases} cases: ${printed(total)}`)
    expect(cases).toBeGreaterThanOrEqual(2000)
    expect(total.lost).toBe(0)
    expect(total.named / cases).toBeGreaterThan(0.85)
    expect(total.listed / cases).toBeLessThan(0.05)
  })
})

describe('what earth does is told beside what is named', () => {
  test('a sound supply is named with an open earth beside it: volts never show that it is whole', () => {
    const of = predictor(circumstancesOf('everyday-240-circulation'))
    const { alone, circumstances, measurables } = of
    const truth = { ...truthWith({ kind: 'sound' }, of, of.band, seeded(1)), wiring: 1 }
    const readings = readingsOf(alone, circumstances, measurables, truth, seeded(2))
    const found = condition(of, readings)
    expect(found.named).toBe('sound')
    expect(found.neverShown.map(nameOf)).toEqual(['earth-open earth'])
    expect(found.dangers).toEqual([])
  })
})
