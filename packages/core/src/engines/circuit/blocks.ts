/** A graph's edge between node indices. */
export type Edge = readonly [number, number]

/**
 * The blocks of a connected graph: sets of edges that any two lie on a common loop, or single
 * edges that lie on none. Two blocks share at most one node.
 */
export interface Blocks {
  /** Per edge: its block, or −1 for an edge from a node to itself. */
  readonly ofEdge: readonly number[]
  /** Per block: the node through which it hangs on the rest, on the side of the root. */
  readonly hangsFrom: readonly number[]
  /** Per node: the block in which it does not play that role; −1 for the root. */
  readonly home: readonly number[]
}

interface Walk {
  readonly incident: readonly (readonly number[])[]
  readonly edges: readonly Edge[]
  readonly order: number[]
  readonly pending: number[]
  readonly ofEdge: number[]
  readonly hangsFrom: number[]
  readonly home: number[]
  visited: number
}

/**
 * Finds the blocks by one walk from the root.
 *
 * @source [TARJAN-1972] biconnected components
 */
export function findBlocks(nodeCount: number, root: number, edges: readonly Edge[]): Blocks {
  const incident: number[][] = Array.from({ length: nodeCount }, () => [])
  edges.forEach(([a, b], edge) => {
    if (a === b) return
    incident[a]?.push(edge)
    incident[b]?.push(edge)
  })
  const walk: Walk = {
    incident,
    edges,
    order: new Array(nodeCount).fill(-1),
    pending: [],
    ofEdge: new Array(edges.length).fill(-1),
    hangsFrom: [],
    home: new Array(nodeCount).fill(-1),
    visited: 0,
  }
  visit(walk, root, -1)
  return walk
}

/** Walks on from a node; returns the earliest node that can be reached from below it. */
function visit(walk: Walk, node: number, arrivedBy: number): number {
  const own = walk.visited++
  walk.order[node] = own
  let earliest = own
  for (const edge of walk.incident[node] ?? []) {
    if (edge === arrivedBy) continue
    const [a, b] = walk.edges[edge] as Edge
    const other = a === node ? b : a
    const order = walk.order[other] as number
    if (order > own) continue
    walk.pending.push(edge)
    if (order >= 0) {
      earliest = Math.min(earliest, order)
      continue
    }
    const below = visit(walk, other, edge)
    earliest = Math.min(earliest, below)
    if (below >= own) closeBlock(walk, node, edge)
  }
  return earliest
}

/** Everything pending since the edge that led away from the node is one block. */
function closeBlock(walk: Walk, node: number, first: number): void {
  const block = walk.hangsFrom.length
  walk.hangsFrom.push(node)
  for (const edge of walk.pending.splice(walk.pending.indexOf(first))) {
    walk.ofEdge[edge] = block
    for (const end of walk.edges[edge] as Edge) if (end !== node) walk.home[end] = block
  }
}
