import fc from 'fast-check'
import { complex } from '../../../../src/base/complex.ts'
import type { Element, Network, Pair } from '../../../../src/engines/circuit/network.ts'

/** An element before it has a name and a place. */
type Part = (id: string, between: Pair) => Element

/** A value spread over decades, with few digits so that a counterexample is easy to read. */
const decades = (lowest: number, highest: number) =>
  fc
    .tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: lowest, max: highest }))
    .map(([digit, exponent]) => Number(`${digit}e${exponent}`))

const impedance = fc.tuple(decades(-1, 3), fc.constantFrom(0, 0, 0.3, 1)).map(
  ([ohms, share]): Part =>
    (id, between) => ({
      kind: 'impedance',
      id,
      between,
      ohms: complex(ohms, ohms * share),
    }),
)

const insulation = decades(7, 8).map(
  (ohms): Part =>
    (id, between) => ({ kind: 'impedance', id, between, ohms: complex(ohms) }),
)

const capacitor = decades(-9, -5).map(
  (farads): Part =>
    (id, between) => ({ kind: 'capacitor', id, between, farads }),
)

const contact = fc.tuple(decades(-3, -3), decades(8, 9), fc.boolean()).map(
  ([closedOhms, openOhms, closed]): Part =>
    (id, between) => ({ kind: 'contact', id, between, closedOhms, openOhms, closed }),
)

const meter = fc.constantFrom(3e3, 1e7).map(
  (ohms): Part =>
    (id, between) => ({ kind: 'meter', id, between, ohms }),
)

const source = fc.tuple(fc.constantFrom(120, -120, 12), decades(-2, 0)).map(
  ([volts, ohms]): Part =>
    (id, between) => ({
      kind: 'source',
      id,
      between,
      volts: complex(volts, volts / 4),
      ohms: complex(ohms),
    }),
)

const passive = fc.oneof(impedance, impedance, insulation, capacitor, contact, meter)

const transformer = fc
  .tuple(fc.constantFrom(2, 10, 0.5), decades(-1, 0), decades(3, 4))
  .map(([ratio, series, magnetising]) => ({ ratio, series, magnetising }))

/** Parts of a tree over the nodes, parts across it, and secondaries on legs of their own. */
const parts = fc.record({
  sources: fc.array(fc.tuple(source, fc.nat(20), fc.nat(20)), { minLength: 1, maxLength: 3 }),
  tree: fc.array(fc.tuple(passive, fc.nat(20)), { minLength: 1, maxLength: 10 }),
  across: fc.array(fc.tuple(passive, fc.nat(20), fc.nat(20)), { maxLength: 8 }),
  secondaries: fc.array(
    fc.tuple(transformer, fc.nat(20), fc.nat(20), impedance, insulation, fc.nat(20)),
    { maxLength: 2 },
  ),
  hertz: fc.constantFrom(50, 60),
})

/**
 * Connected networks of up to 17 nodes with at least one source, contacts in either state, and up
 * to two isolated transformers; values span twelve decades.
 */
export const networks: fc.Arbitrary<Network> = parts.map(
  ({ sources, tree, across, secondaries, hertz }) => {
    const count = tree.length + 1
    const elements: Element[] = []
    const name = (): string => `e${elements.length}`
    const join = (part: Part, a: number, b: number): void => {
      const [first, second] = [a % count, b % count]
      const other = first === second ? (first + 1) % count : second
      elements.push(part(name(), [`n${first}`, `n${other}`]))
    }
    tree.forEach(([part, from], index) => {
      elements.push(part(name(), [`n${from % (index + 1)}`, `n${index + 1}`]))
    })
    for (const [part, a, b] of [...sources, ...across]) join(part, a, b)
    secondaries.forEach(([{ ratio, series, magnetising }, a, b, load, tie, tiedTo], index) => {
      const secondary: Pair = [`s${index}a`, `s${index}b`]
      const first = a % count
      const second = b % count === first ? (first + 1) % count : b % count
      elements.push({
        kind: 'transformer',
        id: name(),
        primary: [`n${first}`, `n${second}`],
        secondary,
        ratio,
        seriesOhms: complex(series),
        magnetisingOhms: complex(1, magnetising),
      })
      elements.push(load(name(), secondary))
      elements.push(tie(name(), [secondary[1], `n${tiedTo % count}`]))
    })
    return { hertz, reference: 'n0', elements }
  },
)
