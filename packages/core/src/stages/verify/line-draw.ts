import { jointsOf } from '../../domain/wiring/conduction.ts'
import { LIMITS } from '../../domain/wiring/limits.ts'
import type { Observation } from '../../domain/wiring/observe.ts'
import { openIn } from '../../domain/wiring/observe.ts'
import type { Plant, PlantCircuit } from '../../domain/wiring/plant.ts'
import { contactsIn } from '../../domain/wiring/plant.ts'
import { boardNode, leadNode } from '../../domain/wiring/wire.ts'
import type { NodeId } from '../../engines/circuit/network.ts'
import type { SupplyLine } from './rule.ts'

interface Consumer {
  readonly a: NodeId
  readonly b: NodeId
  readonly amps: (at: Observation) => number
}

/** A motor that has somewhat less than its plate volts counts with its plate amps. */
function circuitAmps({ element, isMotor, a, b, draw }: PlantCircuit, at: Observation): number {
  const amps = at.solved.amps(element)
  const share = isMotor ? at.solved.across(a, b) / draw.volts : 0
  return share >= LIMITS.leastMotor && share < 1 ? amps / share : amps
}

const consumersOf = (plant: Plant): readonly Consumer[] => [
  ...plant.circuits.map(each => ({
    a: leadNode(each.load.id, each.circuit.across[0]),
    b: leadNode(each.load.id, each.circuit.across[1]),
    amps: (at: Observation) => circuitAmps(each, at),
  })),
  ...plant.parts.flatMap(({ part, board, element }) =>
    part.kind === 'transformer'
      ? [
          {
            a: boardNode(board, part.primary[0]),
            b: boardNode(board, part.primary[1]),
            amps: (at: Observation) => at.solved.amps(element),
          },
        ]
      : [],
  ),
]

/**
 * What is drawn from each line of the supply, added arithmetically as limits are reckoned.
 *
 * @returns amps by line, in the order given; worked out once an observation
 */
export function lineDrawOf(
  plant: Plant,
  lines: readonly SupplyLine[],
): (at: Observation) => readonly number[] {
  const joinedIn = jointsOf(plant)
  const consumers = consumersOf(plant)
  const known = new Map<Observation, readonly number[]>()
  const draw = (at: Observation): readonly number[] => {
    const groupOf = joinedIn(contactsIn(plant, at.state, { open: openIn(plant, at) }))
    const groups = lines.map(line => groupOf(line.node))
    const draws = lines.map(() => 0)
    for (const { a, b, amps } of consumers)
      for (const node of [a, b]) {
        const group = groupOf(node)
        const line = group === undefined ? -1 : groups.indexOf(group)
        if (line >= 0) draws[line] = (draws[line] ?? 0) + amps(at)
      }
    return draws
  }
  return at => {
    const before = known.get(at)
    if (before) return before
    const draws = draw(at)
    known.set(at, draws)
    return draws
  }
}
