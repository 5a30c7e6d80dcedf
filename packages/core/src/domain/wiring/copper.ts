import type { NodeId } from '../../engines/circuit/network.ts'
import type { Plant } from './plant.ts'

/** Elements that are nothing but copper: conductors, tails, jumpers. */
const isCopper = (id: string): boolean =>
  id.startsWith('lead:') ||
  id.startsWith('cable:') ||
  id.startsWith('tail:') ||
  id.startsWith('jumper:')

/** Every node that copper alone joins to this one: no contact, pole, switch, fuse or load between. */
export function joinedByCopper(plant: Plant, from: NodeId): ReadonlySet<NodeId> {
  const neighbours = new Map<NodeId, NodeId[]>()
  const join = (a: NodeId, b: NodeId) => {
    const known = neighbours.get(a)
    if (known) known.push(b)
    else neighbours.set(a, [b])
  }
  for (const element of plant.wiring.all)
    if (element.kind === 'impedance' && isCopper(element.id)) {
      const [a, b] = element.between
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
