import type { ConductorSize } from '../conductor.ts'
import type { BreakerType, Material, RatedTemperature, WiringMethod } from '../supply/run-words.ts'
import type { Printed } from './printed.ts'

/** A figure with the place where it is printed. */
export interface Cited<Value> {
  readonly value: Value
  readonly by: Printed
}

/** A conductor where it lies. */
export interface LaidConductor {
  readonly size: ConductorSize
  readonly material: Material
  readonly insulation: RatedTemperature
  readonly method: WiringMethod
  /** Of the air around it [°C]. */
  readonly ambient: number
  /** Conductors of its own circuit that carry current: 2 or 3. */
  readonly loaded: number
  /** Others that carry current, in the same conduit or bunch. */
  readonly alongside: number
  /** What the terminals at its ends are made for. */
  readonly terminals: RatedTemperature
}

/** What a conductor may carry where it lies, and how that comes about. */
export interface Ampacity {
  readonly amps: number
  /** As printed, before any factor [A]. */
  readonly printed: number
  readonly ambientFactor: number
  readonly groupFactor: number
  readonly limitedBy: 'conductor' | 'terminals' | 'sheath'
  readonly by: Printed
}

/** What an earth conductor is sized by. */
export interface EarthAsk {
  readonly breaker: number
  readonly material: Material
  readonly line: ConductorSize
  readonly method: WiringMethod
}

/** Greatest loop through line and earth, hot. */
export interface FaultLimits {
  /** Behind a breaker [A], by its curve [Ω]. */
  readonly behindBreaker: (breaker: number, type: BreakerType) => Cited<number> | undefined
  /** Behind a residual-current device of so many amps [Ω]; with an electrode, the electrode's. */
  readonly behindDevice: (amps: number) => Cited<number>
  /** Above it an electrode may not stay what it is [Ω]; undefined where the book does not say. */
  readonly steadyElectrode: Cited<number> | undefined
}

/**
 * One code book, as far as it could be sourced.
 *
 * Whatever is not in it answers undefined: "not covered here, ask". No book stands in for another.
 */
export interface Codebook {
  readonly id: 'nec' | 'ce-code' | 'bs-7671' | 'hd-60364' | 'as-nzs'
  /** As it is called: `NEC`. */
  readonly name: string
  /** Standard ratings of breakers, the smallest first [A]. */
  readonly ratings: Cited<readonly number[]>
  readonly ampacity: (laid: LaidConductor) => Ampacity | undefined
  /** The greatest breaker before a conductor that may carry so much [A]. */
  readonly greatestBreaker: (
    amps: number,
    laid: Pick<LaidConductor, 'size' | 'material'>,
  ) => Cited<number> | undefined
  /** What a load that lasts hours counts for, as a factor; and whether experts differ on it for tubs. */
  readonly lasting: Cited<number> & { readonly isDisputed: boolean }
  /**
   * What conductors carry of the largest motor over its own amps, as a share, even where nothing lasts;
   * undefined where that is no rule.
   */
  readonly largestMotor: Cited<number> | undefined
  /** The least earth conductor. */
  readonly earth: (ask: EarthAsk) => Cited<ConductorSize> | undefined
  /** The least neutral between two lines, which bears a fault as an earth does. */
  readonly neutral: (ask: EarthAsk) => Cited<ConductorSize> | undefined
  /** Where the earth conductor of a tub has to be copper. */
  readonly copperEarth: Printed | undefined
  /**
   * The least earth conductor that bears a fault of so many amps for so long [mm²], by its heat; undefined
   * where the book asks for its table alone.
   */
  readonly byFaultHeat:
    | ((amps: number, seconds: number, insulation: RatedTemperature) => Cited<number>)
    | undefined
  /** The most that may be lost on the way, as a share of the nominal volts. */
  readonly drop: (Cited<number> & { readonly isLaw: boolean }) | undefined
  /** When a fault to earth is off in time; undefined where that is no rule, or was not sourced. */
  readonly fault: FaultLimits | undefined
  /** The latest trip of the device that protects people in the tub [A]. */
  readonly groundFault: Cited<number> | undefined
}

/** The smallest standard rating at or above a current; undefined past the list. */
export const nextRating = ({ ratings }: Codebook, amps: number): number | undefined =>
  ratings.value.find(each => amps <= each * (1 + 1e-9))

/** The next standard rating below a current or at it. */
export const lowerRating = ({ ratings }: Codebook, amps: number): number | undefined =>
  ratings.value.findLast(each => each <= amps * (1 + 1e-9))
