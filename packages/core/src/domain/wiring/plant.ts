import type { Complex } from '../../base/complex.ts'
import { add, magnitude } from '../../base/complex.ts'
import type { Outcome } from '../../base/outcome.ts'
import { fail, ok } from '../../base/outcome.ts'
import type { CompiledNetwork, StructureFailure } from '../../engines/circuit/compile-network.ts'
import { compileNetwork, contactStates } from '../../engines/circuit/compile-network.ts'
import type { NodeId } from '../../engines/circuit/network.ts'
import type { Solution } from '../../engines/circuit/solve-network.ts'
import {
  currentAt,
  secondaryCurrentAt,
  solutionOf,
  solvedApart,
} from '../../engines/circuit/solve-network.ts'
import type { Workspace } from '../../engines/circuit/workspace.ts'
import { makeWorkspace } from '../../engines/circuit/workspace.ts'
import type { Part, Terminal } from '../board/board.ts'
import type { End, Job } from '../job.ts'
import { BOX, boardOf, findTerminal } from '../job.ts'
import type { Landing } from '../landing/landing.ts'
import type { Circuit, PoweredLoad } from '../load/load.ts'
import { isMotor, isPowered } from '../load/load.ts'
import type { Draw } from './draw.ts'
import { drawOf } from './draw.ts'
import type { State } from './states.ts'
import type { WireOptions, Wiring } from './wire.ts'
import {
  boardNode,
  circuitElement,
  elementOfEnd,
  isClosedAtRest,
  jumperElement,
  leadNode,
  partElement,
  wire,
} from './wire.ts'

/** A landing compiled once: states change contacts only. */
export interface Plant {
  readonly job: Job
  readonly landing: Landing
  readonly wiring: Wiring
  readonly compiled: CompiledNetwork
  readonly circuits: readonly PlantCircuit[]
  readonly parts: readonly PlantPart[]
  readonly jumpers: readonly PlantJumper[]
  readonly terminals: readonly PlantTerminal[]
  /** Where its states are solved, one after the other. */
  readonly scratch: Workspace
  /** Contacts closed whatever is commanded: poles, switches, fuses. */
  readonly alwaysClosed: readonly string[]
  /** The limit contacts of the box. */
  readonly limitContacts: readonly string[]
  /** Elements of the network; a part that nothing feeds has none. */
  readonly elements: ReadonlySet<string>
  /** Contacts closed with nothing commanded, limit contacts aside. */
  readonly restClosed: readonly string[]
  /** Contacts that each command closes, and those at rest closed that it opens. */
  readonly closedBy: ReadonlyMap<string, readonly string[]>
  readonly openedBy: ReadonlyMap<string, readonly string[]>
}

export interface PlantCircuit {
  readonly load: PoweredLoad
  readonly circuit: Circuit
  readonly name: string
  readonly element: string
  readonly draw: Draw
  readonly a: NodeId
  readonly b: NodeId
  readonly isMotor: boolean
  readonly movesWater: boolean
}

export interface PlantPart {
  readonly board: string
  readonly part: Part
  readonly name: string
  readonly element: string
}

export interface PlantJumper {
  readonly name: string
  readonly element: string
  readonly label: string
  readonly rated: number
}

export interface PlantTerminal {
  readonly name: string
  readonly terminal: Terminal
  readonly node: NodeId
  readonly ends: readonly End[]
  /** The conductors of those ends. */
  readonly conductors: readonly LandedConductor[]
}

export interface LandedConductor {
  readonly element: string
  /** 1 where the element's first node is here, −1 where its second is. */
  readonly sign: 1 | -1
}

function circuitsOf(job: Job, landing: Landing): readonly PlantCircuit[] {
  return job.loads.filter(isPowered).flatMap(load =>
    load.circuits.map(circuit => ({
      load,
      circuit,
      name: `${load.id}.${circuit.id}`,
      element: circuitElement(load.id, circuit.id),
      draw: drawOf(job, landing, load, circuit),
      a: leadNode(load.id, circuit.across[0]),
      b: leadNode(load.id, circuit.across[1]),
      isMotor: isMotor(load),
      movesWater:
        'movesWaterThroughHeater' in load && load.movesWaterThroughHeater.includes(circuit.id),
    })),
  )
}

const boardNames = (job: Job): readonly string[] => [...job.devices.keys(), BOX]

const partsOf = (job: Job): readonly PlantPart[] =>
  boardNames(job).flatMap(board =>
    (boardOf(job, board)?.parts ?? []).map(part => ({
      board,
      part,
      name: `${board}.${part.id}`,
      element: partElement(board, part.id),
    })),
  )

const jumpersOf = (job: Job, landing: Landing): readonly PlantJumper[] =>
  boardNames(job).flatMap(board =>
    (boardOf(job, board)?.jumpers ?? []).flatMap(jumper => {
      const at = landing.jumpers[jumper.id] ?? jumper.factory
      const position = jumper.positions.find(each => each.id === at)
      return (position?.joins ?? []).map((_, index) => ({
        name: `${board}.${jumper.id}`,
        element: jumperElement(board, jumper.id, index),
        label: jumper.label,
        rated: jumper.rated.si,
      }))
    }),
  )

/** Whether a conductor's element starts at this end: only a cable does, at the device it comes from. */
const isFirstNode = (job: Job, end: End): boolean =>
  end.of === 'cable' &&
  job.tub.supply.cables.find(each => each.id === end.owner)?.from === end.board

function terminalsOf(job: Job, landing: Landing): readonly PlantTerminal[] {
  const landed = new Map<string, End[]>()
  for (const end of job.ends) {
    const at = landing.ends[end.id]
    if (at === undefined || !findTerminal(job, at)) continue
    landed.set(at, [...(landed.get(at) ?? []), end])
  }
  return boardNames(job).flatMap(board =>
    (boardOf(job, board)?.terminals ?? []).map(terminal => {
      const ends = landed.get(`${board}.${terminal.id}`) ?? []
      return {
        name: `${board}.${terminal.id}`,
        terminal,
        node: boardNode(board, terminal.node),
        ends,
        conductors: ends.map(end => ({
          element: elementOfEnd(end),
          sign: isFirstNode(job, end) ? 1 : -1,
        })),
      }
    }),
  )
}

const isHeldClosed = (part: Part): boolean =>
  part.kind === 'pole' || part.kind === 'switch' || part.kind === 'fuse'

/** Compiles the landing; fails only where the network itself has no meaning. */
export function plantOf(
  job: Job,
  landing: Landing,
  options: WireOptions = {},
): Outcome<Plant, StructureFailure> {
  const wiring = wire(job, landing, options)
  const compiled = compileNetwork(wiring.network)
  if (!compiled.ok) return fail(compiled.failure)
  const parts = partsOf(job)
  const contactsOf = (which: 'closes' | 'opens') =>
    new Map(
      job.box.commands.map(command => [command.id, command[which].map(id => partElement(BOX, id))]),
    )
  return ok({
    job,
    landing,
    wiring,
    compiled: compiled.value,
    scratch: makeWorkspace(compiled.value),
    circuits: circuitsOf(job, landing),
    parts,
    jumpers: jumpersOf(job, landing),
    terminals: terminalsOf(job, landing),
    alwaysClosed: parts.filter(each => isHeldClosed(each.part)).map(each => each.element),
    limitContacts: parts
      .filter(each => each.part.kind === 'contact' && each.part.role === 'limit')
      .map(each => each.element),
    elements: new Set(wiring.network.elements.map(each => each.id)),
    restClosed: parts
      .filter(
        ({ part }) => part.kind === 'contact' && part.role !== 'limit' && isClosedAtRest(part),
      )
      .map(each => each.element),
    closedBy: contactsOf('closes'),
    openedBy: contactsOf('opens'),
  })
}

/**
 * What flows through a terminal [A]: half of the sum of the magnitudes of its conductors' currents and
 * of the magnitude of their sum, so that what comes by one and leaves by another counts once.
 */
export function throughAmps({ conductors }: PlantTerminal, solved: Solved): number {
  let [sum, magnitudes] = [NOTHING, 0]
  for (const { element, sign } of conductors) {
    const current = solved.current(element)
    sum = add(sum, { re: sign * current.re, im: sign * current.im })
    magnitudes += magnitude(current)
  }
  return (magnitudes + magnitude(sum)) / 2
}

/** What is out of the ordinary in one solve. */
export interface Circumstance {
  readonly limitOpen?: boolean
  /** Elements held open: blown fuses, tripped devices. */
  readonly open?: ReadonlySet<string>
  /** Elements held closed besides: jumpers that are wired as contacts. */
  readonly closed?: readonly string[]
}

/** The contacts closed in a state. */
export function closedIn(
  plant: Plant,
  state: State,
  circumstance: Circumstance = {},
): ReadonlySet<string> {
  const closed = new Set([
    ...plant.alwaysClosed,
    ...plant.restClosed,
    ...(circumstance.closed ?? []),
  ])
  if (circumstance.limitOpen !== true) for (const each of plant.limitContacts) closed.add(each)
  for (const command of state.commands)
    for (const each of plant.closedBy.get(command) ?? []) closed.add(each)
  for (const command of state.commands)
    for (const each of plant.openedBy.get(command) ?? []) closed.delete(each)
  if (circumstance.limitOpen === true) for (const each of plant.limitContacts) closed.delete(each)
  for (const each of circumstance.open ?? []) closed.delete(each)
  return closed
}

/** A solved state, by the names of the job. Amps and volts at nominal supply, RMS. */
export interface Solved {
  readonly solution: Solution
  /** Volts from a node to the reference [V]; 0 for a part that nothing feeds. */
  volts(node: NodeId): Complex
  /** |volts| from a node to the reference [V]. */
  potential(node: NodeId): number
  /** |volts| between two nodes [V]. */
  across(a: NodeId, b: NodeId): number
  /** Current into the first end of an element [A]; 0 for one that was left out. */
  current(element: string): Complex
  /** Its magnitude [A]. */
  amps(element: string): number
  /** |current| in the secondary of a transformer [A]. */
  secondaryAmps(element: string): number
}

const NOTHING: Complex = { re: 0, im: 0 }
const size = (re: number, im: number): number => Math.sqrt(re * re + im * im)

/** Solves one state of a plant. */
export function solveState(plant: Plant, state: State, circumstance: Circumstance = {}): Solved {
  const { compiled } = plant
  const states = contactStates(compiled, closedIn(plant, state, circumstance))
  const work = solvedApart(compiled, states, plant.scratch)
  const { re, im } = work
  const known = new Float64Array(compiled.network.elements.length).fill(-1)
  const partOf = (values: Float64Array, node: NodeId): number => {
    const index = compiled.nodeIndexes.get(node)
    return index === undefined ? 0 : (values[index] ?? 0)
  }
  return {
    solution: solutionOf(compiled, work),
    volts: node => ({ re: partOf(re, node), im: partOf(im, node) }),
    potential: node => size(partOf(re, node), partOf(im, node)),
    across: (a, b) => size(partOf(re, a) - partOf(re, b), partOf(im, a) - partOf(im, b)),
    current(element) {
      const index = compiled.elementIndexes.get(element)
      return index === undefined ? NOTHING : currentAt(compiled, work, index)
    },
    amps(element) {
      const index = compiled.elementIndexes.get(element)
      if (index === undefined) return 0
      const before = known[index] ?? -1
      if (before >= 0) return before
      const amps = magnitude(currentAt(compiled, work, index))
      known[index] = amps
      return amps
    },
    secondaryAmps(element) {
      const index = compiled.elementIndexes.get(element)
      return index === undefined ? 0 : magnitude(secondaryCurrentAt(compiled, work, index))
    },
  }
}
