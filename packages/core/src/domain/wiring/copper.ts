import type { NodeId } from '../../engines/circuit/network.ts'
import { COPPER } from './conduction.ts'
import type { Plant } from './plant.ts'
import { reachedFrom } from './reach.ts'

const copperPairs = (plant: Plant): readonly (readonly [NodeId, NodeId])[] =>
  plant.wiring.all.flatMap(element =>
    element.kind === 'impedance' && COPPER.test(element.id) ? [element.between] : [],
  )

/**
 * Every node that copper alone joins to any of these, themselves included: no contact, pole,
 * switch, fuse or load between. */
export function joinedToAny(plant: Plant, from: readonly NodeId[]): ReadonlySet<NodeId> {
  const [first, ...others] = from
  if (first === undefined) return new Set()
  return reachedFrom(first, [...copperPairs(plant), ...others.map(node => [first, node] as const)])
}
