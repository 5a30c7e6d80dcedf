import type { NodeId } from '../../engines/circuit/network.ts'
import type { Plant } from './plant.ts'

/** Elements that are nothing but copper: conductors, tails, jumpers. */
export const COPPER = /^(lead|cable|tail|jumper):/u

/** Which nodes copper and closed contacts join, in one state: a number, equal for joined nodes. */
export function joinedIn(
  { compiled }: Plant,
  closed: ReadonlySet<string>,
): (node: NodeId) => number | undefined {
  const parents = Int32Array.from(compiled.nodes, (_, index) => index)
  const rootOf = (index: number): number => {
    let at = index
    while (parents[at] !== at) {
      const above = parents[at] as number
      parents[at] = parents[above] as number
      at = above
    }
    return at
  }
  const indexOf = (node: NodeId): number => compiled.nodeIndexes.get(node) as number
  for (const element of compiled.network.elements) {
    const joins =
      element.kind === 'contact'
        ? closed.has(element.id)
        : element.kind === 'impedance' && COPPER.test(element.id)
    if (!joins || element.kind === 'transformer') continue
    const [a, b] = element.between
    parents[rootOf(indexOf(a))] = rootOf(indexOf(b))
  }
  return node => {
    const index = compiled.nodeIndexes.get(node)
    return index === undefined ? undefined : rootOf(index)
  }
}
