import type {
  BoxMatch,
  ConditionFailure,
  Finding,
  JobSheet,
  LiveState,
  MatchSet,
  Outcome,
  ProofFailure,
  Requirement,
  SupplyCondition,
  SupplyReport,
  Trip,
} from '@tubwright/core'
import type { PhotoPage, RunTold, SupplyNotice } from '@tubwright/documents'
import type { Draft, LocatedDiagnostic, LocatedFinding, WireLanding } from '@tubwright/formats'
import type { Language } from '@tubwright/words'

/** A survey as the record holds it: any field may be missing or unknown. */
export type Document = Readonly<Record<string, unknown>>

/** Everything that a tub can be matched with, as texts: a worker reads them once. */
export interface ShelfTexts {
  readonly boxes: readonly string[]
  readonly devices: readonly string[]
}

/** A supply device as the survey chooses it. */
export interface DeviceChoice {
  readonly id: string
  readonly label: string
  readonly note?: string
  /** What arrives at it from the panel. */
  readonly fedAt: readonly string[]
  /** What goes on from it, and the terminal where it belongs. */
  readonly lands: Readonly<Record<string, string>>
  /** The terminal on its supply side for what arrives; none where it can only stand first. */
  readonly arrives: Readonly<Record<string, string>>
  readonly terminals: readonly { readonly id: string; readonly label: string }[]
}

/** What a box on the shelf says of itself in a list. */
export interface BoxChoice {
  readonly id: string
  readonly label: string
  readonly maker: string
  readonly feeds: readonly string[]
}

export interface ShelfView {
  readonly boxes: readonly BoxChoice[]
  readonly devices: readonly DeviceChoice[]
  /** Shapes of plugs that some socket on the shelf takes. */
  readonly plugs: readonly string[]
  /** Texts that cannot be used, and why. */
  readonly refused: readonly {
    readonly id: string
    readonly diagnostics: readonly LocatedDiagnostic[]
  }[]
}

/** A plan in a list: enough to choose by. */
export interface PlanLine {
  readonly box: string
  readonly label: string
  readonly holds: boolean
  readonly isProvided: boolean
  readonly dangers: number
  readonly warnings: number
  readonly adapters: number
  readonly changed: number
  readonly margin: number
  readonly landing: WireLanding
}

export interface Matched {
  readonly match: Omit<MatchSet, 'boxes' | 'conflict'> & {
    readonly boxes: readonly BoxMatch[]
    readonly conflict: readonly Requirement[]
  }
  readonly plans: readonly PlanLine[]
  readonly failures: readonly { readonly box: string; readonly failure: ProofFailure }[]
  /** Boxes that nobody has described: all in them is as they were begun. */
  readonly madeUp: readonly string[]
}

/** A landing judged, with all that the screens draw of it. */
export interface Judged {
  readonly holds: boolean
  readonly findings: readonly Finding[]
  readonly proof: {
    readonly modes: number
    readonly transitions: number
    readonly solves: number
    readonly worstKcl: number
    readonly worstPower: number
  }
  readonly landing: WireLanding
  /** What a person calls the commands of the box. */
  readonly commandLabels: Readonly<Record<string, string>>
  readonly boxLabel: string
}

/** A landing to be looked at: the sheet without a sentence, each board drawn, each mode solved. */
export interface Wired extends Judged {
  readonly sheet: JobSheet
  /** Each panel of the sheet as SVG, by its id. */
  readonly drawings: Readonly<Record<string, string>>
  /** Modes the box can be in, all-off first. */
  readonly states: readonly (readonly string[])[]
  /** Terminals that each end may be put on. */
  readonly places: Readonly<
    Record<string, readonly { readonly id: string; readonly label: string }[]>
  >
}

/** What would happen if a landing were powered: said at once, without bounds, sheet or drawing. */
export interface Verdict {
  readonly holds: boolean
  readonly findings: readonly Finding[]
  /** What clears the supply with everything off, and which fuses and circuits open then. */
  readonly trip?: Trip
  readonly blown: readonly Trip[]
  readonly opened: readonly Trip[]
}

/** What feeds a tub, judged, with all that a screen draws of it. */
export interface JudgedSupply {
  readonly report: SupplyReport
  /** What each thing of the run is, as the drawing says it. */
  readonly told: RunTold
  /** As SVG, by what is drawn; a drawing that there is nothing for is not there. */
  readonly drawings: { readonly run?: string; readonly yard?: string }
  /** What the readings at the tub say; absent where none were taken. */
  readonly condition?: Outcome<SupplyCondition, ConditionFailure>
}

export interface Linted {
  readonly kind?: string
  readonly id?: string
  readonly diagnostics: readonly LocatedDiagnostic[]
  readonly findings: readonly LocatedFinding[]
  /** The board as it is described, where there is one to draw. */
  readonly drawing?: string
}

/** A landing on a box, of a tub. */
export interface OfLanding {
  readonly document: Document
  readonly box: string
  readonly landing: WireLanding
}

/** The supply of a tub, in words. */
export interface OfSupply {
  readonly document: Document
  readonly language: Language
  /** The plan that was taken: its box counts, as it is set. */
  readonly taken?: { readonly box: string; readonly landing: WireLanding }
}

/** Each question to the core, with what is asked and what is answered. */
export interface Questions {
  readonly shelf: { readonly asks: ShelfTexts; readonly answers: ShelfView }
  readonly draft: {
    readonly asks: { readonly document: Document }
    readonly answers: Omit<Draft, 'survey'> & { readonly isSurvey: boolean }
  }
  readonly supply: { readonly asks: OfSupply; readonly answers: JudgedSupply }
  /** The same summed up, for screens that are about something else. */
  readonly notice: { readonly asks: OfSupply; readonly answers: SupplyNotice }
  /** One page for whoever wires the supply. */
  readonly electrician: {
    readonly asks: OfSupply & {
      /** The day it is made on, as a person writes it. */
      readonly on: string
    }
    readonly answers: { readonly html: string }
  }
  readonly match: {
    readonly asks: {
      readonly document: Document
      readonly withChanges: boolean
      readonly box?: string
    }
    readonly answers: Matched
  }
  readonly judge: { readonly asks: OfLanding; readonly answers: Judged }
  readonly verdict: { readonly asks: OfLanding; readonly answers: Verdict }
  readonly wired: {
    readonly asks: OfLanding & {
      readonly language: Language
      /** The plan whose numbers the wires keep: somebody has labelled them by it. */
      readonly planned?: WireLanding
    }
    readonly answers: Wired
  }
  readonly live: {
    readonly asks: OfLanding & { readonly on: readonly string[] }
    readonly answers: LiveState
  }
  readonly print: {
    readonly asks: OfLanding & {
      readonly language: Language
      readonly part?: string
      readonly isAsBuilt?: boolean
      /** The plan by which the wires were labelled. */
      readonly planned?: WireLanding
      readonly photos?: readonly PhotoPage[]
    }
    readonly answers: { readonly html: string }
  }
  readonly lint: {
    readonly asks: { readonly text: string; readonly language: Language }
    readonly answers: Linted
  }
  readonly yaml: {
    readonly asks: { readonly document: Document }
    readonly answers: { readonly text: string }
  }
  readonly readYaml: {
    readonly asks: { readonly text: string }
    readonly answers: {
      readonly document?: Document
      readonly diagnostics: readonly LocatedDiagnostic[]
    }
  }
}

export type Question = keyof Questions

/** Why an answer could not be given: the survey is open, or something failed that should not. */
export interface Refusal {
  readonly reason: 'not-a-survey' | 'no-such-box' | 'no-network' | 'fault'
  readonly detail: string
}

export interface Request<Asked extends Question = Question> {
  readonly id: number
  readonly question: Asked
  readonly asks: Questions[Asked]['asks']
}

export type Reply =
  | { readonly id: number; readonly kind: 'progress'; readonly detail: string }
  | { readonly id: number; readonly kind: 'answer'; readonly answers: unknown }
  | { readonly id: number; readonly kind: 'refusal'; readonly refusal: Refusal }
