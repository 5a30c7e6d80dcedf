import { atLeast } from '../../base/compare.ts'
import type { Complex } from '../../base/complex.ts'
import { add, magnitude, ZERO } from '../../base/complex.ts'
import { scaleImpedances } from '../../engines/circuit/scale-impedances.ts'
import type { Part } from '../board/board.ts'
import { circuitAt, circuitsOf } from '../supply/circuits.ts'
import { LIMITS } from './limits.ts'
import type { Circumstance, Plant, PlantPart, RatedPart, Solved } from './plant.ts'
import { solveState } from './plant.ts'
import type { State } from './states.ts'
import { boardNode, partElement } from './wire.ts'

type GroundFault = Extract<Part, { kind: 'ground-fault' }>

/** A protection that clears a state, cleanly and certainly. */
export interface Trip {
  readonly part: string
  readonly kind: 'overcurrent' | 'ground-fault'
  /** What made it trip [A], and its rating or upper trip bound [A]. */
  readonly amps: number
  readonly rated: number
}

/** One state as it would be found once the protections have done what they certainly do. */
export interface Observation {
  readonly state: State
  readonly solved: Solved
  /** What clears the whole state, as first solved; the state is then dead. */
  readonly trip: Trip | undefined
  /**
   * The same state with every motor that has somewhat less than its plate volts at its plate amps: a
   * motor does not draw less for it. The same as `solved` where none has, or where the state trips.
   */
  readonly atPlate: Solved
  /** What those motors would draw more, at most, all together [A]; 0 where there is none. */
  readonly plateExtra: number
  /** Fuses that blow, in order; `solved` has them open. */
  readonly blown: readonly Trip[]
  /** Where a tub has two circuits: what opens one of them while the other stays; `solved` has it open. */
  readonly opened: readonly Trip[]
}

/** The sum that a ground-fault device watches [A]. */
export function groundFaultSum(solved: Solved, board: string, part: GroundFault): Complex {
  return part.sums.reduce((sum, id) => add(sum, solved.current(partElement(board, id))), ZERO)
}

/** Whether the device's own electronics have the volts they need; true where it needs none. */
export function isAwake(solved: Solved, board: string, part: GroundFault): boolean {
  if (!part.poweredFrom) return true
  const [a, b] = part.poweredFrom
  return solved.across(boardNode(board, a), boardNode(board, b)) >= LIMITS.awakeVolts
}

/** Which of these carry so much that they clear for certain. */
function overcurrents(rated: readonly RatedPart[], solved: Solved): readonly Trip[] {
  const trips: Trip[] = []
  for (const { element, name, amps: rating } of rated) {
    const amps = solved.amps(element)
    if (atLeast(amps, LIMITS.certainTrip * rating))
      trips.push({ part: name, kind: 'overcurrent', amps, rated: rating })
  }
  return trips
}

function groundFaultTrip(solved: Solved, { board, part, name }: PlantPart): Trip | undefined {
  if (part.kind !== 'ground-fault' || !isAwake(solved, board, part)) return undefined
  const amps = magnitude(groundFaultSum(solved, board, part))
  return atLeast(amps, part.trip.to.si)
    ? { part: name, kind: 'ground-fault', amps, rated: part.trip.to.si }
    : undefined
}

function tripOf(plant: Plant, solved: Solved): Trip | undefined {
  const poles = overcurrents(plant.protections.poles, solved)
  if (poles[0]) return poles.reduce((a, b) => (b.amps > a.amps ? b : a))
  for (const each of plant.protections.groundFaults) {
    const trip = groundFaultTrip(solved, each)
    if (trip) return trip
  }
  return undefined
}

/** The board that a part named `board.part` is on. */
export const boardOfPart = (name: string): string => name.slice(0, name.indexOf('.'))

/** What opens when a device trips or is switched off. */
export const opensWith = (plant: Plant, board: string): ReadonlySet<string> =>
  new Set(
    plant.parts
      .filter(
        each => each.board === board && (each.part.kind === 'pole' || each.part.kind === 'switch'),
      )
      .map(each => each.element),
  )

/** Elements open in an observed state: what blew, and what opened a circuit. */
export const openIn = (plant: Plant, { blown, opened }: Observation): ReadonlySet<string> =>
  new Set([
    ...blown.map(each => `part:${each.part}`),
    ...opened.flatMap(each => [...opensWith(plant, boardOfPart(each.part))]),
  ])

/** Whether a circuit of the supply is still there when these have tripped. */
function leavesAnother({ job }: Plant, trips: readonly Trip[]): boolean {
  const { supply } = job.tub
  const open = new Set(trips.map(each => circuitAt(supply, boardOfPart(each.part))?.device))
  return !open.has(undefined) && circuitsOf(supply).some(each => !open.has(each.device))
}

interface BelowPlate {
  readonly element: string
  readonly share: number
  readonly amps: number
}

/** Motors between 85 % and 100 % of their plate volts, with what they draw in the model. */
const belowPlate = (plant: Plant, solved: Solved): readonly BelowPlate[] =>
  plant.circuits.flatMap(({ element, isMotor, a, b, draw }) => {
    const share = isMotor ? solved.across(a, b) / draw.volts : 0
    return atLeast(share, LIMITS.leastMotor) && share < 1
      ? [{ element, share, amps: solved.amps(element) }]
      : []
  })

/** Solves a state once more, these motors at their plate amps. */
function solveAtPlate(
  plant: Plant,
  state: State,
  circumstance: Circumstance,
  solved: Solved,
  motors: readonly BelowPlate[],
): Solved {
  if (motors.length === 0) return solved
  const factors = new Map(motors.map(each => [each.element, each.share] as const))
  const compiled = scaleImpedances(plant.compiled, factors)
  return solveState({ ...plant, compiled }, state, circumstance)
}

/**
 * Solves a state and lets every protection act that certainly would.
 *
 * The fuse at the greatest multiple of its rating blows first, opens its own branch and the rest is
 * solved again, until nothing more blows; then a
 * breaker or ground-fault device clears the state; where the tub has two circuits, its own one first.
 */
export function observe(plant: Plant, state: State, circumstance: Circumstance = {}): Observation {
  const open = new Set(circumstance.open)
  const blown: Trip[] = []
  const opened: Trip[] = []
  for (;;) {
    const solved = solveState(plant, state, { ...circumstance, open })
    const fuses = overcurrents(plant.protections.fuses, solved)
    if (fuses.length > 0) {
      const first = fuses.reduce((a, b) => (b.amps / b.rated > a.amps / a.rated ? b : a))
      blown.push(first)
      open.add(`part:${first.part}`)
      continue
    }
    const trip = tripOf(plant, solved)
    if (trip && leavesAnother(plant, [...opened, trip])) {
      opened.push(trip)
      for (const element of opensWith(plant, boardOfPart(trip.part))) open.add(element)
      continue
    }
    let shares: readonly BelowPlate[] | undefined
    const motors = () => {
      shares ??= trip ? [] : belowPlate(plant, solved)
      return shares
    }
    let extra: number | undefined
    let plated: Solved | undefined
    return {
      state,
      solved,
      trip,
      blown,
      opened,
      get plateExtra() {
        extra ??= motors().reduce((sum, each) => sum + each.amps * (1 / each.share - 1), 0)
        return extra
      },
      // Most states are far from any rating: solved only when somebody asks.
      get atPlate() {
        plated ??= solveAtPlate(plant, state, { ...circumstance, open }, solved, motors())
        return plated
      },
    }
  }
}
