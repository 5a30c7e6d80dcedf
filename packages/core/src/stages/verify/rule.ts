import type { Finding } from '../../base/verdict.ts'
import type { Line } from '../../domain/board/board.ts'
import type { Feed, Profile } from '../../domain/box/control-box.ts'
import type { Job } from '../../domain/job.ts'
import { BOX } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import { LIMITS } from '../../domain/wiring/limits.ts'
import type { Observation } from '../../domain/wiring/observe.ts'
import type { Plant, PlantCircuit, PlantTerminal, Solved } from '../../domain/wiring/plant.ts'
import type { State } from '../../domain/wiring/states.ts'
import type { NodeId } from '../../engines/circuit/network.ts'

/** Everything a rule may look at: one landing, solved in every state. */
export interface Evidence {
  readonly job: Job
  readonly landing: Landing
  readonly plant: Plant
  readonly feed: Feed | undefined
  readonly profile: Profile | undefined
  /** The lines of the supply, circuit by circuit. */
  readonly lines: readonly SupplyLine[]
  /** What is drawn from each of them in an observed state [A], in their order. */
  readonly lineDraw: (at: Observation) => readonly number[]
  /** Whether the plug is judged turned round. */
  readonly turned: boolean
  /** How far the supply may lie from nominal, as factors. */
  readonly band: { readonly low: number; readonly high: number }
  readonly legVolts: number
  /** Modes and transitions; all-off first. */
  readonly running: readonly Observation[]
  readonly allOff: Observation
  /** Where all-off trips: what is left when what trips, and all that stands on its board, is open. */
  readonly tripped: Solved | undefined
  /** The states with the box's limit contacts open; only those that are not cleared. */
  readonly limitOpen: readonly Observation[]
  /** A few modes with what a ground-fault device opens open. */
  readonly devicesOpen: readonly DevicesOpen[]
  /** The same modes with every pole and switch of one supply device open, whatever its kind. */
  readonly disconnectsOpen: readonly DevicesOpen[]
  /** Where the landing is judged as a plan: what would be found with the settings that a reset leaves. */
  readonly reset?: readonly Finding[]
  /** Loose ends that a touch makes carry current: worst of all states, by end id [A]. */
  readonly touched: ReadonlyMap<string, { readonly amps: number; readonly state: State }>
}

/** One line of one circuit, where it arrives at its first device. */
export interface SupplyLine {
  /** Which of the supply's circuits. */
  readonly circuit: number
  readonly line: Line
  readonly node: NodeId
}

export interface DevicesOpen {
  readonly device: string
  readonly observation: Observation
}

/** One requirement, in one file: where its sentence, its source and its test find it. */
export interface Rule {
  readonly id: string
  readonly title: string
  /** A published source, or `common practice, no source`. */
  readonly source: string
  readonly check: (evidence: Evidence) => readonly Finding[]
}

export const COMMON_PRACTICE = 'common practice, no source'

/** The states in which something can be found: not cleared by a certain trip. */
export const standing = (evidence: Evidence): readonly Observation[] =>
  evidence.running.filter(each => !each.trip)

/** Volts across a circuit as a share of its plate, in the strap position of the landing. */
export const plateShare = ({ a, b, draw }: PlantCircuit, at: Observation): number =>
  at.solved.across(a, b) / draw.volts

/** The mains terminals of the box. */
export const boxMains = ({ plant }: Evidence): readonly PlantTerminal[] =>
  plant.terminals.filter(
    ({ name, terminal }) => name.startsWith(`${BOX}.`) && terminal.class === 'mains',
  )

/** Whether the plate of a circuit is above extra-low voltage. */
export const isMainsCircuit = ({ draw }: PlantCircuit): boolean => draw.volts > LIMITS.extraLowVolts

export const commandsOf = (state: State): readonly string[] => [...state.commands].sort()

/**
 * The worst state for each of some things, where the measure exceeds its limit at all.
 *
 * @param measure - undefined where the thing is not concerned in that state
 */
export function worst<Thing>(
  observations: readonly Observation[],
  things: readonly Thing[],
  measure: (thing: Thing, observation: Observation) => number | undefined,
): readonly { readonly thing: Thing; readonly value: number; readonly at: Observation }[] {
  return things.flatMap(thing => {
    let most = Number.NEGATIVE_INFINITY
    let where: Observation | undefined
    for (const at of observations) {
      const value = measure(thing, at)
      if (value === undefined || (where && value <= most)) continue
      most = value
      where = at
    }
    return where ? [{ thing, value: most, at: where }] : []
  })
}
