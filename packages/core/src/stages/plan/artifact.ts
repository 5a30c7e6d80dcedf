import type { Finding } from '../../base/verdict.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import type { JumperSetting, StrapSetting } from '../../domain/landing/positions.ts'
import type { Change, OpenQuestion } from '../match/artifact.ts'

/** Where one load goes. */
export interface Assignment {
  readonly load: string
  readonly place: string
}

/** Something to make or to buy besides the box. */
export interface PlannedPart {
  readonly message:
    | 'adapter'
    | 'blanking-plate'
    | 'ferrules'
    | 'tab-terminals'
    | 'ring-terminals'
    | 'caps'
  readonly subjects: readonly string[]
  readonly params: Readonly<Record<string, string | number>>
}

/** How good a plan is, most important first; smaller is better in every one. */
export interface Score {
  /** Dangers that only an assumption holds off. */
  readonly dangers: number
  /** Warnings, such as of what a reset leaves. */
  readonly warnings: number
  /** Loads of the tub that go without. */
  readonly leftOut: number
  /** Loads of the tub in whose place another one comes; a keypad is not counted. */
  readonly replaced: number
  readonly adapters: number
  /** Modes in which heat is allowed, counted negatively. */
  readonly heatModes: number
  /** The smallest margin of any contact or fuse, counted negatively, in whole per mille. */
  readonly margin: number
  /** Difference of the legs [mA], whole. */
  readonly imbalance: number
  /** What the jumpers carry together [mA], whole: of equal positions the one that sends least through them. */
  readonly bridged: number
  readonly moved: number
  readonly order: string
}

/** What the search did: a plan is best only where it is exhausted or bounded. */
export interface SearchReport {
  readonly considered: number
  readonly solved: number
  readonly boundedOut: number
}

/** Every wire, jumper and electrical setting of one tub on one box, proven. */
export interface WiringPlan {
  readonly survey: string
  readonly box: string
  readonly feed: string
  readonly landing: Landing
  readonly assignments: readonly Assignment[]
  readonly jumpers: readonly JumperSetting[]
  readonly straps: readonly StrapSetting[]
  readonly parts: readonly PlannedPart[]
  /**
   * What has to change at the tub before this plan holds, with the adapters and the plate: what is to
   * be bought. Empty where the tub was planned as it was found.
   */
  readonly changes: readonly Change[]
  /** Conductor ends whose colour misleads where they land. */
  readonly reidentify: readonly string[]
  /** Ends that are capped, and places of the box left unused. */
  readonly capped: readonly string[]
  readonly unusedPlaces: readonly string[]
  /** Ends upstream that were found elsewhere than planned. */
  readonly moved: readonly { readonly end: string; readonly from: string; readonly to: string }[]
  readonly score: Score
  readonly search: SearchReport
}

/** What the search asks of a judge that it neither is nor trusts: some verdict on one landing. */
export interface Judged {
  readonly findings: readonly Finding[]
  readonly holds: boolean
  readonly modes: readonly { readonly heats: boolean }[]
  readonly smallestMargin: number
  readonly imbalance: number
  readonly jumperAmps: number
}

/** Judges one landing; undefined where no verdict can be given. */
export type Judge<Verdict extends Judged> = (landing: Landing) => Verdict | undefined

/** A plan, and what the judge said of it. */
export interface JudgedPlan<Verdict extends Judged> {
  readonly plan: WiringPlan
  readonly verification: Verdict
}

/** Why no landing of a box can so much as be tried. */
export type CannotMessage =
  | 'not-for-system'
  | 'conductor-missing'
  | 'no-setting-low-enough'
  | 'too-few-places'
  | 'volts-not-together'

export type PlanFailure<Verdict extends Judged = Judged> =
  | {
      readonly reason: 'no-plan'
      readonly box: string
      readonly search: SearchReport
      /** What the judge said of the least bad landing tried, if any was. */
      readonly closest: Verdict | undefined
    }
  | { readonly reason: 'limit-reached'; readonly limit: number; readonly search: SearchReport }
  /** The survey leaves open what every landing hangs on: the question that settles it. */
  | { readonly reason: 'open'; readonly box: string; readonly question: OpenQuestion }
  | {
      readonly reason: 'cannot'
      readonly box: string
      readonly message: CannotMessage
      /** Of its sentence: the labels of the loads without a place, where there are too few. */
      readonly params: Readonly<Record<string, string>>
    }
