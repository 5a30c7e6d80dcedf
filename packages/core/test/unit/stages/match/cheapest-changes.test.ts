import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Change, ControlBox, Load, Survey } from '../../../../src/index.ts'
import { cheapestChanges, matchEquipment, withChanges } from '../../../../src/index.ts'
import { CHANGE_COSTS } from '../../../../src/stages/match/change-costs.ts'
import { candidatesOf } from '../../../../src/stages/match/match-equipment.ts'
import { possibleChanges } from '../../../../src/stages/match/possible-changes.ts'
import { maySo, OLD_KEYPAD, probe, told, volts, withMore } from '../../../support/changing.ts'
import { demoBoxes, demoIds, demoTub } from '../../../support/demo.ts'

const boxes = demoBoxes()
const tubs = demoIds('tubs').map(demoTub)

/** Every set of at most one change a load, in no order that means anything. */
function everySet(choices: readonly (readonly Change[])[]): readonly (readonly Change[])[] {
  return choices.reduce<readonly (readonly Change[])[]>(
    (sets, changes) => sets.flatMap(set => [set, ...changes.map(each => [...set, each])]),
    [[]],
  )
}

/** What a set costs with the adapters that match counts and the plate, by the table itself. */
function costly(survey: Survey, box: ControlBox, set: readonly Change[]): number {
  const [matched] = matchEquipment(withChanges(survey, set), [box]).boxes
  const [hole, own] = [survey.keypadHole, box.keypadHole]
  const isOpen = hole && own && (hole.width.si > own.width.si || hole.height.si > own.height.si)
  const changes = set.reduce((sum, each) => {
    const kind = each.kind === 'replace' ? each.of : each.kind
    return sum + CHANGE_COSTS[kind]
  }, 0)
  return changes + (matched?.adapters.length ?? 0) + (isOpen ? 1 : 0)
}

describe('the search against brute force', () => {
  const pairs = tubs.flatMap(tub =>
    boxes.flatMap(box =>
      box.feeds.filter(each => each.system === tub.supply.system).length === 1 &&
      matchEquipment(tub, [box]).boxes[0]?.verdict === 'cannot'
        ? [{ tub, box, name: `${tub.id} on ${box.id}` }]
        : [],
    ),
  )
  const within = pairs.filter(
    ({ tub, box }) => cheapestChanges(tub, box).outcome !== 'out-of-reach',
  )

  test('there is something to compare', () => expect(within.length).toBeGreaterThan(10))

  test.each(within.map(each => [each.name, each] as const))('%s', (_, { tub, box }) => {
    const feeds = candidatesOf(tub, box).filter(each => each.feed.system === tub.supply.system)
    const choices = tub.loads.map(load => possibleChanges(tub, feeds, load, CHANGE_COSTS))
    const sets = everySet(choices)
    expect(sets.length).toBeLessThan(5000)
    const serving = sets.filter(set => maySo(tub, box, set))
    const smallest = serving.filter(
      set =>
        !serving.some(part => part.length < set.length && part.every(each => set.includes(each))),
    )
    const least = Math.min(...smallest.map(set => costly(tub, box, set)))
    const changes = cheapestChanges(tub, box)
    if (changes.outcome !== 'found') {
      expect(changes.outcome).toBe('none')
      expect(serving).toEqual([])
      return
    }
    expect(changes.cost).toBe(least)
    const ofLeast = smallest.filter(set => costly(tub, box, set) === least)
    expect(ofLeast.map(told)).toContainEqual(told(changes.changes))
  })
})

describe('a cheapest set', () => {
  const mains = fc.constantFrom(12, 24, 115, 120, 208, 230, 240)
  /** A demo tub with volts, amps, loads and keypads as nobody would find them. */
  const tub = fc
    .record({
      base: fc.constantFrom(...tubs),
      plates: fc.array(fc.option(mains, { nil: undefined }), { minLength: 8, maxLength: 8 }),
      times: fc.array(fc.constantFrom(1, 1, 1, 3), { minLength: 8, maxLength: 8 }),
      twice: fc.option(fc.nat(5), { nil: undefined }),
      curve: fc.option(fc.constantFrom('10k' as const, '30k' as const), { nil: undefined }),
      keypad: fc.boolean(),
    })
    .map(({ base, plates, times, twice, curve, keypad }): Survey => {
      const loads = base.loads.map((load, index): Load => {
        const plate = plates[index]
        if (load.kind === 'probe' || plate === undefined || load.straps) return load
        const circuits = load.circuits.map(each =>
          each.amps?.kind === 'known'
            ? {
                ...each,
                amps: {
                  ...each.amps,
                  value: {
                    si: (each.amps.value.si * (times[index] ?? 1)) as never,
                    text: `${each.amps.value.si * (times[index] ?? 1)} A`,
                  },
                },
              }
            : each,
        )
        return { ...load, volts: volts(plate), circuits } as Load
      })
      const again = twice === undefined ? undefined : loads[twice % loads.length]
      return withMore(
        { ...base, loads },
        ...(again ? [{ ...again, id: `${again.id}-2` }] : []),
        ...(curve ? [probe(curve, 'found-probe')] : []),
        ...(keypad ? [OLD_KEYPAD] : []),
      )
    })

  test('makes match say may-serve; without any one of its changes it does not', () => {
    let held = 0
    let needed = 0
    fc.assert(
      fc.property(tub, fc.nat(boxes.length - 1), (survey, index) => {
        const box = boxes[index]
        if (!box) throw new Error('no box')
        const found = cheapestChanges(survey, box)
        if (found.outcome !== 'found') return
        const { changes, along } = found
        expect(maySo(survey, box, [...changes, ...along])).toBe(true)
        for (const each of changes) {
          const fewer = changes.filter(other => other !== each)
          expect(maySo(survey, box, [...fewer, ...along])).toBe(false)
        }
        held++
        needed += changes.length
      }),
      { seed: 20_261_125, numRuns: 1500 },
    )
    expect(held).toBeGreaterThan(100)
    expect(needed).toBeGreaterThan(100)
  })
})
