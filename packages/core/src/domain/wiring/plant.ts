import type { Complex } from '../../base/complex.ts'
import { add, magnitude } from '../../base/complex.ts'
import { boundsOf } from '../../base/known.ts'
import type { Outcome } from '../../base/outcome.ts'
import { fail, ok } from '../../base/outcome.ts'
import type { CompiledNetwork, StructureFailure } from '../../engines/circuit/compile-network.ts'
import { compileNetwork, contactStates } from '../../engines/circuit/compile-network.ts'
import type { NodeId } from '../../engines/circuit/network.ts'
import type { Solution } from '../../engines/circuit/solve-network.ts'
import {
  ampsAt,
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
import { circuitAt } from '../supply/circuits.ts'
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
  /** Its contacts with nothing commanded: one byte each, 1 for closed. */
  readonly resting: Uint8Array
  /** Poles and fuses with their ratings, and ground-fault devices. */
  readonly protections: Protections
  /** Where its states are solved, one after the other. */
  readonly scratch: Workspace
  /** The limit contacts of the box. */
  readonly limitContacts: readonly string[]
  /** Elements of the network; a part that nothing feeds has none. */
  readonly elements: ReadonlySet<string>
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

/** What clears a state, looked up once. */
export interface Protections {
  readonly fuses: readonly RatedPart[]
  readonly poles: readonly RatedPart[]
  readonly groundFaults: readonly PlantPart[]
}

export interface RatedPart extends PlantPart {
  /** [A] */
  readonly amps: number
}

export interface LandedConductor {
  readonly element: string
  /** 1 where the element's first node is here, −1 where its second is. */
  readonly sign: 1 | -1
}

/** Whether each data lead is where a place lands data: a motor without its command stands still. */
function hasItsData({ box }: Job, landing: Landing, load: PoweredLoad): boolean {
  const sockets = box.places.flatMap(({ lands }) =>
    lands.data === undefined ? [] : [`${BOX}.${lands.data}`],
  )
  return load.leads
    .filter(each => each.function === 'data')
    .every(each => sockets.includes(landing.ends[`${load.id}.${each.id}`] ?? ''))
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
        'movesWaterThroughHeater' in load &&
        load.movesWaterThroughHeater.includes(circuit.id) &&
        hasItsData(job, landing, load),
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

/**
 * The rating of a fuse or a pole [A]: the breaker of its circuit where the pole names none, and the
 * largest that the box allows where nobody knows the breaker.
 */
export function ratedOf({ tub, box }: Job, { part, board }: PlantPart): number | undefined {
  if (part.kind === 'fuse') return part.rated.si
  if (part.kind !== 'pole') return undefined
  const breaker = circuitAt(tub.supply, board)?.breaker
  return part.rated?.si ?? (breaker && boundsOf(breaker)?.to) ?? box.largestBreaker.si
}

function protectionsOf(job: Job, parts: readonly PlantPart[]): Protections {
  const rated = (kind: 'fuse' | 'pole'): readonly RatedPart[] =>
    parts.flatMap(each => {
      const amps = each.part.kind === kind ? ratedOf(job, each) : undefined
      return amps === undefined ? [] : [{ ...each, amps }]
    })
  return {
    fuses: rated('fuse'),
    poles: rated('pole'),
    groundFaults: parts.filter(each => each.part.kind === 'ground-fault'),
  }
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
  const held = parts.filter(each => isHeldClosed(each.part)).map(each => each.element)
  const limits = parts
    .filter(each => each.part.kind === 'contact' && each.part.role === 'limit')
    .map(each => each.element)
  const restClosed = parts
    .filter(({ part }) => part.kind === 'contact' && part.role !== 'limit' && isClosedAtRest(part))
    .map(each => each.element)
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
    resting: contactStates(compiled.value, new Set([...held, ...limits, ...restClosed])),
    protections: protectionsOf(job, parts),
    limitContacts: limits,
    elements: new Set(wiring.network.elements.map(each => each.id)),
    closedBy: contactsOf('closes'),
    openedBy: contactsOf('opens'),
  })
}

/**
 * What flows through a terminal [A]: half of the sum of the magnitudes of its conductors' currents and
 * of the magnitude of their sum, so that what comes by one and leaves by another counts once.
 */
export function throughAmps({ conductors }: PlantTerminal, solved: Solved): number {
  const [only, ...others] = conductors
  if (!only) return 0
  if (others.length === 0) return solved.amps(only.element)
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

/** The contacts in a state, one byte each, 1 for closed, as the engine wants them. */
export function contactsIn(
  plant: Plant,
  state: State,
  circumstance: Circumstance = {},
): Uint8Array {
  const { contactIndexes } = plant.compiled
  const states = plant.resting.slice()
  const set = (ids: Iterable<string>, to: 0 | 1): void => {
    for (const id of ids) {
      const index = contactIndexes.get(id)
      if (index !== undefined) states[index] = to
    }
  }
  set(circumstance.closed ?? NONE, 1)
  for (const command of state.commands) set(plant.closedBy.get(command) ?? NONE, 1)
  for (const command of state.commands) set(plant.openedBy.get(command) ?? NONE, 0)
  if (circumstance.limitOpen === true) set(plant.limitContacts, 0)
  set(circumstance.open ?? NONE, 0)
  return states
}

const NONE: readonly string[] = []

/** The same by name: the contacts closed in a state. */
export function closedIn(
  plant: Plant,
  state: State,
  circumstance: Circumstance = {},
): ReadonlySet<string> {
  const states = contactsIn(plant, state, circumstance)
  return new Set(plant.compiled.contacts.filter((_, index) => states[index] === 1))
}

/** A solved state, by the names of the job. Amps and volts at nominal supply, RMS. */
export interface Solved {
  /** Everything the engine can say of it; made when it is asked for. */
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

/** A class, since states are solved by the ten thousand: its methods are made once. */
class SolvedState implements Solved {
  readonly #compiled: CompiledNetwork
  readonly #work: Workspace

  constructor(compiled: CompiledNetwork, work: Workspace) {
    this.#compiled = compiled
    this.#work = work
  }

  get solution(): Solution {
    return solutionOf(this.#compiled, this.#work)
  }

  volts(node: NodeId): Complex {
    const index = this.#compiled.nodeIndexes.get(node)
    return index === undefined
      ? NOTHING
      : { re: this.#work.re[index] ?? 0, im: this.#work.im[index] ?? 0 }
  }

  potential(node: NodeId): number {
    const index = this.#compiled.nodeIndexes.get(node)
    return index === undefined ? 0 : size(this.#work.re[index] ?? 0, this.#work.im[index] ?? 0)
  }

  across(a: NodeId, b: NodeId): number {
    const { nodeIndexes } = this.#compiled
    const { re, im } = this.#work
    const [from, to] = [nodeIndexes.get(a) ?? -1, nodeIndexes.get(b) ?? -1]
    return size((re[from] ?? 0) - (re[to] ?? 0), (im[from] ?? 0) - (im[to] ?? 0))
  }

  current(element: string): Complex {
    const index = this.#compiled.elementIndexes.get(element)
    return index === undefined ? NOTHING : currentAt(this.#compiled, this.#work, index)
  }

  amps(element: string): number {
    const index = this.#compiled.elementIndexes.get(element)
    return index === undefined ? 0 : ampsAt(this.#compiled, this.#work, index)
  }

  secondaryAmps(element: string): number {
    const index = this.#compiled.elementIndexes.get(element)
    return index === undefined
      ? 0
      : magnitude(secondaryCurrentAt(this.#compiled, this.#work, index))
  }
}

/** Solves one state of a plant. */
export const solveState = (plant: Plant, state: State, circumstance: Circumstance = {}): Solved =>
  new SolvedState(
    plant.compiled,
    solvedApart(plant.compiled, contactsIn(plant, state, circumstance), plant.scratch),
  )
