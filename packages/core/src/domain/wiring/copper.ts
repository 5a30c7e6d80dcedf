import type { NodeId } from '../../engines/circuit/network.ts'
import type { Plant } from './plant.ts'
import { reachedFrom } from './reach.ts'

/** Elements that are nothing but copper: conductors, tails, jumpers. */
const COPPER = /^(lead|cable|tail|jumper):/u

/** Every node that copper alone joins to this one: no contact, pole, switch, fuse or load between. */
export const joinedByCopper = (plant: Plant, from: NodeId): ReadonlySet<NodeId> =>
  reachedFrom(
    from,
    plant.wiring.all.flatMap(element =>
      element.kind === 'impedance' && COPPER.test(element.id) ? [element.between] : [],
    ),
  )
