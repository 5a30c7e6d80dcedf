import { beforeAll, describe, expect, test } from 'vitest'
import type { FeedFunction } from '../../../../src/domain/board/board.ts'
import { reachedFrom } from '../../../../src/domain/wiring/reach.ts'
import {
  endPairs,
  factorsOf,
  pairsWithin,
  placeName,
  solveSupply,
  supplyWith,
} from '../../../../src/domain/wiring/supply-alone.ts'
import type { SupplyFault } from '../../../../src/domain/wiring/supply-faults.ts'
import {
  isPoor,
  placeOfFault,
  possibleFaults,
  seriesOf,
  siteWith,
} from '../../../../src/domain/wiring/supply-faults.ts'
import { compileNetwork } from '../../../../src/engines/circuit/compile-network.ts'
import { solveNetwork } from '../../../../src/engines/circuit/solve-network.ts'
import { writeSpiceNetlist } from '../../../../src/engines/circuit/spice.ts'
import type { Simulator } from '../../../engines/circuit/support/simulator.ts'
import { startSimulator } from '../../../engines/circuit/support/simulator.ts'
import { aloneOf, load, multiplied, siteOf, size } from './supply-site.ts'

const SITES = [
  siteOf('everyday-240-circulation', [
    load('heater', ['leg1', 'leg2'], 240, 16.7),
    load('circulation', ['leg1', 'neutral'], 120, 1.2, 0.8),
    load('control', ['leg2', 'neutral'], 120, 0.3, 0.9),
  ]),
  siteOf('wye-208', [
    load('heater', ['leg1', 'leg2'], 240, 16.7),
    load('audio', ['leg1', 'neutral'], 120, 0.3, 1),
  ]),
  siteOf('garden-230', [
    load('heater', ['leg1', 'neutral'], 230, 13),
    load('circulation', ['leg1', 'neutral'], 240, 0.5, 0.8),
  ]),
  siteOf('three-phase-400', [
    load('heater', ['leg1', 'neutral'], 230, 13),
    load('blower', ['leg3', 'neutral'], 240, 3.2, 0.95),
  ]),
  siteOf('split-two-legs', [
    load('heater', ['second-leg1', 'second-neutral'], 120, 8.3),
    load('control', ['leg1', 'neutral'], 120, 0.5, 0.9),
  ]),
] as const

const atOhms = (fault: SupplyFault): SupplyFault => (isPoor(fault) ? { ...fault, ohms: 3 } : fault)

/** A site with one fault, solved by the diagnosis's own route, and its network written out. */
function faulty(site: (typeof SITES)[number], fault: SupplyFault) {
  const alone = aloneOf(siteWith(site, fault))
  const factors = factorsOf(alone, { series: seriesOf(alone, fault) })
  return { alone: supplyWith(alone, factors), factors, network: multiplied(alone.network, factors) }
}

/** Nodes that more than insulation ties to the star point: a general solver is right there. */
const tiedNodes = ({ alone, factors }: ReturnType<typeof faulty>) =>
  [...alone.ends].filter(([, node]) =>
    reachedFrom('earth', pairsWithin(alone, factors, 20_000)).has(node),
  )

const VOLTS: Readonly<Record<string, readonly [string, number][]>> = {
  sound: [
    ['leg1 leg2', 240],
    ['leg1 neutral', 120],
    ['neutral earth', 0],
  ],
  wye: [
    ['leg1 leg2', 207.8],
    ['leg1 neutral', 120],
    ['leg2 neutral', 120],
  ],
  'high-leg leg2': [
    ['leg1 leg2', 240],
    ['leg1 neutral', 120],
    ['leg2 neutral', 207.8],
  ],
  'high-leg leg1': [
    ['leg1 leg2', 240],
    ['leg1 neutral', 207.8],
    ['leg2 neutral', 120],
  ],
  'same-leg': [
    ['leg1 leg2', 0],
    ['leg1 neutral', 120],
    ['leg2 neutral', 120],
  ],
  'off gf': [
    ['leg1 earth', 0],
    ['leg2 earth', 0],
  ],
}

describe('what a fault makes of an unloaded supply', () => {
  const site = siteOf('everyday-240-plain')
  const all = possibleFaults(aloneOf(site), 0.01)
  const named = (name: string) =>
    all.find(
      each =>
        [each.kind, 'line' in each ? each.line : 'device' in each ? each.device : '']
          .join(' ')
          .trim() === name,
    )

  test.each(Object.entries(VOLTS))('%s', (name, expected) => {
    const fault = named(name)
    if (!fault) throw new Error(`no ${name}`)
    const solved = solveSupply(faulty(site as never, fault).alone)
    for (const [pair, volts] of expected) {
      const [a, b] = pair.split(' ') as [FeedFunction, FeedFunction]
      expect(size(solved.between(a, b)), pair).toBeCloseTo(volts, volts > 0 ? 0 : -1)
    }
  })

  test('a leg lost under the heater comes back through it', () => {
    const [heated] = SITES
    const open = possibleFaults(aloneOf(heated), 0.01).find(
      each => each.kind === 'leg-open' && each.conductor === 'leg2',
    )
    if (!open) throw new Error('no leg to open')
    const alone = faulty(heated, open).alone
    expect(size(solveSupply(alone).between('leg2', 'neutral'))).toBeGreaterThan(110)
    expect(size(solveSupply(alone).between('leg1', 'leg2'))).toBeLessThan(10)
  })
})

describe('every possible fault', () => {
  test('has each place of each conductor', () => {
    const faults = possibleFaults(aloneOf(siteOf('large-60')), 0.01)
    const places = faults.flatMap(each => {
      const place = each.kind === 'neutral-poor' ? placeOfFault(each) : undefined
      return place ? [placeName(place)] : []
    })
    expect(places).toEqual(['source:gf', 'gf.tail', 'gf.PN', 'cable:run', 'cable:last'])
  })

  test('is one that the supply can have', () => {
    const kinds = (id: string) =>
      new Set<string>(possibleFaults(aloneOf(siteOf(id)), 0.01).map(each => each.kind))
    expect(kinds('cord-120-15').has('same-leg')).toBe(false)
    expect(kinds('cord-120-15').has('line-neutral-swapped')).toBe(true)
    expect(kinds('three-wire-240').has('neutral-open')).toBe(false)
    expect(kinds('two-lives-230').has('wye')).toBe(false)
    expect(kinds('wye-208').has('wye')).toBe(false)
    expect(kinds('wye-208').has('split-phase')).toBe(true)
    expect(kinds('high-leg').has('sound')).toBe(false)
    expect(kinds('high-leg').has('split-phase')).toBe(true)
    expect(kinds('three-phase-400').has('leg-open')).toBe(true)
  })

  test('solves as dense LU does, to 1e-9 of the source', () => {
    let [worst, compared] = [0, 0]
    for (const site of SITES)
      for (const each of possibleFaults(aloneOf(site), 0.01)) {
        const made = faulty(site, atOhms(each))
        const solved = solveSupply(made.alone)
        const compiled = compileNetwork(made.network, { route: 'pivoted-lu' })
        if (!compiled.ok) throw new Error(JSON.stringify(compiled.failure))
        const dense = solveNetwork(compiled.value)
        for (const [name, node] of tiedNodes(made)) {
          const [a, b] = [solved.at(name), dense.volts(node)]
          worst = Math.max(worst, Math.hypot(a.re - b.re, a.im - b.im) / 120)
          compared++
        }
      }
    console.log(`dense LU: ${compared} voltages, worst ${worst.toExponential(1)} of the leg`)
    expect(compared).toBeGreaterThan(500)
    expect(worst).toBeLessThan(1e-9)
  })
})

describe('in an independent simulator', () => {
  let simulator: Simulator
  beforeAll(async () => {
    simulator = await startSimulator()
  })

  test('a fault of each kind on each supply', async () => {
    let [worst, compared, faults] = [0, 0, 0]
    for (const site of SITES) {
      const seen = new Set<string>()
      for (const each of possibleFaults(aloneOf(site), 0.01)) {
        if (seen.has(each.kind)) continue
        seen.add(each.kind)
        const made = faulty(site, atOhms(each))
        const pair = endPairs(made.alone.ends)[0]
        if (!pair) throw new Error('no pair')
        const solved = solveSupply(made.alone, { meter: pair })
        const meter = new Set([`meter:${pair.join('|')}`])
        const theirs = await simulator.solve(writeSpiceNetlist(made.network, meter))
        for (const [name, node] of tiedNodes(made)) {
          const [a, b] = [solved.at(name), theirs.get(node)]
          if (!b) throw new Error(`the simulator has no ${node}`)
          worst = Math.max(worst, Math.hypot(a.re - b.re, a.im - b.im) / 120)
          compared++
        }
        faults++
      }
    }
    console.log(
      `simulator: ${faults} faults, ${compared} voltages, worst ${worst.toExponential(1)} of the leg`,
    )
    expect(compared).toBeGreaterThan(100)
    expect(worst).toBeLessThan(1e-9)
  })
})
