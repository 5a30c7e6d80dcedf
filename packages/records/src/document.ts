import type { FieldView } from './field.ts'
import { fieldOf } from './field.ts'
import type { Place } from './fold.ts'
import { isContainer, placeAt } from './fold.ts'
import type { JobState } from './job-state.ts'
import type { Json, JsonObject } from './json.ts'
import type { Path } from './path.ts'
import { isSafetyPath } from './safety.ts'
import { isItem, isWithdrawn, shownChildren } from './shown.ts'

type Undecided = Extract<FieldView, { kind: 'conflict' }>

/**
 * What a document has where nobody has decided: `{ conflict: [values] }`, which no schema takes for a
 * value, wherever safety rests on it or a value stands over others; else the last of the values shown.
 */
export function undecided(path: Path, { values, inside }: Undecided): Json {
  const all = values.map(each => (each.kind === 'set' ? each.value : null))
  const last = all.at(-1)
  return last === undefined || last === null || inside.length > 0 || isSafetyPath(path)
    ? { conflict: all }
    : last
}

const named = (place: Place): string => place.path.at(-1) ?? ''

/** An item as an object with its id, withdrawn or not. */
export function itemOf(place: Place): Json {
  const inside = groupOf(shownChildren(place).filter(each => named(each) !== 'id'))
  return { id: named(place), ...inside }
}

function groupOf(children: readonly Place[]): JsonObject {
  const all = children.flatMap(each => {
    const value = plainOf(each)
    return value === undefined ? [] : [[named(each), value] as const]
  })
  return Object.fromEntries(all)
}

/** A list where any item was ever added below, else an object; undefined where nothing is shown. */
function containerOf(place: Place): Json | undefined {
  const children = shownChildren(place)
  if (children.length === 0) return undefined
  if (place.items === 0) return groupOf(children)
  const items = children.filter(isItem)
  return items.length > 0 ? items.map(plainOf).flatMap(each => each ?? []) : undefined
}

/** The plain value of a place, or undefined where it says nothing. */
function plainOf(place: Place): Json | undefined {
  const field = fieldOf(place)
  if (field.kind === 'conflict') return undecided(place.path, field)
  if (isItem(place) && place.path.length > 0) return itemOf(place)
  const inside = containerOf(place)
  if (field.kind === 'empty') return inside
  return isContainer(field.value) ? (inside ?? field.value) : field.value
}

/**
 * The job at a path as a plain document: items as lists of objects with their `id`, in order.
 *
 * Withdrawn items are left out. `{}` where nothing is said.
 */
export function documentOf(state: JobState, path: Path): Json {
  const place = placeAt(state.root, path)
  return place === undefined || isWithdrawn(place) ? {} : (plainOf(place) ?? {})
}
