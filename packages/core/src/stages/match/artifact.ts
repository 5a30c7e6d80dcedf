import type { CurveName, LoadKind } from '../../domain/load/load.ts'

/** One thing that the tub asks of a box, and how a box falls short of it. */
export interface Shortfall {
  readonly requirement: string
  readonly message: string
  /** The load, or what else it is about. */
  readonly subjects: readonly string[]
  readonly params: Readonly<Record<string, string | number>>
}

/** Something that has to be found out before the box can be said to serve. */
export interface OpenQuestion {
  readonly message: string
  readonly subjects: readonly string[]
  readonly params: Readonly<Record<string, string | number>>
}

export interface BoxMatch {
  readonly box: string
  readonly label: string
  readonly maker: string
  readonly verdict: 'may-serve' | 'cannot'
  /** Every reason why it cannot, not the first alone. */
  readonly shortfalls: readonly Shortfall[]
  readonly open: readonly OpenQuestion[]
  /** Loads whose plug fits no place that could take them. */
  readonly adapters: readonly string[]
  /** The cheapest changes at the tub with which it would serve; only where they were asked for. */
  readonly changes?: BoxChanges
}

/** A requirement of this tub, by id, with what a person is told of it. */
export interface Requirement {
  readonly id: string
  readonly message: string
  readonly subjects: readonly string[]
  readonly params: Readonly<Record<string, string | number>>
}

export interface MatchSet {
  readonly survey: string
  readonly boxes: readonly BoxMatch[]
  /**
   * Only where no box may serve: requirements that no box meets together, though it takes every
   * one of them to rule all boxes out.
   */
  readonly conflict: readonly Requirement[]
}

/** By what a load is chosen when another one takes its place: only what has to differ. */
export interface LoadSpec {
  /** Of its plate [V]. */
  readonly volts?: number
  /** Of its most loaded circuit, at most [A]. */
  readonly amps?: number
  readonly current?: 'ac' | 'dc'
  readonly curve?: CurveName
  readonly earthed?: boolean
}

interface OfLoad {
  /** Of the survey; the keypad's hole counts to `keypad`. */
  readonly load: string
  readonly label: string
  /** In the relative units of the cost table. */
  readonly cost: number
}

/** Another load of the same kind in the place of the tub's own. */
export interface Replacement extends OfLoad {
  readonly kind: 'replace'
  readonly of: LoadKind
  readonly from: LoadSpec
  readonly to: LoadSpec
}

/** Heater, probe or keypad of the carton in the place of the tub's own. */
export interface FromCarton extends OfLoad {
  readonly kind: 'from-carton'
  readonly of: LoadKind
  /** What a person calls the one of the box. */
  readonly to: string
}

export interface LeftOut extends OfLoad {
  readonly kind: 'leave-out'
}

export interface Adapter extends OfLoad {
  readonly kind: 'adapter'
  /** The plug found; bare leads have none. */
  readonly plug?: string
}

/** Sizes of the hole found and of what the new keypad covers [m]. */
export interface BlankingPlate extends OfLoad {
  readonly kind: 'blanking-plate'
  readonly width: number
  readonly height: number
  readonly ownWidth: number
  readonly ownHeight: number
}

/** One thing that becomes otherwise at the tub. Never the supply. */
export type Change = Replacement | FromCarton | LeftOut | Adapter | BlankingPlate

/** Changes with which a box would serve. */
export interface ChangeSet {
  /** Without any one of them it cannot. */
  readonly changes: readonly Change[]
  /** What it asks for then: adapters, its keypad for another maker's, a plate for the hole. */
  readonly along: readonly Change[]
  /** Of both together. */
  readonly cost: number
}

/** Sets of changes looked at: a set is cheapest only where every cheaper one was. */
export interface ChangeSearch {
  readonly considered: number
}

/** With what changes at the tub a box would serve, or why none are named. */
export type BoxChanges =
  | (ChangeSet & {
      readonly outcome: 'found'
      readonly search: ChangeSearch
      /** `waits`: every plan hangs on an answer that the survey leaves open. */
      readonly proof: 'not-tried' | 'holds' | 'waits'
    })
  | {
      /** What no change at the loads mends: the supply's own shortfalls, and others beside them. */
      readonly outcome: 'out-of-reach'
      readonly supply: readonly Shortfall[]
      readonly others: readonly Shortfall[]
    }
  | {
      /** Every set was looked at or shown to fail; what no change mends by itself, if that is why. */
      readonly outcome: 'none'
      readonly unmended: readonly Shortfall[]
      readonly search: ChangeSearch
    }
  /** By requirements it would serve with some sets, and not one of them has a plan that holds. */
  | { readonly outcome: 'no-plan'; readonly tried: number; readonly search: ChangeSearch }
  /** Stopped: of sets looked at, of sets planned, or of landings solved for one of them. */
  | {
      readonly outcome: 'limit-reached'
      readonly of: 'sets' | 'plans' | 'solves'
      readonly limit: number
      readonly search: ChangeSearch
    }
