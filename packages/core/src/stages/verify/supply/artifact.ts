import type { InputBound } from '../../../base/settle.ts'
import type { Finding } from '../../../base/verdict.ts'
import type { FeedFunction } from '../../../domain/board/board.ts'
import type { ControlBox } from '../../../domain/box/control-box.ts'
import type { Cited, Codebook } from '../../../domain/codebook/book.ts'
import type { Printed } from '../../../domain/codebook/printed.ts'
import type { Span } from '../../../domain/wiring/supply-loads.ts'

/** Where practitioners read a rule differently: what each reading asks, and who decides. */
export interface Readings {
  /** The figure of the stricter reading, which is the safe default. */
  readonly strict: number
  readonly lenient: number
  readonly decides: 'authority' | 'designer'
}

/** What a code book says of one thing: figures on both sides stand in `params` as `is` and `may`. */
export interface CodeFinding extends Finding {
  readonly clause: Printed | undefined
  /** Which of the rule's questions on its subject: one answer each. */
  readonly topic: string
  /** Where the survey has what would settle it. */
  readonly asks: readonly string[]
  /** Values for which it holds, whatever else is open. */
  readonly bounds: readonly InputBound[]
  /** It holds, and nothing is left. */
  readonly isTight: boolean
  readonly readings?: Readings | undefined
  /** The book has nothing on it, or nothing that could be sourced. */
  readonly isCovered: boolean
}

/** One piece of the run from the panel to the tub. */
export interface SegmentReport {
  readonly cable: string
  readonly label: string
  readonly from: string
  readonly to: string
  readonly metres: number
  /** What it may carry, least and most over what is open [A]; undefined where the book does not say. */
  readonly carries: { readonly from: number; readonly to: number } | undefined
  readonly findings: readonly CodeFinding[]
}

/** What the tub takes from one line of a circuit [A], over what is known of its loads. */
export interface Demand {
  readonly everything: { readonly from: number; readonly to: number }
  readonly heater: { readonly from: number; readonly to: number }
  /** Everything but the heater. */
  readonly others: { readonly from: number; readonly to: number }
  /** Whether all that is listed says what it takes. */
  readonly isListed: boolean
  /** Whether that is everything: the heater is among it. */
  readonly isKnown: boolean
}

export interface CircuitReport {
  readonly index: number
  readonly breaker: { readonly from: number; readonly to: number } | undefined
  readonly demand: Demand
  /** What the rules count for everything at once [A]: its plate, or the loads where they are all known. */
  readonly draws: { readonly from: number; readonly to: number } | undefined
  readonly segments: readonly SegmentReport[]
  readonly findings: readonly CodeFinding[]
  readonly ways: readonly FeedWay[]
  readonly install: ToInstall
}

/** What an electrician puts in for one circuit, by the plate, the loads and the code book. */
export interface ToInstall {
  /** The least circuit [A]: the plate asks for one, and so does everything at once. */
  readonly least: {
    readonly plate: Span | undefined
    /** By either reading of a load that lasts; equal where nobody differs. */
    readonly load:
      | { readonly strict: number; readonly lenient: number; readonly by: Printed }
      | undefined
    /** The smallest breaker that is sold and does for what is known of both. */
    readonly breaker: number | undefined
  }
  /** The greatest breaker [A]: as the plate allows, and as the run allows over what is open. */
  readonly greatest: { readonly plate: Span | undefined; readonly run: Span | undefined }
  /** The breaker that the conductors and devices below stand behind [A]. */
  readonly breaker: number | undefined
  /** What the box may be set to draw while the breaker stays as it is [A]. */
  readonly limit: Cited<number> | undefined
  /** Of what is laid on the spot. */
  readonly segments: readonly SegmentNeed[]
  readonly neutral: NeutralNeed
  /** The latest trip of the device that protects people [A]. */
  readonly groundFault: Cited<number> | undefined
  /** Along the run. */
  readonly devices: readonly DeviceNeed[]
}

/** The least size of copper, as it is sold. */
export interface SizeNeed {
  /** Where everything that is open is for the best. */
  readonly from: string
  /** Where it is at its worst; undefined where no size does then, or the book does not say. */
  readonly to: string | undefined
  readonly by: Printed
}

export interface SegmentNeed {
  readonly cable: string
  readonly line: SizeNeed | undefined
  readonly earth: SizeNeed | undefined
}

/** Whether the loads need a neutral, and which of them do. */
export interface NeutralNeed {
  readonly needed: 'yes' | 'no' | 'open'
  /** Their labels; none where the circuit has one line, whose return is the neutral. */
  readonly loads: readonly string[]
  readonly arrives: boolean
}

/** A device along the run, and what lands on it. */
export interface DeviceNeed {
  readonly device: string
  readonly label: string
  /** What its enclosure or switch may carry [A]. */
  readonly rated: Span | undefined
  /** Of its ground-fault part [A]; undefined where it has none. */
  readonly trip: Span | undefined
  /** Conductors towards the tub: the terminal where each belongs, and where it was found. */
  readonly lands: readonly {
    readonly function: FeedFunction
    readonly belongs: string | undefined
    readonly found: string | undefined
  }[]
  /** Leads of its own. */
  readonly tails: readonly { readonly colour: string; readonly belongs: string | undefined }[]
}

/** A way to make supply and tub fit each other, the cheapest kind first. */
export interface FeedWay {
  readonly kind: 'keep' | 'set-lower' | 'change-breaker' | 'change-wire'
  /** Whether nothing breaks with it; `open` where something unknown decides. */
  readonly outcome: 'holds' | 'breaks' | 'open'
  /** The breaker then [A]. */
  readonly breaker?: number
  /** What the box must be set to draw at most [A]. */
  readonly limit?: number
  /** Copper, as it is sold. */
  readonly size?: string
  /** What stands against it experts read in two ways. */
  readonly isDisputed: boolean
  /** Rules that stand against it. */
  readonly against: readonly string[]
  /** Rules that break of this circuit and that no way of feeding it mends. */
  readonly besides: readonly string[]
}

/** A box that was chosen for the tub, and what it is set to [A], as its setting is named. */
export interface FittedBox {
  readonly box: ControlBox
  readonly currentLimit?: number
}

export type BookName = Pick<Codebook, 'id' | 'name'>

/** What a code book, the circuit and the survey say of the supply of a tub; no box is needed. */
export interface SupplyReport {
  readonly survey: string
  readonly region: string
  /** Undefined where no book of the region is here. */
  readonly book: BookName | undefined
  readonly circuits: readonly CircuitReport[]
  /** Of the place around the tub. */
  readonly yard: readonly CodeFinding[]
  /** Of the whole house. */
  readonly service: readonly CodeFinding[]
  /** Every finding, danger first. */
  readonly findings: readonly CodeFinding[]
  /** The box whose heater and current limit [A] were counted; undefined where none was given. */
  readonly fitted: { readonly box: string; readonly limit: number | undefined } | undefined
  /** What a person calls each cable, device, load and thing of the place, by its id. */
  readonly names: Readonly<Record<string, string>>
  /** What to ask, each once, what moves most verdicts first. */
  readonly asks: readonly string[]
}
