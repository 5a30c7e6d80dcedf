import type { Finding } from '../../base/verdict.ts'
import type { Line } from '../../domain/board/board.ts'
import type { Draw } from '../../domain/wiring/draw.ts'

/** What a load should show when it runs as planned, over the supply band and what is known of it. */
export interface Expected {
  readonly load: string
  readonly circuit: string
  readonly label: string
  readonly command: string | undefined
  readonly volts: { readonly low: number; readonly nominal: number; readonly high: number }
  readonly amps: { readonly low: number; readonly nominal: number; readonly high: number }
  readonly draw: Draw
}

/** One mode: what runs together, and what it takes from each line, in the order of `lines`. */
export interface RunningMode {
  readonly commands: readonly string[]
  readonly heats: boolean
  readonly lineAmps: readonly number[]
}

/** Something taken as given because the survey leaves it open. */
export interface Assumption {
  readonly load: string
  readonly circuit: string
  readonly label: string
  readonly kind: 'unknown' | 'range'
  readonly atMost: number
}

/** What a search compares of one landing. */
export interface PlanWeight {
  readonly findings: readonly Finding[]
  /** Nothing breaks, whatever the states: the landing is right as far as it is known. */
  readonly holds: boolean
  readonly modes: readonly RunningMode[]
  /** Share of the tightest contact or fuse that is left in the worst mode; 1 is unloaded. */
  readonly smallestMargin: number
  /** Greatest difference of two lines in any mode [A]. */
  readonly imbalance: number
  /** The most that each jumper carries in any mode, added up [A]. */
  readonly jumperAmps: number
}

/** The proof, or the refutation, of one landing. */
export interface Verification extends PlanWeight {
  readonly assumptions: readonly Assumption[]
  /** How many states were solved, and how well the circuit laws hold in the worst of them. */
  readonly proof: {
    readonly modes: number
    readonly transitions: number
    readonly solves: number
    readonly worstKcl: number
    readonly worstPower: number
  }
  /** Commands with which the box never heats. */
  readonly heatPausesWith: readonly string[]
  readonly expected: readonly Expected[]
  readonly liveWhenOff: readonly string[]
  /** The lines of the supply: which circuit, the first is 0, and which of its lines. */
  readonly lines: readonly { readonly circuit: number; readonly line: Line }[]
  readonly worstLineAmps: number
}

export type VerifyFailure =
  | { readonly reason: 'limit-reached'; readonly limit: number }
  | { readonly reason: 'no-network'; readonly details: readonly string[] }

export type { CodeFinding, SupplyReport } from './supply/artifact.ts'
