import type { Entry } from './entry.ts'
import { counterOf, rankOf, storeOf } from './entry.ts'
import { textOf } from './entry-text.ts'
import { byText } from './json.ts'

interface Keyed {
  readonly entry: Entry
  readonly rank: number
  readonly store: string
  readonly counter: number
}

const keyed = (entry: Entry): Keyed => ({
  entry,
  rank: rankOf(entry),
  store: storeOf(entry.id),
  counter: counterOf(entry.id),
})

const inOrder = (a: Keyed, b: Keyed): number =>
  a.rank - b.rank ||
  byText(a.store, b.store) ||
  a.counter - b.counter ||
  byText(textOf(a.entry), textOf(b.entry))

const sorted = (entries: readonly Entry[]): readonly Entry[] =>
  entries
    .map(keyed)
    .sort(inOrder)
    .map(each => each.entry)

const follows = (last: Entry | undefined, first: Entry | undefined): boolean =>
  last === undefined || first === undefined || inOrder(keyed(last), keyed(first)) < 0

/** Entries by rank, store, counter and text: sorted ones first, then others in any order. */
export function sortEntries(before: readonly Entry[], others: readonly Entry[]): readonly Entry[] {
  const after = sorted(others)
  return follows(before.at(-1), after[0]) ? [...before, ...after] : sorted([...before, ...after])
}

/** The order of a log, told of two entries; 0 for the very same. */
export const compareEntries = (a: Entry, b: Entry): number => inOrder(keyed(a), keyed(b))
