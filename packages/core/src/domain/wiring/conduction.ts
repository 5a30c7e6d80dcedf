import type { NodeId } from '../../engines/circuit/network.ts'
import type { Plant } from './plant.ts'

/** Elements that are nothing but copper: conductors, tails, jumpers. */
export const COPPER = /^(lead|cable|tail|jumper):/u

/** Finds the root of a node among parents by index, halving the way. */
function rootOf(parents: Int32Array, index: number): number {
  let at = index
  while (parents[at] !== at) {
    const above = parents[parents[at] as number] as number
    parents[at] = above
    at = above
  }
  return at
}

/** Which nodes copper and closed contacts, by number, join: a number, equal for joined nodes. */
export type JoinedIn = (contacts: Uint8Array) => (node: NodeId) => number | undefined

/** Joins what copper joins once, and then state by state what its contacts do. */
export function jointsOf({ compiled }: Plant): JoinedIn {
  const indexOf = (node: NodeId): number => compiled.nodeIndexes.get(node) as number
  const copper = Int32Array.from(compiled.nodes, (_, index) => index)
  const contacts: { readonly a: number; readonly b: number }[] = []
  for (const element of compiled.network.elements) {
    if (element.kind !== 'contact' && !(element.kind === 'impedance' && COPPER.test(element.id)))
      continue
    const [a, b] = [indexOf(element.between[0]), indexOf(element.between[1])]
    if (element.kind === 'contact') contacts.push({ a, b })
    else copper[rootOf(copper, a)] = rootOf(copper, b)
  }
  return states => {
    const parents = copper.slice()
    contacts.forEach(({ a, b }, index) => {
      if (states[index] === 1) parents[rootOf(parents, a)] = rootOf(parents, b)
    })
    return node => {
      const index = compiled.nodeIndexes.get(node)
      return index === undefined ? undefined : rootOf(parents, index)
    }
  }
}
