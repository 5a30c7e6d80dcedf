import type { Complex } from '../../base/complex.ts'
import { complex, magnitude } from '../../base/complex.ts'
import type { Element, Network, NodeId, Pair, Transformer } from './network.ts'
import { nodesOf } from './network.ts'

/** A netlist, and what its names stand for. */
export interface SpiceNetlist {
  readonly text: string
  readonly map: {
    /** Our node by the netlist's; nodes inside an element are left out. */
    readonly nodes: Readonly<Record<string, NodeId>>
    /** Our element by the netlist's; one element may be several there. */
    readonly elements: Readonly<Record<string, string>>
  }
}

/** A line of the netlist: name, nodes, values. */
interface Card {
  readonly name: string
  readonly rest: readonly (string | number)[]
}

/** One element while its cards are written. */
interface Site {
  readonly number: number
  readonly omega: number
  readonly nodeOf: (node: NodeId) => string
  readonly closedContacts: ReadonlySet<string> | undefined
}

/**
 * Writes a network as a SPICE netlist with one AC analysis at its frequency.
 *
 * Names follow the order of the elements (R1, V2, …) and hold none of our ids, so any simulator
 * takes them; `map` leads back. R + jX becomes R with L, or with C for a negative X; a transformer
 * becomes controlled sources behind its impedances. The network should be free of structural
 * faults. Some simulators look for a DC operating point first and fail where only capacitors lead.
 *
 * @param closedContacts - as for `solveNetwork`
 */
export function writeSpiceNetlist(
  network: Network,
  closedContacts?: ReadonlySet<string>,
): SpiceNetlist {
  const nodes = nodesOf(network)
  const names = new Map(nodes.map((node, index) => [node, String(index)]))
  const cards = network.elements.map((element, index) =>
    cardsOf(element, {
      number: index + 1,
      omega: 2 * Math.PI * network.hertz,
      nodeOf: node => names.get(node) ?? node,
      closedContacts,
    }),
  )
  const lines = cards.flat().map(({ name, rest }) => [name, ...rest].join(' '))
  const sweep = `.ac lin 1 ${network.hertz} ${network.hertz}`
  return {
    text: `${[`* one frequency, ${network.hertz} Hz, RMS`, ...lines, sweep, '.end'].join('\n')}\n`,
    map: {
      nodes: Object.fromEntries(nodes.map((node, index) => [String(index), node])),
      elements: Object.fromEntries(
        cards.flatMap((of, index) =>
          of.map(({ name }) => [name, network.elements[index]?.id ?? '']),
        ),
      ),
    },
  }
}

function cardsOf(element: Element, site: Site): readonly Card[] {
  const { number } = site
  if (element.kind === 'transformer') return transformerCards(element, site)
  const ends = element.between.map(site.nodeOf)
  const [first, second] = [ends[0] ?? '', ends[1] ?? '']
  switch (element.kind) {
    case 'impedance':
      return impedanceCards(`${number}`, [first, second], element.ohms, site.omega)
    case 'capacitor':
      return [{ name: `C${number}`, rest: [first, second, element.farads] }]
    case 'contact': {
      const isClosed = site.closedContacts?.has(element.id) ?? element.closed
      const ohms = isClosed ? element.closedOhms : element.openOhms
      return impedanceCards(`${number}`, [first, second], complex(ohms), site.omega)
    }
    case 'source': {
      const inner = `${number}e`
      return [
        ...impedanceCards(`${number}`, [first, inner], element.ohms, site.omega),
        { name: `V${number}`, rest: [inner, second, 'DC', 0, 'AC', ...polar(element.volts)] },
      ]
    }
    case 'meter':
      return impedanceCards(`${number}`, [first, second], complex(element.ohms), site.omega)
  }
}

/** Magnitude and degrees: an angle leaves the four rules of arithmetic, but it is text only. */
const polar = (volts: Complex): readonly number[] => [
  magnitude(volts),
  (Math.atan2(volts.im, volts.re) * 180) / Math.PI,
]

function impedanceCards(
  number: string,
  [first, second]: Pair,
  { re, im }: Complex,
  omega: number,
): readonly Card[] {
  const inner = re > 0 && im !== 0 ? `${number}x` : undefined
  const resistor = { name: `R${number}`, rest: [first, inner ?? second, re] }
  const reactor =
    im > 0
      ? { name: `L${number}`, rest: [inner ?? first, second, im / omega] }
      : { name: `C${number}`, rest: [inner ?? first, second, -1 / (omega * im)] }
  return [...(re > 0 ? [resistor] : []), ...(im !== 0 ? [reactor] : [])]
}

/** Secondary: series impedance, ammeter, EMF of Vp/ratio. Primary: magnetising, and the load's share. */
function transformerCards(
  { primary, secondary, ratio, seriesOhms, magnetisingOhms }: Transformer,
  { number, omega, nodeOf }: Site,
): readonly Card[] {
  const [p1, p2, s1, s2] = [...primary, ...secondary].map(nodeOf) as [
    string,
    string,
    string,
    string,
  ]
  const [behind, inner] = [`${number}a`, `${number}e`]
  return [
    ...impedanceCards(`${number}m`, [p1, p2], magnetisingOhms, omega),
    ...impedanceCards(`${number}s`, [s1, behind], seriesOhms, omega),
    { name: `V${number}s`, rest: [behind, inner, 'DC', 0] },
    { name: `E${number}`, rest: [inner, s2, p1, p2, 1 / ratio] },
    { name: `F${number}`, rest: [p1, p2, `V${number}s`, -1 / ratio] },
  ]
}
