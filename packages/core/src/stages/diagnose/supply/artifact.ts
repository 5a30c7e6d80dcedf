import type { Entered } from '../../../base/entered.ts'
import type { Known } from '../../../base/known.ts'
import type { Severity } from '../../../base/verdict.ts'
import type { FeedFunction } from '../../../domain/board/board.ts'
import type { Job } from '../../../domain/job.ts'
import type { Situation } from '../../../domain/supply/readings.ts'
import type { LumpedLoad, SupplyPlace, SupplySite } from '../../../domain/wiring/supply-alone.ts'
import type { SupplyFault, SupplyFaultKind } from '../../../domain/wiring/supply-faults.ts'
import type { StructureFailure } from '../../../engines/circuit/compile-network.ts'

/** What hangs on the supply, and when it is on. */
export interface SituatedLoad extends LumpedLoad {
  readonly on: readonly Situation[]
}

export interface VoltsOf {
  readonly kind: 'volts'
  readonly situation: Situation
  readonly between: readonly [FeedFunction, FeedFunction]
}

export interface AmpsOf {
  readonly kind: 'amps'
  readonly situation: Situation
  readonly load: string
}

/** What can be read at the tub. */
export type Measurable = VoltsOf | AmpsOf

/** What was read; a value that is unknown is as if it had not been tried. */
export type MeterReading =
  | (VoltsOf & { readonly value: Known<Entered<'V'>> })
  | (AmpsOf & { readonly value: Known<Entered<'A'>> })

export interface SupplyCircumstances {
  readonly tub: SupplySite['tub']
  /** By their ids in the survey. */
  readonly devices: Job['devices']
  readonly loads: readonly SituatedLoad[]
}

export interface ConditionInput extends SupplyCircumstances {
  readonly readings: readonly MeterReading[]
}

/** From and to, both possible. */
export interface Interval {
  readonly from: number
  readonly to: number
}

/** A fault that every reading allows. */
export interface FittingFault {
  readonly fault: SupplyFault
  /** Where it may sit: no reading at the tub tells these apart. Empty where it sits nowhere. */
  readonly places: readonly SupplyPlace[]
  /** Of a poor joint or neutral: what fits, rounded outwards [Ω]. */
  readonly ohms?: Interval
  /** The source as a share of its nominal volts. */
  readonly source: Interval
  /** What it comes to: a joint of next to nothing is sound, one that lets nothing through is open. */
  readonly amountsTo: SupplyFaultKind
}

/** A reading that lies outside what a fault would make, whatever the rest lets the source be. */
export interface Misfit {
  readonly reading: MeterReading
  /** [V], or [A] */
  readonly predicted: Interval
  /** What the meter's accuracy leaves of what was read. */
  readonly measured: Interval
}

/** A fault that cannot be, and the readings that say so: one, or two that contradict each other. */
export interface ExcludedFault {
  readonly fault: SupplyFault
  readonly places: readonly SupplyPlace[]
  readonly by: readonly Misfit[]
  /** Of a poor joint or neutral: where it comes nearest [Ω]. */
  readonly nearest?: Interval
}

export interface NextReading {
  readonly of: Measurable
  /** How many pairs of what fits it tells apart, and how many pairs there are. */
  readonly tellsApart: number
  readonly pairs: number
}

/** What is dangerous about what was read, or about what fits. */
export interface SupplyDanger {
  readonly reason:
    | 'neutral'
    | 'earth'
    | 'earth-carries-current'
    | 'polarity'
    | 'high-leg'
    | 'joint'
    | 'over-volts'
    | 'neutral-to-earth'
  readonly severity: Severity
  /** Danger stops: switched off until it is mended. Possible: not every fault that fits is so. */
  readonly certainty: 'shown' | 'possible'
  /** The reading that says so. */
  readonly reading?: MeterReading
}

/** What a supply is found to be, from readings at the tub. */
export interface SupplyCondition {
  /** What everything that fits comes to; absent where it does not come to one thing. */
  readonly named?: SupplyFaultKind
  readonly fits: readonly FittingFault[]
  /** With a sound supply: what no reading of volts at the tub can show. */
  readonly neverShown: readonly FittingFault[]
  readonly excluded: readonly ExcludedFault[]
  /** What to read next; absent where it is named or where nothing at the tub tells more. */
  readonly next?: NextReading
  /** Where nothing fits, and a sound supply would, but for the band: the source as a share of nominal. */
  readonly offBand?: Interval
  readonly dangers: readonly SupplyDanger[]
}

export type ConditionFailure =
  | StructureFailure
  | { readonly reason: 'limit-reached'; readonly of: 'loads'; readonly limit: number }
  /** Something is read, or hangs, between conductors that do not both arrive. */
  | { readonly reason: 'not-arriving'; readonly conductor: FeedFunction }
  | { readonly reason: 'no-load'; readonly load: string }
