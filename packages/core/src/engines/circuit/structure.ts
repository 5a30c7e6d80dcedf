import type { Complex } from '../../base/complex.ts'
import { magnitude } from '../../base/complex.ts'
import type { Element, Network, NodeId } from './network.ts'
import { nodesOf, pairsOf } from './network.ts'

/** What the shape or a value of a network forbids or makes doubtful. */
export type StructuralFault =
  | { readonly reason: 'bad-frequency'; readonly hertz: number }
  | { readonly reason: 'bad-value'; readonly element: string; readonly what: string }
  | { readonly reason: 'duplicate-element'; readonly element: string }
  | { readonly reason: 'source-loop'; readonly elements: readonly string[] }
  | { readonly reason: 'island-without-reference'; readonly nodes: readonly NodeId[] }
  | { readonly reason: 'dangling-node'; readonly node: NodeId; readonly element: string }

/** Least and greatest impedance that means something here [Ω]: µΩ joints to perfect insulation. */
export const OHMS_MIN = 1e-9
export const OHMS_MAX = 1e15

/** Below this a source counts as ideal, and a loop of such sources has no answer [Ω]. */
export const IDEAL_SOURCE_OHMS = 1e-6

/**
 * Names what is wrong with a network before any equation is solved.
 *
 * A dangling node is reported but solves well (a lead that hangs in the air): the caller judges it.
 * Open contacts join, for they have a finite resistance; the two sides of a transformer do not.
 *
 * @returns in a fixed order: frequency, values, duplicates, loops, islands, dangling nodes; each
 *   in the order of the elements
 */
export function findStructuralFaults(network: Network): readonly StructuralFault[] {
  const links = linksOf(network.elements)
  return [
    ...badFrequency(network.hertz),
    ...network.elements.flatMap(badValues),
    ...duplicates(network.elements),
    ...sourceLoops(network.elements),
    ...islands(network, links),
    ...danglingNodes(network, links),
  ]
}

const badFrequency = (hertz: number): readonly StructuralFault[] =>
  Number.isFinite(hertz) && hertz > 0 ? [] : [{ reason: 'bad-frequency', hertz }]

const isImpedance = (ohms: Complex): boolean => {
  const size = magnitude(ohms)
  return ohms.re >= 0 && size >= OHMS_MIN && size <= OHMS_MAX
}

const isResistance = (ohms: number): boolean => ohms >= OHMS_MIN && ohms <= OHMS_MAX
const isFinitePhasor = (value: Complex): boolean =>
  Number.isFinite(value.re) && Number.isFinite(value.im)
const isPositive = (value: number): boolean => Number.isFinite(value) && value > 0

/** Each checked value of an element with its verdict. */
function checksOf(element: Element): Readonly<Record<string, boolean>> {
  switch (element.kind) {
    case 'impedance':
      return { ohms: isImpedance(element.ohms) }
    case 'capacitor':
      return { farads: isPositive(element.farads) }
    case 'contact':
      return {
        closedOhms: isResistance(element.closedOhms),
        openOhms: isResistance(element.openOhms) && element.openOhms >= element.closedOhms,
      }
    case 'source':
      return { volts: isFinitePhasor(element.volts), ohms: isImpedance(element.ohms) }
    case 'transformer':
      return {
        ratio: isPositive(element.ratio),
        seriesOhms: isImpedance(element.seriesOhms),
        magnetisingOhms: isImpedance(element.magnetisingOhms),
      }
    case 'meter':
      return { ohms: isResistance(element.ohms) }
  }
}

function badValues(element: Element): readonly StructuralFault[] {
  const checks = checksOf(element)
  const faults: StructuralFault[] = []
  for (const what in checks)
    if (!checks[what]) faults.push({ reason: 'bad-value', element: element.id, what })
  return faults
}

function duplicates(elements: readonly Element[]): readonly StructuralFault[] {
  const seen = new Set<string>()
  const twice = new Set<string>()
  for (const { id } of elements) (seen.has(id) ? twice : seen).add(id)
  return [...twice].map(element => ({ reason: 'duplicate-element', element }))
}

/** A link of a graph: an element, or one side of a transformer, seen from one of its nodes. */
interface Link {
  readonly to: NodeId
  readonly element: string
}

type Links = ReadonlyMap<NodeId, readonly Link[]>

function linksOf(elements: readonly Element[]): Links {
  const links = new Map<NodeId, Link[]>()
  const add = (from: NodeId, to: NodeId, element: string): void => {
    const known = links.get(from)
    if (known) known.push({ to, element })
    else links.set(from, [{ to, element }])
  }
  for (const element of elements)
    for (const [a, b] of pairsOf(element)) {
      add(a, b, element.id)
      add(b, a, element.id)
    }
  return links
}

/** Every node that can be reached, with the link by which it was reached first. */
function reachableFrom(start: NodeId, links: Links): Map<NodeId, Link | undefined> {
  const reached = new Map<NodeId, Link | undefined>([[start, undefined]])
  for (const from of reached.keys())
    for (const { to, element } of links.get(from) ?? [])
      if (!reached.has(to)) reached.set(to, { to: from, element })
  return reached
}

const isIdealSource = (element: Element): boolean =>
  element.kind === 'source' && magnitude(element.ohms) < IDEAL_SOURCE_OHMS

/** Each ideal source that closes a loop of earlier ideal sources, with that loop. */
function sourceLoops(elements: readonly Element[]): readonly StructuralFault[] {
  const ideal = elements.filter(isIdealSource)
  return ideal.flatMap((source, index): StructuralFault[] => {
    const [a, b] = pairsOf(source)[0] ?? ['', '']
    const reached = reachableFrom(a, linksOf(ideal.slice(0, index)))
    if (!reached.has(b)) return []
    return [{ reason: 'source-loop', elements: [...pathBack(b, reached), source.id] }]
  })
}

function pathBack(end: NodeId, reached: Map<NodeId, Link | undefined>): readonly string[] {
  const link = reached.get(end)
  return link ? [...pathBack(link.to, reached), link.element] : []
}

function islands(network: Network, links: Links): readonly StructuralFault[] {
  const seen = new Set(reachableFrom(network.reference, links).keys())
  return nodesOf(network).flatMap((node): StructuralFault[] => {
    if (seen.has(node)) return []
    const nodes = [...reachableFrom(node, links).keys()]
    for (const each of nodes) seen.add(each)
    return [{ reason: 'island-without-reference', nodes }]
  })
}

const danglingNodes = (network: Network, links: Links): readonly StructuralFault[] =>
  [...links].flatMap(([node, [only, second]]): StructuralFault[] => {
    if (!only || second || node === network.reference) return []
    return [{ reason: 'dangling-node', node, element: only.element }]
  })
