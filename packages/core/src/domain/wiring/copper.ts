import type { NodeId } from '../../engines/circuit/network.ts'
import type { Plant } from './plant.ts'
import { reachedFrom } from './reach.ts'

/** Elements that are nothing but copper: conductors, tails, jumpers. */
const COPPER = /^(lead|cable|tail|jumper):/u

const copperPairs = (plant: Plant): readonly (readonly [NodeId, NodeId])[] =>
  plant.wiring.all.flatMap(element =>
    element.kind === 'impedance' && COPPER.test(element.id) ? [element.between] : [],
  )

/** Every node that copper alone joins to this one: no contact, pole, switch, fuse or load between. */
export const joinedByCopper = (plant: Plant, from: NodeId): ReadonlySet<NodeId> =>
  reachedFrom(from, copperPairs(plant))

/** Every node that copper alone joins to any of these, themselves included. */
export function joinedToAny(plant: Plant, from: readonly NodeId[]): ReadonlySet<NodeId> {
  const [first, ...others] = from
  if (first === undefined) return new Set()
  return reachedFrom(first, [...copperPairs(plant), ...others.map(node => [first, node] as const)])
}
