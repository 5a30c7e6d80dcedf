import {
  conductorSets,
  draftLoad,
  freeId,
  habitsOf,
  LOAD_SHAPES,
  load as loadSchema,
  REGIONS,
  SYSTEMS,
  shapeOf,
  suitsSystem,
  usualFeedColour,
} from '@tubwright/core'
import { describe, expect, test } from 'vitest'
import { demoDevices, demoIds, demoTub } from '../../../support/demo.ts'

const tubs = demoIds('tubs').map(demoTub)

/** Everything that a draft leaves open, answered somehow. */
function answered(draft: Readonly<Record<string, unknown>>): unknown {
  const leads = (draft['leads'] as readonly object[]).map(each => ({
    ...each,
    size: '14 AWG',
    colour: 'black',
  }))
  const circuits = (draft['circuits'] as readonly object[] | undefined)?.map(each => ({
    ...each,
    amps: '1 A',
  }))
  return draft['kind'] === 'probe'
    ? { ...draft, leads, curve: '10k', place: 'water' }
    : { ...draft, leads, circuits, volts: '120 V' }
}

describe('the loads that are offered', () => {
  test.each(LOAD_SHAPES.map(each => [each.id, each] as const))(
    '%s is a load of the schema once it is answered, and of its own shape',
    (_, shape) => {
      const draft = draftLoad(shape, 'a', 'A')
      expect(loadSchema.safeParse(answered(draft)).error).toBeUndefined()
      expect(shapeOf(draft as never)?.id).toBe(shape.id)
    },
  )

  test('most loads of the demo have one of the shapes', () => {
    const all = tubs.flatMap(each => each.loads)
    const known = all.filter(each => shapeOf(each))
    expect(known.length / all.length).toBeGreaterThan(0.9)
  })

  test('a lead of another function makes another shape', () =>
    expect(shapeOf({ kind: 'pump', leads: [{ function: 'hot' }] })).toBeUndefined())

  test('freeId never takes a taken name', () => {
    expect(freeId('pump', [])).toBe('pump')
    expect(freeId('pump', ['pump', 'pump-2'])).toBe('pump-3')
  })
})

describe('what a system brings', () => {
  test.each(SYSTEMS)('%s: every set has an earth, and a neutral where there is one', system => {
    const sets = conductorSets(system)
    expect(sets.length).toBeGreaterThan(0)
    for (const set of sets) expect(set).toContain('earth')
    expect(sets.flat().includes('neutral')).toBe(system !== 'two-lives-230')
  })

  test('every tub of the demo with one circuit brings one of the sets', () => {
    for (const { supply } of tubs) {
      const run = supply.cables.find(each => each.to === 'box')
      const has = run?.conductors.map(each => each.function) ?? []
      if (has.some(each => each.startsWith('second-'))) continue
      const sets = conductorSets(supply.system).map(each => [...each].sort().join())
      expect(sets).toContain([...has].sort().join())
    }
  })

  test('the first device of every tub of the demo suits its system', () => {
    for (const { supply } of tubs) {
      if (supply.devices.some(each => each.fedBy)) continue
      const device = demoDevices.get(supply.devices[0]?.device ?? '')
      expect(suitsSystem(Object.keys(device?.fedAt ?? {}), supply.system), supply.system).toBe(true)
    }
  })

  test('a device of one line does not suit two legs', () =>
    expect(suitsSystem(['leg1', 'neutral', 'earth'], 'split-phase')).toBe(false))
})

describe('what is usual', () => {
  test.each(REGIONS)('%s: its frequency is one that boxes there take', region => {
    const { frequency, systems, breakers } = habitsOf(region)
    expect(frequency).toBe(['US', 'CA'].includes(region) ? '60 Hz' : '50 Hz')
    expect(systems.length).toBeGreaterThan(0)
    expect([...breakers].map(each => Number.parseFloat(each))).toEqual(
      [...breakers].map(each => Number.parseFloat(each)).sort((a, b) => a - b),
    )
  })

  test('the earth is green, or green and yellow, and of the second circuit too', () => {
    expect(usualFeedColour('US', 'second-earth')).toBe('green')
    expect(usualFeedColour('EU', 'earth')).toBe('green-yellow')
    expect(usualFeedColour('EU', 'neutral')).toBe('blue')
  })
})
