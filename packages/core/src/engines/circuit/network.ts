import type { Complex } from '../../base/complex.ts'

export type NodeId = string

/** Two terminals; where a sign matters the first one is the positive one. */
export type Pair = readonly [NodeId, NodeId]

/**
 * One part of a network. Impedances are R + jX at the network's frequency [Ω].
 *
 * - `impedance`: not zero, R not negative.
 * - `contact`: `closed` is only where it starts; a solve may set it otherwise. Open is a large
 *   finite resistance, so that opening a contact never changes the shape of the network.
 * - `source`: an EMF, + to the first terminal, in series with an impedance that is not zero.
 * - `transformer`: `ratio` is Vp/Vs at no load; `seriesOhms` is referred to the secondary;
 *   `magnetisingOhms` lies across the primary. First terminals have the same polarity.
 */
export type Element =
  | {
      readonly kind: 'impedance'
      readonly id: string
      readonly between: Pair
      readonly ohms: Complex
    }
  | {
      readonly kind: 'capacitor'
      readonly id: string
      readonly between: Pair
      readonly farads: number
    }
  | {
      readonly kind: 'contact'
      readonly id: string
      readonly between: Pair
      readonly closedOhms: number
      readonly openOhms: number
      readonly closed: boolean
    }
  | {
      readonly kind: 'source'
      readonly id: string
      readonly between: Pair
      readonly volts: Complex
      readonly ohms: Complex
    }
  | {
      readonly kind: 'transformer'
      readonly id: string
      readonly primary: Pair
      readonly secondary: Pair
      readonly ratio: number
      readonly seriesOhms: Complex
      readonly magnetisingOhms: Complex
    }
  | {
      readonly kind: 'meter'
      readonly id: string
      readonly between: Pair
      readonly ohms: number
    }

export type Transformer = Extract<Element, { kind: 'transformer' }>
export type TwoTerminal = Exclude<Element, Transformer>

/** Parts between nodes at one frequency; the reference node is at 0 V by definition. */
export interface Network {
  readonly hertz: number
  readonly reference: NodeId
  readonly elements: readonly Element[]
}

/** The terminal pairs of an element: one, or primary and secondary. */
export const pairsOf = (element: Element): readonly Pair[] =>
  element.kind === 'transformer' ? [element.primary, element.secondary] : [element.between]

/** Every node, the reference first, then in the order in which the elements name them. */
export function nodesOf(network: Network): readonly NodeId[] {
  const nodes = new Set([network.reference])
  for (const element of network.elements)
    for (const [first, second] of pairsOf(element)) nodes.add(first).add(second)
  return [...nodes]
}
