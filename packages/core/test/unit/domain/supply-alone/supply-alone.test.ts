import { describe, expect, test } from 'vitest'
import {
  endPairs,
  factorsOf,
  LOAD_OFF,
  ohmsOf,
  placeName,
  solveSupply,
  supplyWith,
} from '../../../../src/domain/wiring/supply-alone.ts'
import { solveNetwork } from '../../../../src/engines/circuit/solve-network.ts'
import { checkPhysics } from '../../../support/check-physics.ts'
import { demoIds, demoTub } from '../../../support/demo.ts'
import { aloneOf, load, siteOf, size, stiff } from './supply-site.ts'

const HEATER = load('heater', ['leg1', 'leg2'], 240, 16.7)
const CIRCULATION = load('circulation', ['leg1', 'neutral'], 120, 1.2, 0.8)

describe('the supply alone', () => {
  test.each(demoIds('tubs'))(
    'of %s obeys physics, and every conductor comes from the source',
    id => {
      const alone = aloneOf(siteOf(id))
      expect(alone.compiled.route).toBe('star-mesh')
      checkPhysics(alone.network, solveNetwork(alone.compiled), new Set())
      for (const [name, steps] of alone.runs) {
        expect(steps[0]?.place.kind, name).toBe('source')
        expect(steps.at(-1)?.place.kind, name).toBe('cable')
      }
    },
  )

  test('names what each conductor passes through, from the source to the tub', () => {
    const alone = aloneOf(siteOf('large-60'))
    const told = (name: 'leg2' | 'neutral' | 'earth') =>
      alone.runs.get(name)?.map(each => placeName(each.place))
    expect(told('leg2')).toEqual(['source:gf', 'gf.P2', 'cable:run', 'disconnect.S2', 'cable:last'])
    expect(told('neutral')).toEqual(['source:gf', 'gf.tail', 'gf.PN', 'cable:run', 'cable:last'])
    expect(told('earth')).toEqual(['source:gf', 'cable:run', 'cable:last'])
    expect(alone.conductors.get('run.leg1')).toBe('cable:run.leg1')
    expect([...alone.ends]).toEqual([
      ['leg1', 'box:leg1'],
      ['leg2', 'box:leg2'],
      ['neutral', 'box:neutral'],
      ['earth', 'box:earth'],
    ])
  })

  test('the six pairs are in the order of measuring; both earths of a split tub are one', () => {
    const pairs = (id: string) => endPairs(aloneOf(siteOf(id)).ends).map(each => each.join(' '))
    expect(pairs('everyday-240-plain')).toEqual([
      'leg1 leg2',
      'leg1 neutral',
      'leg1 earth',
      'leg2 neutral',
      'leg2 earth',
      'neutral earth',
    ])
    expect(pairs('split-two-legs').some(each => each.includes('second-earth'))).toBe(false)
    expect(pairs('split-two-legs')).toContain('leg1 second-leg1')
  })

  test('a line of a source keeps its impedance though a part of it may change', () => {
    const alone = aloneOf(siteOf('long-feeder-230', [load('heater', ['leg1', 'neutral'], 230, 20)]))
    const solved = solveSupply(alone)
    const steps = [...(alone.runs.get('leg1') ?? []), ...(alone.runs.get('neutral') ?? [])]
    const run = steps.reduce((sum, each) => sum + ohmsOf(alone, each.element), 0)
    const drop = 230 - size(solved.between('leg1', 'neutral'))
    // A hundredth of the line's own ohms stays with its EMF.
    expect(drop / solved.amps('heater')).toBeCloseTo(run, 1)
    expect(drop / solved.amps('heater')).toBeGreaterThan(run)
  })

  test('a load draws what its plate says, and nothing while it is off', () => {
    const alone = aloneOf(siteOf(stiff('everyday-240-circulation'), [HEATER, CIRCULATION]))
    expect(solveSupply(alone).amps('heater')).toBeCloseTo(16.7, 1)
    expect(solveSupply(alone).amps('circulation')).toBeCloseTo(1.2, 3)
    const off = supplyWith(alone, factorsOf(alone, { loads: new Map([['heater', LOAD_OFF]]) }))
    expect(solveSupply(off).amps('heater')).toBeLessThan(1e-6)
  })

  test('a meter of 10 MΩ moves what hangs on insulation, and nothing else that it can show', () => {
    const alone = aloneOf(siteOf('everyday-240-plain'))
    const open = supplyWith(alone, factorsOf(alone, { series: new Map([['cable:run.leg2', 1e9]]) }))
    const without = size(solveSupply(open).between('leg1', 'leg2'))
    const metered = size(solveSupply(open, { meter: ['leg1', 'leg2'] }).between('leg1', 'leg2'))
    expect(without - metered).toBeGreaterThan(20)
    const sound = size(solveSupply(alone).between('leg1', 'leg2'))
    const read = size(solveSupply(alone, { meter: ['leg1', 'leg2'] }).between('leg1', 'leg2'))
    expect(Math.abs(sound - read)).toBeLessThan(1e-4)
    // The meter is off again.
    expect(size(solveSupply(open).between('leg1', 'leg2'))).toBeCloseTo(without, 9)
  })

  test('ends exchanged at the tub exchange what is read there', () => {
    const site = siteOf('garden-230')
    const turned = solveSupply(aloneOf({ ...site, exchanged: ['leg1', 'neutral'] }))
    expect(size(turned.between('leg1', 'earth'))).toBeLessThan(1)
    expect(size(turned.between('neutral', 'earth'))).toBeCloseTo(230, 0)
    expect(size(turned.between('leg1', 'neutral'))).toBeCloseTo(230, 0)
  })

  test('more than what the sum of a ground-fault device says is not read from it', () => {
    const loads = [CIRCULATION]
    const site = siteOf('everyday-240-circulation', loads)
    const watch = (alone: ReturnType<typeof aloneOf>) => {
      const [device] = alone.groundFaults
      if (!device) throw new Error('no ground-fault device')
      return solveSupply(alone).watched(device)
    }
    const sound = watch(aloneOf(site))
    expect(sound.amps).toBeLessThan(1e-4)
    expect(sound.isAwake).toBe(true)
    const swapped = watch(aloneOf({ ...site, exchanged: ['neutral', 'earth'] }))
    expect(swapped.amps).toBeGreaterThan(1)
    const alone = aloneOf(site)
    const blind = supplyWith(alone, factorsOf(alone, { series: new Map([['tail:gf.tail', 1e9]]) }))
    expect(watch(blind).isAwake).toBe(false)
  })
})

describe('what is printed elsewhere', () => {
  const neutralAmps = (id: string, loads: Parameters<typeof siteOf>[1]): number => {
    const alone = aloneOf(siteOf(stiff(id), loads))
    const last = alone.runs.get('neutral')?.at(-1)?.element ?? ''
    return size(solveSupply(alone).current(last))
  }

  test('10, 9 and 8 A at power factors 1, 0.9 and 0.8 on three phases leave 4.55 A', () => {
    const amps = neutralAmps('three-phase-400', [
      load('a', ['leg1', 'neutral'], 230, 10, 1),
      load('b', ['leg2', 'neutral'], 230, 9, 0.9),
      load('c', ['leg3', 'neutral'], 230, 8, 0.8),
    ])
    // Half a printed unit, and as much for poles of 2 mΩ.
    expect(Math.abs(amps - 4.55)).toBeLessThan(0.01)
  })

  test('15 A against 10 A at 0.8 in split phase leave 9.22 A, not 5', () => {
    const amps = neutralAmps('everyday-240-plain', [
      load('a', ['leg1', 'neutral'], 120, 15, 1),
      load('b', ['leg2', 'neutral'], 120, 10, 0.8),
    ])
    expect(amps).toBeCloseTo(9.22, 1)
  })

  test('12 and 8 A on two legs of a wye leave 10.58 A, more than either difference', () => {
    const amps = neutralAmps('wye-208', [
      load('a', ['leg1', 'neutral'], 120, 12),
      load('b', ['leg2', 'neutral'], 120, 8),
    ])
    expect(amps).toBeCloseTo(10.58, 1)
  })

  test('100 ft of 10 AWG at 30 A raise a sound neutral by 3.7 V', () => {
    const survey = demoTub('everyday-240-plain')
    const size10 = { mm2: 5.26, text: '10 AWG' }
    const hundredFeet = {
      ...survey,
      supply: {
        ...survey.supply,
        cables: survey.supply.cables.map(each => ({
          ...each,
          length: { si: 30.48 as never, text: '100 ft' },
          conductors: each.conductors.map(one => ({ ...one, size: size10 })),
        })),
      },
    }
    const alone = aloneOf(siteOf(hundredFeet, [load('all', ['leg1', 'neutral'], 120, 33)]))
    const solved = solveSupply(alone)
    const rise = ohmsOf(alone, 'cable:run.neutral') * solved.amps('all')
    // Printed 1.24 Ω a thousand feet is 2 % above solid copper: stranding.
    expect((rise / solved.amps('all')) * 30).toBeCloseTo(3.7, 0)
    expect(Math.abs((rise / solved.amps('all')) * 30 - 0.1 * 1.24 * 30)).toBeLessThan(0.1)
    expect(size(solved.between('neutral', 'earth'))).toBeGreaterThan(rise)
  })

  test.each([
    [1500, 60, 9.2, 230.8],
    [100, 200, 160, 80],
  ])('%s W and %s W with their neutral open: %s V and %s V', (first, second, one, other) => {
    const alone = aloneOf(
      siteOf(stiff('everyday-240-plain'), [
        load('first', ['leg1', 'neutral'], 120, first / 120),
        load('second', ['leg2', 'neutral'], 120, second / 120),
      ]),
    )
    const open = supplyWith(
      alone,
      factorsOf(alone, { series: new Map([['cable:run.neutral', 1e9]]) }),
    )
    const solved = solveSupply(open)
    expect(size(solved.between('leg1', 'neutral'))).toBeCloseTo(one, 1)
    expect(size(solved.between('leg2', 'neutral'))).toBeCloseTo(other, 1)
  })
})

describe('how fast', () => {
  test('more than 2,000 candidate faults a second are valued and solved', () => {
    const alone = aloneOf(siteOf('large-60', [HEATER, CIRCULATION]))
    const loads = new Map([['heater', 1.1]])
    const solveMany = (count: number): number => {
      let sum = 0
      for (let index = 0; index < count; index++) {
        const series = new Map([['cable:run.neutral', 0.01 * (index + 1)]])
        const faulty = supplyWith(alone, factorsOf(alone, { series, loads }))
        sum += solveSupply(faulty, { meter: ['leg1', 'neutral'] }).between('leg1', 'neutral').re
      }
      return sum
    }
    solveMany(2000)
    const start = performance.now()
    solveMany(10_000)
    const rate = 10_000 / ((performance.now() - start) / 1000)
    console.log(`${Math.round(rate)} faults valued and solved a second, one meter each`)
    expect(rate).toBeGreaterThan(2000)
  })
})
