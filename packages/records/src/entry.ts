import type { Json } from './json.ts'
import type { Path } from './path.ts'

/** The store that wrote it, then its place among all that this store wrote, from 1. */
export type EntryId = `${string}:${number}`

/** How much of each store a log held without a hole: all of 1 to the counter. */
export type Seen = Readonly<Record<string, number>>

/** What an entry does. Readings, ticks, photos and red stops are paths like any other. */
export type Act =
  | { readonly do: 'set'; readonly path: Path; readonly value: Json }
  | { readonly do: 'clear'; readonly path: Path }
  | { readonly do: 'add'; readonly path: Path }
  | { readonly do: 'withdraw'; readonly path: Path }
  | { readonly do: 'restore'; readonly path: Path }
  /** Somebody looked at every variant of a forked id; what saw this may decide between them. */
  | { readonly do: 'settle'; readonly fork: EntryId; readonly variants: readonly string[] }

/** An act of a kind, or in a form, that this version cannot read: kept as it came. */
export interface StrangeAct {
  readonly do?: Json
  readonly [key: string]: Json | undefined
}

/** One line of a job's record, never changed. Further fields of newer versions ride along. */
export interface Entry {
  /** `entry/1` and so on; the fields below never change their meaning, whatever the number. */
  readonly schema: string
  readonly id: EntryId
  readonly author: string
  /** Time of the device, ISO: shown, never compared. */
  readonly at: string
  readonly seen: Seen
  readonly act: Act | StrangeAct
}

export const idOf = (store: string, counter: number): EntryId => `${store}:${counter}`

export const storeOf = (id: EntryId): string => id.slice(0, id.lastIndexOf(':'))

export const counterOf = (id: EntryId): number => +id.slice(id.lastIndexOf(':') + 1)

/** The number of the form an entry is written in. */
export const levelOf = (entry: Entry): number => Number(entry.schema.slice('entry/'.length))

/** What a version vector says of one store, 0 for nothing; safe from inherited names. */
export function seenOf(seen: Seen, store: string): number {
  const counter = seen[store]
  return typeof counter === 'number' ? counter : 0
}

const RANK_MAX = 2 ** 53

/**
 * How many entries its log held, itself counted: grows along every chain of entries that saw each
 * other, and needs nothing but the entry. Sums above 2^53 count as 2^53, so that the order in which
 * they are added does not matter.
 */
export function rankOf(entry: Entry): number {
  let rank = 1
  for (const store in entry.seen) rank += seenOf(entry.seen, store)
  return Math.min(rank, RANK_MAX)
}
