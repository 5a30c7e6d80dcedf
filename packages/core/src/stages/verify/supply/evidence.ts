import type { Possible } from '../../../base/possible.ts'
import type { Codebook } from '../../../domain/codebook/book.ts'
import type { YardPlace } from '../../../domain/codebook/yard-book.ts'
import type { Region } from '../../../domain/described.ts'
import type { SupplyCircuit } from '../../../domain/supply/circuits.ts'
import type {
  Material,
  RatedTemperature,
  SURROUNDINGS,
  WIRING_METHODS,
} from '../../../domain/supply/run-words.ts'
import type { Cable, SupplyDevice } from '../../../domain/supply/supply.ts'
import type { SupplyAlone } from '../../../domain/wiring/supply-alone.ts'
import type { CODE_EDITIONS, Survey } from '../../survey/artifact.ts'
import type { Demand } from './artifact.ts'

export type CableConductor = Cable['conductors'][number]
export type CodeEdition = (typeof CODE_EDITIONS)[number]

/** One cable of the run, with what it may be. */
export interface Segment {
  readonly cable: Cable
  /** Where the survey has it. */
  readonly at: string
  readonly isLast: boolean
  readonly lines: readonly CableConductor[]
  readonly neutral: CableConductor | undefined
  readonly earth: CableConductor | undefined
  /** Conductors that carry current: the neutral too, where it carries more than a difference. */
  readonly loaded: number
  readonly material: Possible<Material>
  readonly insulation: Possible<RatedTemperature>
  readonly method: Possible<(typeof WIRING_METHODS)[number]>
  readonly where: Possible<(typeof SURROUNDINGS)[number]>
  /** [°C] */
  readonly ambient: Possible<number>
  readonly alongside: Possible<number>
  readonly terminals: Possible<RatedTemperature>
}

export interface CircuitEvidence {
  readonly index: number
  readonly circuit: SupplyCircuit
  /** Where the survey has its breaker. */
  readonly at: string
  readonly breaker: Possible<number>
  readonly segments: readonly Segment[]
  readonly demand: Demand
  /** What the tub takes, everything at once, as a rule asks it [A]. */
  readonly draws: Possible<number>
  /** The motor that takes most [A]; 0 where there is none. */
  readonly largestMotor: Possible<number>
  /** Between the lines of a load that takes two, else to neutral [V]. */
  readonly volts: number
  readonly lineCount: number
}

/** Everything that a rule of the supply may look at: no box. */
export interface SupplyEvidence {
  readonly survey: Survey
  readonly devices: ReadonlyMap<string, SupplyDevice>
  readonly book: Codebook | undefined
  /** What the figures of a place hang on. */
  readonly place: {
    readonly edition: Possible<CodeEdition>
    readonly setting: Possible<YardPlace['setting']>
  }
  readonly circuits: readonly CircuitEvidence[]
  /** The supply with the tub's loads at its end; undefined where two circuits feed the tub. */
  readonly network: () => SupplyAlone | undefined
}

export const isAmerican = (region: Region): boolean => region === 'US' || region === 'CA'

/** Segments that a table can judge: a cord with a moulded end by its own table, where a book has one. */
export const judged = (
  { survey: { region } }: SupplyEvidence,
  { segments }: CircuitEvidence,
): readonly Segment[] => segments.filter(({ cable }) => !cable.moulded || isAmerican(region))

/** Segments that were laid on the spot: a cord with a moulded end came with the tub. */
export const fixed = ({ segments }: CircuitEvidence): readonly Segment[] =>
  segments.filter(({ cable }) => !cable.moulded)
