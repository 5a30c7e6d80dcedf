import type { Complex } from '../../base/complex.ts'
import { complex, divide, ZERO } from '../../base/complex.ts'
import type { Element, Network, NodeId, Transformer } from './network.ts'

/**
 * Every element as numbers in flat arrays, in the order of the network; complex numbers interleaved.
 *
 * A transformer is its magnetising branch here; what its windings do stands in `windings`.
 */
export interface BranchTable {
  /** First and second node of each element; of a transformer, its primary's. */
  readonly ends: Int32Array
  /** Admittance of each element [S]; 0 for a contact, whose state decides. */
  readonly admittances: Float64Array
  /** EMF of each element, + to its first node [V]. */
  readonly emfs: Float64Array
  /** Per element: which contact it is, or −1. */
  readonly contactOf: Int32Array
  /** Per contact [S]. */
  readonly closedSiemens: Float64Array
  readonly openSiemens: Float64Array
  readonly windings: readonly WindingPair[]
}

/** The two windings of a transformer: an ideal ratio behind a series admittance. */
export interface WindingPair {
  readonly element: number
  readonly primary: readonly [number, number]
  readonly secondary: readonly [number, number]
  readonly ratio: number
  /** On the secondary [S]. */
  readonly series: Complex
}

const admittanceOf = (ohms: Complex): Complex => divide(complex(1), ohms)

/** Admittance of an element that is no contact; of a transformer, its magnetising branch [S]. */
function fixedAdmittance(element: Element, hertz: number): Complex {
  switch (element.kind) {
    case 'impedance':
    case 'source':
      return admittanceOf(element.ohms)
    case 'capacitor':
      return complex(0, 2 * Math.PI * hertz * element.farads)
    case 'contact':
      return ZERO
    case 'transformer':
      return admittanceOf(element.magnetisingOhms)
    case 'meter':
      return complex(1 / element.ohms)
  }
}

function interleaved(values: readonly Complex[]): Float64Array {
  const numbers = new Float64Array(2 * values.length)
  values.forEach(({ re, im }, index) => {
    numbers[2 * index] = re
    numbers[2 * index + 1] = im
  })
  return numbers
}

function firstPairs(elements: readonly Element[], indexOf: (node: NodeId) => number): Int32Array {
  const numbers = new Int32Array(2 * elements.length)
  elements.forEach((element, index) => {
    const [first, second] = element.kind === 'transformer' ? element.primary : element.between
    numbers[2 * index] = indexOf(first)
    numbers[2 * index + 1] = indexOf(second)
  })
  return numbers
}

/** Writes the network's elements down as numbers; the network must be free of structural faults. */
export function tabulateBranches(
  network: Network,
  nodeIndexes: ReadonlyMap<NodeId, number>,
): BranchTable {
  const { elements, hertz } = network
  const indexOf = (node: NodeId): number => nodeIndexes.get(node) as number
  const contacts = elements.filter(each => each.kind === 'contact')
  return {
    ends: firstPairs(elements, indexOf),
    admittances: interleaved(elements.map(each => fixedAdmittance(each, hertz))),
    emfs: interleaved(elements.map(each => (each.kind === 'source' ? each.volts : ZERO))),
    contactOf: contactNumbers(elements),
    closedSiemens: new Float64Array(contacts.map(each => 1 / each.closedOhms)),
    openSiemens: new Float64Array(contacts.map(each => 1 / each.openOhms)),
    windings: elements.flatMap((each, element) =>
      each.kind === 'transformer' ? [windingPair(each, element, indexOf)] : [],
    ),
  }
}

function contactNumbers(elements: readonly Element[]): Int32Array {
  const numbers = new Int32Array(elements.length).fill(-1)
  let count = 0
  elements.forEach(({ kind }, index) => {
    if (kind === 'contact') numbers[index] = count++
  })
  return numbers
}

const windingPair = (
  transformer: Transformer,
  element: number,
  indexOf: (node: NodeId) => number,
): WindingPair => ({
  element,
  primary: [indexOf(transformer.primary[0]), indexOf(transformer.primary[1])],
  secondary: [indexOf(transformer.secondary[0]), indexOf(transformer.secondary[1])],
  ratio: transformer.ratio,
  series: admittanceOf(transformer.seriesOhms),
})
