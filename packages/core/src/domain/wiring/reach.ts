import type { NodeId, Pair } from '../../engines/circuit/network.ts'

/** Every node that these pairs join to a node, step by step; itself included. */
export function reachedFrom(from: NodeId, pairs: readonly Pair[]): ReadonlySet<NodeId> {
  const neighbours = new Map<NodeId, NodeId[]>()
  const join = (a: NodeId, b: NodeId) => {
    const known = neighbours.get(a)
    if (known) known.push(b)
    else neighbours.set(a, [b])
  }
  for (const [a, b] of pairs) {
    join(a, b)
    join(b, a)
  }
  const reached = new Set([from])
  const queue = [from]
  for (let node = queue.pop(); node !== undefined; node = queue.pop())
    for (const next of neighbours.get(node) ?? [])
      if (!reached.has(next)) {
        reached.add(next)
        queue.push(next)
      }
  return reached
}
