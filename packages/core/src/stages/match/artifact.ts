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
