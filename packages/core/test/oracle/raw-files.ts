import type { CurveName, RawKnown } from './quantities.ts'
import type { SourceLine, SupplySystem } from './source-lines.ts'

/** The files as YAML gives them: only what the oracle reads. */
type Pair = readonly [string, string]

export interface RawTerminal {
  readonly id: string
  readonly node: string
  readonly class: 'mains' | 'earth' | 'low-voltage' | 'sensor'
  readonly rated: string
  readonly conductors?: number
  readonly holds?: { readonly from: string; readonly to: string }
}

export interface RawPart {
  readonly id: string
  readonly kind:
    | 'fuse'
    | 'contact'
    | 'pole'
    | 'switch'
    | 'ground-fault'
    | 'transformer'
    | 'electronics'
  readonly across?: Pair
  readonly rated?: string | { readonly resistive: string; readonly motor?: string }
  readonly role?: 'command' | 'limit'
  readonly rest?: 'open' | 'closed'
  /** What passes while it is open, at the leg volts. */
  readonly leakage?: string
  readonly sums?: readonly string[]
  readonly trip?: { readonly from: string; readonly to: string }
  readonly poweredFrom?: Pair
  readonly primary?: Pair
  readonly secondary?: Pair
  readonly volts?: string | { readonly primary: string; readonly secondary: string }
  readonly isolating?: boolean
  readonly taps?: { readonly jumper: string; readonly volts: Readonly<Record<string, string>> }
  readonly power?: string
}

export interface RawJumper {
  readonly id: string
  readonly positions: readonly { readonly id: string; readonly joins: readonly Pair[] }[]
  readonly factory: string
  readonly rated: string
}

export interface RawConnector {
  readonly id: string
  readonly shape: string
  readonly pins: Readonly<Record<string, string>>
}

export interface RawBoard {
  readonly earth: string
  readonly terminals: readonly RawTerminal[]
  readonly connectors?: readonly RawConnector[]
  readonly parts?: readonly RawPart[]
  readonly jumpers?: readonly RawJumper[]
}

export interface RawDevice {
  readonly id: string
  readonly board: RawBoard
  readonly fedAt: Readonly<Record<string, string>>
  readonly tails?: readonly { readonly id: string; readonly node: string; readonly lands: string }[]
}

export interface RawCircuit {
  readonly id: string
  readonly across: Pair
  readonly amps?: RawKnown
  readonly power?: RawKnown
  readonly powerFactor?: number
}

export interface RawLoad {
  readonly kind: string
  readonly id: string
  readonly volts?: string
  readonly doubleInsulated?: boolean
  readonly leads: readonly {
    readonly id: string
    readonly function: string
    readonly size: string
  }[]
  readonly circuits?: readonly RawCircuit[]
  readonly straps?: {
    readonly found: string
    readonly positions: Readonly<
      Record<string, { readonly volts: string; readonly amps: Readonly<Record<string, RawKnown>> }>
    >
  }
  readonly plug?: { readonly shape: string; readonly pins: Readonly<Record<string, string>> }
  readonly movesWaterThroughHeater?: readonly string[]
  readonly curve?: CurveName
  readonly place?: string
}

export interface RawSurvey {
  readonly id: string
  readonly region: string
  readonly supply: {
    readonly system: SupplySystem
    readonly frequency: string
    readonly breaker: RawKnown
    readonly sourceImpedance?: string
    readonly feeder?: { readonly length: string; readonly size: string }
    readonly turnable?: boolean
    readonly devices: readonly {
      readonly id: string
      readonly device: string
      /** Of a second circuit: the line of the source, by the node function that it arrives at. */
      readonly fedBy?: Readonly<Partial<Record<SourceLine, SourceLine>>>
      readonly breaker?: RawKnown
    }[]
    readonly cables: readonly {
      readonly id: string
      readonly from: string
      readonly to: string
      readonly length: string
      readonly moulded?: boolean
      readonly conductors: readonly {
        readonly id: string
        readonly function: string
        readonly size: string
        readonly from: string
        readonly to?: string
      }[]
    }[]
  }
  readonly loads: readonly RawLoad[]
}

export interface RawFeed {
  readonly id: string
  readonly system: string
  readonly lands: Readonly<Record<string, string>>
  readonly heatYieldsTo?: readonly string[]
  readonly assumes?: Readonly<Record<string, string>>
  readonly assumesOn?: Readonly<Record<string, SourceLine>>
}

export interface RawProfile {
  readonly id: string
  readonly commands: readonly string[]
  readonly heatsWith: readonly string[]
  readonly follows?: Readonly<Record<string, string>>
}

export interface RawSensor {
  readonly id: string
  readonly terminals: Pair
  readonly curve: CurveName
  readonly reads: string
  readonly duty: 'control' | 'limit' | 'flow-inlet' | 'flow-outlet'
}

export interface RawBox {
  readonly id: string
  readonly largestBreaker: string
  readonly board: RawBoard
  readonly feeds: readonly RawFeed[]
  readonly places: readonly {
    readonly id: string
    readonly takes: readonly string[]
    readonly lands: Readonly<Record<string, string>>
    readonly commands?: Readonly<Record<string, string>>
  }[]
  readonly commands: readonly {
    readonly id: string
    readonly closes?: readonly string[]
    readonly opens?: readonly string[]
  }[]
  readonly exclusive?: readonly (readonly string[])[]
  readonly heat: string
  readonly profiles: readonly RawProfile[]
  readonly currentLimit: { readonly offered: readonly string[]; readonly names: 'draw' | 'breaker' }
  /** What the box falls back to by itself; what is left out stays. */
  readonly resetsTo?: { readonly profile?: string; readonly currentLimit?: string }
  readonly sensors?: readonly RawSensor[]
  readonly supplied?: readonly RawLoad[]
}

/** A landing as its file gives it. */
export interface RawLanding {
  readonly ends: Readonly<Record<string, string>>
  readonly jumpers: Readonly<Record<string, string>>
  readonly straps: Readonly<Record<string, string>>
  readonly settings: { readonly profile: string; readonly currentLimit: string }
  readonly adapters?: Readonly<Record<string, string>>
}

/** What a landing cannot say: which curve a probe in the hand has. */
export interface Overrides {
  readonly probeCurves?: Readonly<Record<string, CurveName>>
}
