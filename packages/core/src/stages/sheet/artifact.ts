import type { Finding, Severity } from '../../base/verdict.ts'
import type { FeedFunction, LeadFunction, Terminal } from '../../domain/board/board.ts'
import type { Colour, Region } from '../../domain/described.ts'
import type { LoadKind } from '../../domain/load/load.ts'
import type { Change, OpenQuestion } from '../match/artifact.ts'
import type { Ladder, LoadSheetRow } from './ladder/artifact.ts'
import type { SheetText } from './messages.ts'

/** What a wire does: its line in the drawing follows from it, so that colour never speaks alone. */
export type WireRole =
  | 'leg1'
  | 'leg2'
  | 'leg3'
  | 'neutral'
  | 'earth'
  | 'hot'
  | 'low'
  | 'return'
  | 'signal'

/** One end of a wire that somebody lands. */
export interface WireEnd {
  readonly end: string
  /** The panel it belongs to: `box`, or a device of the supply. */
  readonly panel: string
  readonly panelLabel: string
  /** Absent where the end lands nowhere. */
  readonly terminal?: string
  readonly terminalLabel?: string
  readonly fixing?: SheetText
}

/** One conductor of the job, by the number that drawing, table and label share. */
export interface SheetWire {
  readonly number: number
  readonly id: string
  readonly kind: 'lead' | 'cable' | 'tail'
  /** The load, cable or device it belongs to. */
  readonly owner: string
  readonly function: LeadFunction | FeedFunction
  readonly functionText: SheetText
  readonly role: WireRole
  readonly colour: Colour
  /** The letters of IEC 60757. */
  readonly letters: string
  readonly size: string
  /** Nearer the panel first; a lead has one. */
  readonly ends: readonly WireEnd[]
  readonly reidentify: boolean
  readonly notes: readonly SheetText[]
}

/** The wires of one cable, device tail or load, as the table groups them. */
export interface WireGroup {
  readonly owner: string
  readonly title: SheetText
  readonly plug: SheetText | undefined
  readonly wires: readonly SheetWire[]
}

export interface PanelTerminal {
  readonly id: string
  readonly label: string
  readonly kind: Terminal['kind']
  readonly class: Terminal['class']
  /** From the upper left corner of the panel [mm]. */
  readonly x: number
  readonly y: number
  readonly wires: readonly number[]
  /** Numbers of the open points about it. */
  readonly points: readonly number[]
}

export interface PanelJumper {
  readonly id: string
  readonly label: string
  /** Absent where the maker does not say where it sits. */
  readonly at?: { readonly x: number; readonly y: number }
  readonly positions: readonly { readonly id: string; readonly label: string }[]
  readonly from: string
  readonly to: string
  readonly moves: boolean
  readonly points: readonly number[]
}

/** What a panel's wires lead to: a load, the far end of a cable, the device itself. */
export interface PanelPartner {
  readonly id: string
  readonly label: SheetText | string
  readonly symbol: LoadKind | 'box' | 'cable' | 'tail'
  readonly pins: readonly {
    readonly wire: number
    readonly terminal: string
    readonly text: SheetText
    /** Where the wire's other end lands, where it has one. */
    readonly far?: string
  }[]
  readonly points: readonly number[]
}

/** A board as the eye finds it, and what leads to it. Measures in millimetres. */
export interface SheetPanel {
  readonly id: string
  readonly label: string
  readonly width: number
  readonly height: number
  readonly terminals: readonly PanelTerminal[]
  readonly jumpers: readonly PanelJumper[]
  readonly fuses: readonly { readonly id: string; readonly rated: string }[]
  readonly partners: readonly PanelPartner[]
}

/** Something open, assumed or found: on top of the sheet, and marked by its number below. */
export interface OpenPoint {
  readonly number: number
  readonly severity: Severity
  readonly says:
    | { readonly kind: 'finding'; readonly finding: Finding }
    | { readonly kind: 'question'; readonly question: OpenQuestion }
    | { readonly kind: 'change'; readonly change: Change }
    | { readonly kind: 'text'; readonly text: SheetText }
  readonly subjects: readonly string[]
}

export interface SheetJumper {
  readonly id: string
  readonly label: string
  readonly positions: readonly { readonly id: string; readonly label: string }[]
  readonly from: string
  readonly to: string
  readonly fromLabel: string
  readonly toLabel: string
  readonly moves: boolean
}

export interface SheetStrap {
  readonly load: string
  readonly label: string
  readonly from: string
  readonly to: string
  readonly moves: boolean
}

export interface SheetSetting {
  readonly name: SheetText
  readonly to: string
  readonly factory: string
  readonly entered: string
  readonly moves: boolean
  /** What a reset or power cut puts it back to; absent where it stays. */
  readonly fallsTo?: string
}

interface Band {
  readonly low: number
  readonly nominal: number
  readonly high: number
}

/** What the meter should read at one load. */
export interface MeterRow {
  readonly load: string
  readonly label: string
  /** The output that runs it; absent where it is always on. */
  readonly command: string | undefined
  readonly terminals: string
  readonly volts: Band
  /** Absent where the draw is not known. */
  readonly amps: Band | undefined
  readonly unknown: SheetText | undefined
}

/** Loads that may run together, none of which could be added to. */
export interface TogetherRow {
  readonly commands: readonly string[]
  readonly heats: boolean
  /** What is taken from each line, in the order of the sheet's `lines`. */
  readonly lineAmps: readonly number[]
}

/** A reading to be written down, beside what it should be. */
export interface Reading {
  readonly what: SheetText
  readonly expected: SheetText | undefined
  readonly unit: 'V' | 'A' | 'Ω' | 'kΩ' | '°' | 's' | ''
}

export type StepName =
  | 'lock'
  | 'photo'
  | 'remove'
  | 'mount'
  | 'land'
  | 'jumpers'
  | 'relief'
  | 'cold'
  | 'supply'
  | 'fill'
  | 'power'
  | 'settings'
  | 'outputs'
  | 'loads'
  | 'keypad'
  | 'protect'
  | 'close'
  | 'mend'

export interface SheetStep {
  readonly name: StepName
  readonly title: SheetText
  readonly caution: { readonly severity: Severity; readonly text: SheetText }
  /** Normally work for a licensed person in this region. */
  readonly licensed: boolean
  /** Each with a box to tick. */
  readonly actions: readonly SheetText[]
  readonly readings: readonly Reading[]
  /** What to do where a reading is not what it should be. */
  readonly outside: readonly SheetText[]
}

/** Everything that the printed sheet says, without one sentence. */
export interface JobSheet {
  readonly id: string
  readonly head: {
    readonly tub: string
    readonly box: string
    readonly maker: string
    readonly region: Region
    readonly holds: boolean
    readonly lines: readonly SheetText[]
  }
  readonly stops: readonly SheetText[]
  readonly licence: readonly SheetText[]
  readonly open: readonly OpenPoint[]
  /** Notes of the survey and of the box, as they were written. */
  readonly remarks: readonly SheetText[]
  /** The box first, then the supply's devices. */
  readonly panels: readonly SheetPanel[]
  readonly ladder: Ladder
  readonly wires: readonly WireGroup[]
  readonly loadSheet: readonly LoadSheetRow[]
  readonly jumpers: readonly SheetJumper[]
  readonly straps: readonly SheetStrap[]
  readonly settings: readonly SheetSetting[]
  readonly afterReset: SheetText | undefined
  readonly meter: readonly MeterRow[]
  /** The lines of the supply, by name. */
  readonly lines: readonly SheetText[]
  readonly together: readonly TogetherRow[]
  readonly heat: readonly SheetText[]
  readonly liveWhenOff: readonly string[]
  /** What stands in the lid besides; absent where the list says all. */
  readonly lidNote: SheetText | undefined
  readonly tools: readonly SheetText[]
  readonly parts: readonly SheetText[]
  /** What changes at the tub before the plan holds: to buy, to take out of the carton, to leave out. */
  readonly changes: readonly Change[]
  readonly steps: readonly SheetStep[]
}
