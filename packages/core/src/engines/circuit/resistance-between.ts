import type { Outcome } from '../../base/outcome.ts'
import { fail, ok } from '../../base/outcome.ts'
import { planElimination } from './elimination.ts'
import type { Element, Network, NodeId, Pair } from './network.ts'
import { nodesOf } from './network.ts'
import { meshWorkspace, solveMesh } from './star-mesh.ts'
import type { StructuralFault } from './structure.ts'
import { findStructuralFaults } from './structure.ts'

export interface ResistanceOptions {
  /** Ids of the contacts that are closed, all others open; undefined: as the network starts. */
  readonly closedContacts?: ReadonlySet<string> | undefined
  /** A source leaves its series resistance behind, or nothing (the supply is unplugged). */
  readonly sources?: 'resistance' | 'removed'
}

export type ResistanceFailure =
  | { readonly reason: 'unknown-node'; readonly node: NodeId }
  | { readonly reason: 'no-path'; readonly between: Pair }
  | { readonly reason: 'structure'; readonly faults: readonly StructuralFault[] }

/**
 * What an ideal ohmmeter reads between two nodes of a dead network.
 *
 * Only resistance is left: inductance counts as 0 Ω, a capacitor or a capacitive reactance as open.
 * A transformer's windings are the real parts of its magnetising and of its series impedance, and
 * nothing passes between them. Parts without a reference are welcome here.
 *
 * @returns [Ω], 0 where a path has no resistance at all; fails with 'no-path' when nothing joins
 *   the nodes, with 'unknown-node', or with 'structure' when an element's value means nothing
 */
export function resistanceBetween(
  network: Network,
  a: NodeId,
  b: NodeId,
  options: ResistanceOptions = {},
): Outcome<number, ResistanceFailure> {
  const nodes = nodesOf(network)
  const node = [a, b].find(each => !nodes.includes(each))
  if (node !== undefined) return fail({ reason: 'unknown-node', node })
  const faults = findStructuralFaults(network).filter(
    each => each.reason === 'bad-value' || each.reason === 'duplicate-element',
  )
  if (faults.length > 0) return fail({ reason: 'structure', faults })
  const resistors = network.elements.flatMap(each => resistorsOf(each, options))
  const merged = mergeShorts(nodes, resistors)
  const [from, to] = [merged(a), merged(b)]
  if (from === to) return ok(0)
  const joined = resistors
    .map(
      ({ between, ohms }): Resistor => ({
        between: [merged(between[0]), merged(between[1])],
        ohms,
      }),
    )
    .filter(({ between }) => between[0] !== between[1])
  return solveResistance(joined, from, to)
}

interface Resistor {
  readonly between: Pair
  readonly ohms: number
}

function resistorsOf(element: Element, options: ResistanceOptions): readonly Resistor[] {
  switch (element.kind) {
    case 'impedance':
      return element.ohms.im < 0 ? [] : [{ between: element.between, ohms: element.ohms.re }]
    case 'capacitor':
      return []
    case 'contact': {
      const isClosed = options.closedContacts?.has(element.id) ?? element.closed
      const ohms = isClosed ? element.closedOhms : element.openOhms
      return [{ between: element.between, ohms }]
    }
    case 'source':
      return options.sources === 'resistance'
        ? [{ between: element.between, ohms: element.ohms.re }]
        : []
    case 'transformer':
      return [
        { between: element.primary, ohms: element.magnetisingOhms.re },
        { between: element.secondary, ohms: element.seriesOhms.re },
      ]
    case 'meter':
      return [{ between: element.between, ohms: element.ohms }]
  }
}

/** Names each node after the first of those that 0 Ω makes one with it. */
function mergeShorts(
  nodes: readonly NodeId[],
  resistors: readonly Resistor[],
): (node: NodeId) => NodeId {
  const names = new Map(nodes.map(node => [node, node]))
  const nameOf = (node: NodeId): NodeId => {
    const name = names.get(node) ?? node
    return name === node ? node : nameOf(name)
  }
  for (const { between, ohms } of resistors)
    if (ohms === 0) names.set(nameOf(between[1]), nameOf(between[0]))
  return nameOf
}

/** The voltage that one ampere into `from` and out of `to` causes. */
function solveResistance(
  resistors: readonly Resistor[],
  from: NodeId,
  to: NodeId,
): Outcome<number, ResistanceFailure> {
  const reached = reachedFrom(to, resistors)
  const ground = reached.indexOf(to)
  const start = reached.indexOf(from)
  if (start < 0) return fail({ reason: 'no-path', between: [from, to] })
  const kept = resistors.filter(({ between }) => reached.includes(between[0]))
  const branches = kept.map(({ between }) => ({
    from: reached.indexOf(between[0]),
    to: reached.indexOf(between[1]),
    isDriven: false,
  }))
  const probe = { from: ground, to: start, isDriven: true }
  const elimination = planElimination(reached.length, ground, [...branches, probe])
  const work = meshWorkspace(elimination)
  kept.forEach(({ ohms }, index) => {
    const at = elimination.admittances[index] as number
    work.values[at] = (work.values[at] as number) + 1 / ohms
  })
  work.values[elimination.currents[kept.length] as number] = 1
  solveMesh(elimination, work)
  return ok(work.re[start] as number)
}

function reachedFrom(start: NodeId, resistors: readonly Resistor[]): readonly NodeId[] {
  const reached = new Set([start])
  for (const node of reached)
    for (const { between } of resistors)
      if (between.includes(node)) for (const end of between) reached.add(end)
  return [...reached]
}
