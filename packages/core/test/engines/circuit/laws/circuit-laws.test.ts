import fc from 'fast-check'
import { assert, test } from 'vitest'
import { add, complex, magnitude, scale, ZERO } from '../../../../src/base/complex.ts'
import { compileNetwork } from '../../../../src/engines/circuit/compile-network.ts'
import type { Element, Network } from '../../../../src/engines/circuit/network.ts'
import { nodesOf, pairsOf } from '../../../../src/engines/circuit/network.ts'
import { networks } from '../support/arbitrary-network.ts'
import { distance, largestDistance, scaleOf, solved } from '../support/solve.ts'

// Fixed, so that two runs test the same; fast-check prints it with the counterexample.
const SEED = 20_260
const RUNS = 300
/** Rounding of some dozens of steps, as a share of the largest voltage. */
const CLOSE = 1e-12

const law = (name: string, holds: (network: Network, extra: number) => void): void =>
  test(name, () => {
    fc.assert(fc.property(networks, fc.integer({ min: 1, max: 1000 }), holds), {
      seed: SEED,
      numRuns: RUNS,
    })
  })

const withElements = (network: Network, change: (element: Element) => Element): Network => ({
  ...network,
  elements: network.elements.map(change),
})

/** The network with only one of its sources alive. */
const onlySource = (network: Network, id: string): Network =>
  withElements(network, each =>
    each.kind === 'source' && each.id !== id ? { ...each, volts: ZERO } : each,
  )

const sourcesOf = (network: Network) => network.elements.filter(each => each.kind === 'source')

law('no node makes current and the powers sum to zero', network => {
  const solution = solved(network)
  assert.isAtMost(solution.powerBalance, 1e-6)
  assert.isAtMost(solution.errorBound, CLOSE * 10 * scaleOf(network, solution))
})

law('superposition: each source alone, added up', network => {
  const together = solved(network)
  const alone = sourcesOf(network).map(({ id }) => solved(onlySource(network, id)))
  const largest = alone.reduce((sum, each) => sum + scaleOf(network, each), 0)
  for (const node of nodesOf(network)) {
    const sum = alone.map(each => each.volts(node)).reduce(add, ZERO)
    assert.isAtMost(distance(sum, together.volts(node)), CLOSE * largest, node)
  }
})

law('reciprocity: a volt here drives there what a volt there drives here', network => {
  const [one, other] = sourcesOf(network)
  if (!one || !other) return
  const driven = (id: string) =>
    withElements(onlySource(network, id), each =>
      each.id === id && each.kind === 'source' ? { ...each, volts: complex(1) } : each,
    )
  const there = solved(driven(one.id)).current(other.id)
  const here = solved(driven(other.id)).current(one.id)
  const rounding = CLOSE * (1 / magnitude(one.ohms) + 1 / magnitude(other.ohms))
  assert.isAtMost(distance(there, here), rounding)
})

law('names of nodes do not matter, to the last bit', network => {
  const rename = (node: string): string => `${node.split('').reverse().join('')}-renamed`
  const renamePair = ([a, b]: readonly [string, string]) => [rename(a), rename(b)] as const
  const renamed = {
    ...withElements(network, each =>
      each.kind === 'transformer'
        ? {
            ...each,
            primary: renamePair(each.primary),
            secondary: renamePair(each.secondary),
          }
        : { ...each, between: renamePair(each.between) },
    ),
    reference: rename(network.reference),
  }
  assert.strictEqual(largestDistance(network, solved(network), solved(renamed), rename), 0)
})

law('the order of the elements does not matter', (network, extra) => {
  const at = extra % network.elements.length
  const elements = [...network.elements.slice(at), ...network.elements.slice(0, at)].reverse()
  const [a, b] = [solved(network), solved({ ...network, elements })]
  assert.isAtMost(largestDistance(network, a, b), CLOSE * scaleOf(network, a))
})

law('turning an element round turns its current and nothing else', (network, extra) => {
  const turned = network.elements[extra % network.elements.length] as Element
  if (turned.kind === 'transformer') return
  const [first, second] = turned.between
  const round = withElements(network, each => {
    if (each !== turned) return each
    const volts = each.kind === 'source' ? { volts: scale(each.volts, -1) } : {}
    return { ...turned, ...volts, between: [second, first] } as Element
  })
  const [a, b] = [solved(network), solved(round)]
  assert.isAtMost(largestDistance(network, a, b), CLOSE * scaleOf(network, a))
})

law('volts and amps scale with the sources', (network, factor) => {
  const scaled = withElements(network, each =>
    each.kind === 'source' ? { ...each, volts: scale(each.volts, factor) } : each,
  )
  const [a, b] = [solved(network), solved(scaled)]
  for (const node of nodesOf(network))
    assert.isAtMost(
      distance(scale(a.volts(node), factor), b.volts(node)),
      CLOSE * factor * scaleOf(network, a),
    )
})

law('volts do not change when every impedance scales alike', (network, factor) => {
  const scaled = withElements(network, each => scaleImpedance(each, factor))
  const [a, b] = [solved(network), solved(scaled)]
  assert.isAtMost(largestDistance(network, a, b), CLOSE * scaleOf(network, a))
})

function scaleImpedance(element: Element, factor: number): Element {
  switch (element.kind) {
    case 'impedance':
    case 'source':
      return { ...element, ohms: scale(element.ohms, factor) }
    case 'capacitor':
      return { ...element, farads: element.farads / factor }
    case 'contact':
      return {
        ...element,
        closedOhms: element.closedOhms * factor,
        openOhms: element.openOhms * factor,
      }
    case 'transformer':
      return {
        ...element,
        seriesOhms: scale(element.seriesOhms, factor),
        magnetisingOhms: scale(element.magnetisingOhms, factor),
      }
    case 'meter':
      return { ...element, ohms: element.ohms * factor }
  }
}

const CONTACT = { kind: 'contact', id: 'x', openOhms: 1e15, closedOhms: 1e-9 } as const

/** Two nodes of a network that differ, by number; none of a secondary, which it would tie twice. */
function twoNodes(network: Network, extra: number): readonly [string, string] {
  const nodes = nodesOf(network).filter(node => node.startsWith('n'))
  const a = nodes[extra % nodes.length] as string
  const b = nodes[(extra * 7 + 1) % nodes.length] as string
  return a === b ? [a, nodes[(extra * 7 + 2) % nodes.length] as string] : [a, b]
}

/** The network, which must have its reference, with a contact between two of its nodes. */
const withContact = (network: Network, extra: number, closed: boolean): Network => ({
  ...network,
  elements: [...network.elements, { ...CONTACT, between: twoNodes(network, extra), closed }],
})

law('a contact that opens wide enough is as good as none', (network, extra) => {
  const [a, b] = [solved(network), solved(withContact(network, extra, false))]
  // Through 1e15 Ω against at most some 1e9 Ω of insulation passes a millionth.
  assert.isAtMost(largestDistance(network, a, b), 1e-5 * scaleOf(network, a))
})

law('a contact that closes hard enough makes one node of two', (network, extra) => {
  const [kept, gone] = twoNodes(network, extra)
  const one = (node: string): string => (node === gone ? kept : node)
  const onePair = ([a, b]: readonly [string, string]) => [one(a), one(b)] as const
  const merged = {
    ...withElements(network, each =>
      each.kind === 'transformer'
        ? { ...each, primary: onePair(each.primary), secondary: onePair(each.secondary) }
        : { ...each, between: onePair(each.between) },
    ),
    reference: one(network.reference),
  }
  const a = solved(withContact(network, extra, true))
  // At 1e-9 Ω even the 1e4 A of two opposed sources drop no more than 1e-5 V.
  assert.isAtMost(largestDistance(network, a, solved(merged), one), 1e-6 * scaleOf(network, a))
})

law('a contact is nothing but the resistance of its state', network => {
  const resistors = withElements(network, each =>
    each.kind === 'contact'
      ? {
          kind: 'impedance',
          id: each.id,
          between: each.between,
          ohms: complex(each.closed ? each.closedOhms : each.openOhms),
        }
      : each,
  )
  const [a, b] = [solved(network), solved(resistors)]
  assert.isAtMost(largestDistance(network, a, b), CLOSE * scaleOf(network, a))
})

law('contact states given by name are the states that are solved', (network, extra) => {
  const contacts = network.elements.filter(each => each.kind === 'contact')
  const closed = new Set(contacts.filter((_, k) => (extra >> k) & 1).map(each => each.id))
  const set = withElements(network, each =>
    each.kind === 'contact' ? { ...each, closed: closed.has(each.id) } : each,
  )
  assert.strictEqual(largestDistance(network, solved(network, closed), solved(set)), 0)
})

law('a reflected transformer agrees with pivoted LU within the bounds both state', network => {
  const [a, b] = [solved(network), solved(network, undefined, { route: 'pivoted-lu' })]
  assert.strictEqual(b.route, 'pivoted-lu')
  assert.isAtMost(largestDistance(network, a, b), a.errorBound + b.errorBound)
})

law('every generated network is sound and takes the exact route', network => {
  const compiled = compileNetwork(network)
  assert(compiled.ok)
  assert.strictEqual(compiled.value.route, 'star-mesh')
  assert.isAtLeast(network.elements.flatMap(pairsOf).length, 2)
})
