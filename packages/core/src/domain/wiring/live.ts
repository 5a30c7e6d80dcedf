import type { Element, NodeId } from '../../engines/circuit/network.ts'
import { LIMITS } from './limits.ts'
import type { Trip } from './observe.ts'
import { observe, openIn } from './observe.ts'
import type { Plant } from './plant.ts'
import { closedIn } from './plant.ts'
import type { State } from './states.ts'
import { elementOfEnd, endNode } from './wire.ts'

/** What is found at a conductor end or a terminal in one state, at nominal supply. */
export interface LivePoint {
  /** To earth [V]. */
  readonly volts: number
  readonly amps: number
  /** Above extra-low voltage: not to be touched. */
  readonly isLive: boolean
  /** What copper and closed contacts join: points of one net have one number. */
  readonly net: number
}

/** One circuit of a load in that state. */
export interface LiveLoad {
  readonly load: string
  readonly circuit: string
  readonly label: string
  readonly volts: number
  readonly amps: number
  /** Volts as a share of its plate's. */
  readonly share: number
}

/** One state as a drawing shows it: every end, terminal and load. */
export interface LiveState {
  readonly commands: readonly string[]
  readonly ends: Readonly<Record<string, LivePoint>>
  readonly terminals: Readonly<Record<string, LivePoint>>
  readonly loads: readonly LiveLoad[]
  /** What clears the whole state, and which fuses and circuits open in it. */
  readonly trip?: Trip
  readonly blown: readonly Trip[]
  readonly opened: readonly Trip[]
}

/** Whether an element is plain copper in this state: conductor, jumper, closed contact, sound fuse. */
function isCopper(
  element: Element,
  closed: ReadonlySet<string>,
  open: ReadonlySet<string>,
): boolean {
  if (open.has(element.id)) return false
  if (element.kind === 'contact') return closed.has(element.id)
  return /^(?:lead|cable|tail|jumper):/u.test(element.id)
}

/** Numbers the nets of a network in one state: nodes that copper joins have one number. */
function netsOf(
  elements: readonly Element[],
  joins: (element: Element) => boolean,
): (node: NodeId) => number {
  const parents = new Map<NodeId, NodeId>()
  const rootOf = (node: NodeId): NodeId => {
    let at = node
    for (let next = parents.get(at); next !== undefined && next !== at; next = parents.get(at))
      at = next
    return at
  }
  for (const element of elements)
    if (joins(element) && 'between' in element) {
      const [a, b] = element.between.map(rootOf)
      if (a !== undefined && b !== undefined && a !== b) parents.set(a, b)
    }
  const numbers = new Map<NodeId, number>()
  return node => {
    const root = rootOf(node)
    const number = numbers.get(root) ?? numbers.size
    numbers.set(root, number)
    return number
  }
}

/**
 * What is on every wire, terminal and load in one state, once the protections have acted.
 *
 * A state that trips is dead: its figures are those of the moment before.
 */
export function liveState(plant: Plant, state: State): LiveState {
  const { job, landing, wiring } = plant
  const seen = observe(plant, state)
  const { solved, trip, blown, opened } = seen
  const [closed, open] = [closedIn(plant, state), openIn(plant, seen)]
  const net = netsOf(wiring.all, each => isCopper(each, closed, open))
  const point = (node: NodeId, amps: number): LivePoint => {
    const volts = solved.potential(node)
    return { volts, amps, isLive: volts > LIMITS.extraLowVolts, net: net(node) }
  }
  const ends = job.ends.map(end => {
    const amps = solved.amps(elementOfEnd(end))
    return [end.id, point(endNode(job, landing, end), amps)] as const
  })
  const terminals = plant.terminals.map(({ name, node, conductors }) => {
    const most = Math.max(0, ...conductors.map(each => solved.amps(each.element)))
    return [name, point(node, most)] as const
  })
  return {
    commands: [...state.commands],
    ends: Object.fromEntries(ends),
    terminals: Object.fromEntries(terminals),
    loads: plant.circuits.map(({ load, circuit, a, b, element, draw }) => {
      const volts = solved.across(a, b)
      const share = draw.volts > 0 ? volts / draw.volts : 0
      return {
        load: load.id,
        circuit: circuit.id,
        label: load.label,
        volts,
        amps: solved.amps(element),
        share,
      }
    }),
    ...(trip ? { trip } : {}),
    blown,
    opened,
  }
}
