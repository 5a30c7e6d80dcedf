import type { Outcome } from '../../base/outcome.ts'
import { fail, ok } from '../../base/outcome.ts'
import type { BranchTable } from './branch-table.ts'
import { tabulateBranches } from './branch-table.ts'
import type { MeshRoute } from './mesh-route.ts'
import { planMeshRoute } from './mesh-route.ts'
import type { Network, NodeId } from './network.ts'
import { nodesOf } from './network.ts'
import type { StructuralFault } from './structure.ts'
import { findStructuralFaults } from './structure.ts'

/** How a network is solved: by exact sums, or by pivoted LU with refinement. */
export type Route = 'star-mesh' | 'pivoted-lu'

/**
 * A network made ready to be solved many times with its contacts in other states.
 *
 * Nodes, elements and contacts are numbered in the order in which the network names them; the
 * reference is node 0. The tables are for the engine's own use.
 */
export interface CompiledNetwork {
  readonly network: Network
  readonly route: Route
  readonly nodes: readonly NodeId[]
  /** Ids of the contacts; states are given in this order. */
  readonly contacts: readonly string[]
  /** One byte a contact, 1 for closed, as the network says they start. */
  readonly initialStates: Uint8Array
  readonly nodeIndexes: ReadonlyMap<NodeId, number>
  readonly elementIndexes: ReadonlyMap<string, number>
  readonly contactIndexes: ReadonlyMap<string, number>
  readonly table: BranchTable
  readonly mesh: MeshRoute | undefined
}

export interface StructureFailure {
  readonly reason: 'structure'
  readonly faults: readonly StructuralFault[]
}

/** `route` forces the general route where the shape would allow the exact one. */
export interface CompileOptions {
  readonly route?: 'pivoted-lu'
}

const byId = (ids: readonly string[]): ReadonlyMap<string, number> =>
  new Map(ids.map((id, index) => [id, index]))

/**
 * Numbers a network, orders its elimination once and chooses its route by shape alone.
 *
 * Contacts count as joined in either state, so one compilation serves every state. A network with
 * a transformer that cannot be reflected (`findRegions`) takes pivoted LU.
 *
 * @returns fails with 'structure' and every fault except dangling nodes, which solve well
 */
export function compileNetwork(
  network: Network,
  options: CompileOptions = {},
): Outcome<CompiledNetwork, StructureFailure> {
  const faults = findStructuralFaults(network).filter(each => each.reason !== 'dangling-node')
  if (faults.length > 0) return fail({ reason: 'structure', faults })
  const nodes = nodesOf(network)
  const contacts = network.elements.filter(each => each.kind === 'contact')
  const contactIds = contacts.map(each => each.id)
  const nodeIndexes = byId(nodes)
  const table = tabulateBranches(network, nodeIndexes)
  const mesh = options.route ? undefined : planMeshRoute(nodes.length, table)
  return ok({
    network,
    route: mesh ? 'star-mesh' : 'pivoted-lu',
    nodes,
    contacts: contactIds,
    initialStates: new Uint8Array(contacts.map(each => (each.closed ? 1 : 0))),
    nodeIndexes,
    elementIndexes: byId(network.elements.map(each => each.id)),
    contactIndexes: byId(contactIds),
    table,
    mesh,
  })
}

/** The index of a node in a workspace's arrays, or undefined. */
export const nodeIndex = (compiled: CompiledNetwork, id: NodeId): number | undefined =>
  compiled.nodeIndexes.get(id)

/** The index of an element, for `currentAt`, or undefined. */
export const elementIndex = (compiled: CompiledNetwork, id: string): number | undefined =>
  compiled.elementIndexes.get(id)

/** The index of a contact in an array of contact states, or undefined. */
export const contactIndex = (compiled: CompiledNetwork, id: string): number | undefined =>
  compiled.contactIndexes.get(id)

/**
 * One byte a contact, 1 for closed.
 *
 * @param closedContacts - ids; those of no contact here are ignored, since a caller may have left
 *   parts out. Undefined: every contact as the network says it starts.
 */
export function contactStates(
  compiled: CompiledNetwork,
  closedContacts: ReadonlySet<string> | undefined,
): Uint8Array {
  if (closedContacts)
    return new Uint8Array(compiled.contacts.map(id => (closedContacts.has(id) ? 1 : 0)))
  return compiled.initialStates.slice()
}
