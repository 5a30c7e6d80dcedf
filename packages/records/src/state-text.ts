import { canonical } from './canonical.ts'
import { digestOf } from './digest.ts'
import { sorted } from './field.ts'
import type { Place } from './fold.ts'
import { saying } from './fold.ts'
import type { JobState } from './job-state.ts'
import type { Json } from './json.ts'
import type { Noted } from './noted.ts'
import { valuesOf } from './shelf.ts'
import { byPath } from './shown.ts'

const headsOf = (heads: readonly Noted[]): Json =>
  sorted(heads).map(each => [each.entry.id, each.entry.author, each.entry.at, saying(each)])

const lineOf = (place: Place): Json => ({
  added: place.added,
  field: headsOf(place.field?.heads ?? []),
  first: place.first,
  path: place.path,
  withdrawn: headsOf(place.item?.heads ?? []),
})

function* walk(place: Place): Generator<Place> {
  yield place
  for (const each of valuesOf(place.below)) yield* walk(each)
}

/** Everything that a state says, as one canonical text: equal states, equal texts. */
export function stateText(state: JobState): string {
  const { conflicts, withdrawn, gaps, orphans, notUnderstood } = state
  const places = [...walk(state.root)].sort((a, b) => byPath(a.path, b.path)).map(lineOf)
  const forks = state.forks.map(({ id, variants, isSettled }) => ({ id, variants, isSettled }))
  const all = { places, conflicts, withdrawn, gaps, forks, orphans, notUnderstood }
  return canonical(all as unknown as Json)
}

/** A short name for what a state says. */
export const stateHash = (state: JobState): string => digestOf(stateText(state))
