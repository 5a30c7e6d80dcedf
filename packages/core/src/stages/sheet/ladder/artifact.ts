import type { SheetText } from '../messages.ts'

/** Whose symbols: two bars for a contact and a zigzag for a resistor, or those of IEC 60617. */
export type LadderStyle = 'american' | 'iec'

export type LadderSymbol =
  | 'fuse'
  | 'contact'
  | 'contactor'
  | 'triac'
  | 'limit'
  | 'pole'
  | 'switch'
  | 'jumper'
  | 'motor'
  | 'element'
  | 'lamp'
  | 'apparatus'
  | 'probe'
  | 'primary'
  | 'secondary'
  | 'electronics'
  | 'ground-fault'

/**
 * Where on a rung: columns are counted from the rail of their own side, so that what lies behind
 * one fuse stands under each other. `lead` is the wire of a load, next to it.
 */
export type LadderZone = 'left' | 'left-lead' | 'main' | 'right-lead' | 'right'

/** A place between two columns where a piece of copper may run from rung to rung. */
export interface LadderGap {
  readonly side: 'left' | 'right'
  /** Columns between it and the rail of its side; `lead` is between a load and its wire. */
  readonly depth: number | 'lead'
}

interface Placed {
  /** The element of the proven network that it is. */
  readonly id: string
  readonly zone: LadderZone
  readonly column: number
  /** The copper at its left and at its right. */
  readonly nodes: readonly [string, string]
  /** Whether its own first end stands at the right. */
  readonly isTurned: boolean
}

export interface LadderPart extends Placed {
  readonly kind: 'part'
  readonly symbol: LadderSymbol
  /** Its reference designation, with the pole or circuit where it has several. */
  readonly name: string
  /** Rating, position, speed: what stands at the symbol. */
  readonly note: SheetText | string | undefined
  /** A contact that is closed with nothing commanded. */
  readonly restsClosed: boolean
}

export interface LadderWire extends Placed {
  readonly kind: 'wire'
  readonly number: number
  /** The terminals at its left and right ends; a lead has none at its load. */
  readonly terminals: readonly [string | undefined, string | undefined]
}

/** A place that nothing is plugged into: two terminals with nothing between. */
export interface LadderSpare extends Omit<Placed, 'id'> {
  readonly kind: 'spare'
  readonly terminals: readonly [string | undefined, string | undefined]
}

export type LadderStep = LadderPart | LadderWire | LadderSpare

/**
 * Where a rung begins or ends: at a rail, at copper that another rung shares, nowhere, or at copper
 * that is drawn elsewhere: that rung is then named.
 */
export interface LadderEnd {
  readonly kind: 'rail' | 'joint' | 'open' | 'elsewhere'
  readonly node: string
  /** Of the rung where that copper is drawn. */
  readonly rung?: number
  /** The terminal at an open end. */
  readonly terminal?: string
}

/** A conductor of a load that is in no circuit of it: its earth, a data line. */
export interface LadderExtra {
  readonly id: string
  readonly number: number
  readonly terminal: string | undefined
  readonly node: string
  readonly isEarth: boolean
}

export interface LadderRung {
  readonly number: number
  readonly from: LadderEnd
  readonly to: LadderEnd
  /** From left to right. */
  readonly steps: readonly LadderStep[]
  /** What stands beside it: the load and what runs it. */
  readonly says: readonly SheetText[]
  readonly extras: readonly LadderExtra[]
}

export interface LadderRail {
  readonly node: string
  readonly name: SheetText
  readonly sides: readonly ('left' | 'right')[]
}

export interface LadderSection {
  readonly id: string
  readonly title: SheetText
  /** Rails from top to bottom; in a section without, each end has its flag. */
  readonly hasRails: boolean
  readonly rails: readonly LadderRail[]
  readonly rungs: readonly LadderRung[]
  /** Copper that more than one rung is joined to, and where it runs. */
  readonly joints: readonly { readonly node: string; readonly gap: LadderGap }[]
  readonly apparatus: readonly LadderApparatus[]
}

/** Poles that move together, and what watches the sum of their currents; by ids of elements. */
export interface LadderApparatus {
  readonly name: string
  readonly parts: readonly string[]
  readonly watches: readonly { readonly name: string; readonly parts: readonly string[] }[]
}

/** A line of the table that says what each designation is. */
export interface LadderDevice {
  readonly name: string
  readonly what: SheetText
  readonly rating: string
  /** What the board itself calls it, where that is another name. */
  readonly own: string
  readonly terminals: readonly string[]
  /** Rungs that it is on. */
  readonly rungs: readonly number[]
}

/** The circuit that was proven, as rungs between rails. */
export interface Ladder {
  readonly style: LadderStyle
  readonly sections: readonly LadderSection[]
  readonly devices: readonly LadderDevice[]
}

/** One line a load, for the lid of the box. */
export interface LoadSheetRow {
  readonly load: string
  readonly label: string
  readonly place: string | undefined
  /** Of the plate, as strapped [V]. */
  readonly volts: number
  /** Plate amps, circuit by circuit. */
  readonly amps: readonly { readonly circuit: SheetText | undefined; readonly amps: SheetText }[]
  readonly leads: readonly {
    readonly wire: number
    readonly terminal: string | undefined
    readonly letters: string
    readonly functionText: SheetText
  }[]
  readonly strap: string | undefined
  readonly jumpers: readonly { readonly id: string; readonly position: string }[]
  readonly fuses: readonly { readonly name: string; readonly rating: string }[]
  /** Held to their figure for a motor where it is one. */
  readonly contacts: readonly { readonly name: string; readonly rating: string }[]
  readonly commands: readonly string[]
  readonly isAlwaysOn: boolean
  readonly liveWhenOff: boolean
}
