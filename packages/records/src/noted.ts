import type { Act, Entry, EntryId, Seen } from './entry.ts'
import { counterOf, levelOf, rankOf, seenOf, storeOf } from './entry.ts'
import { byText } from './json.ts'
import type { Reader } from './reader.ts'
import { actFor } from './reader.ts'
import type { Shelf } from './shelf.ts'
import { taken } from './shelf.ts'

/** An entry that is understood, taken apart once. */
export interface Noted {
  readonly entry: Entry
  /** In the reader's own form. */
  readonly act: Act
  readonly level: number
  readonly seen: Seen
  readonly store: string
  readonly counter: number
  readonly rank: number
}

export function note(reader: Reader, entry: Entry): Noted | undefined {
  const act = actFor(reader, entry)
  if (act === undefined) return undefined
  return {
    entry,
    act,
    level: levelOf(entry),
    seen: entry.seen,
    store: storeOf(entry.id),
    counter: counterOf(entry.id),
    rank: rankOf(entry),
  }
}

/** Ids that more than one entry has, and the acts by which somebody looked at all of these. */
export interface Clones {
  readonly variants: Shelf<readonly Variant[]>
  readonly settles: Shelf<readonly Noted[]>
}

/** One of the entries under a forked id. */
export interface Variant {
  readonly digest: string
  readonly entry: Entry
}

export const isForked = (clones: Clones, id: EntryId): boolean =>
  clones.variants.size > 0 && taken(clones.variants, id) !== undefined

const names = (earlier: Noted, later: Noted): boolean =>
  seenOf(later.seen, earlier.store) >= earlier.counter

/**
 * Whether whoever wrote the later entry knew the earlier one and can have meant to replace it.
 *
 * A vector names an id, so of a forked id it does not tell which entry was there: one saw it only
 * through a settle that names it. And nobody replaces what his version of the program could not read:
 * the form of the later must not be the older one.
 */
export function hasSeen(clones: Clones, later: Noted, earlier: Noted): boolean {
  if (later.level < earlier.level || !names(earlier, later)) return false
  return !isForked(clones, earlier.entry.id) || sawSettled(clones, later, earlier)
}

function sawSettled(clones: Clones, later: Noted, earlier: Noted): boolean {
  const { id } = earlier.entry
  const digest = taken(clones.variants, id)?.find(each => each.entry === earlier.entry)?.digest
  return (taken(clones.settles, id) ?? []).some(
    each =>
      each.act.do === 'settle' && each.act.variants.includes(digest ?? '') && names(each, later),
  )
}

/** Rank, store, counter: the order of everything shown; what is left equal is told apart by its text. */
export const inOrder = (a: Noted, b: Noted): number =>
  a.rank - b.rank || byText(a.store, b.store) || a.counter - b.counter
