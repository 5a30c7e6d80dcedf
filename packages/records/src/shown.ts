import type { Place } from './fold.ts'
import { placeAt } from './fold.ts'
import { byText } from './json.ts'
import type { Path } from './path.ts'
import { pathKey } from './path.ts'
import { valuesOf } from './shelf.ts'

/** Whether a withdrawal of it stands. */
export const isWithdrawn = (place: Place): boolean => (place.item?.heads.length ?? 0) > 0

export const isItem = (place: Place): boolean => place.added > 0

/** Whether it stands beside items of a list and is none: nobody here has added it. */
export const isOrphan = (around: Place, place: Place): boolean =>
  around.items > 0 && !isItem(place) && !isWithdrawn(place)

const saysSomething = (place: Place): boolean =>
  place.field?.heads.some(each => each.act.do === 'set') ?? false

/** Whether there is anything to show here or below: an item, a value, a conflict. */
export const isShown = (place: Place): boolean =>
  !isWithdrawn(place) && (isItem(place) || saysSomething(place) || isAnyShownBelow(place))

export function isAnyShownBelow(place: Place): boolean {
  for (const each of valuesOf(place.below)) if (isShown(each)) return true
  return false
}

const nameOf = (place: Place): string => place.path[place.path.length - 1] ?? ''

const rankOf = (place: Place): number => place.added || place.first

const inOrder = (a: Place, b: Place): number =>
  rankOf(a) - rankOf(b) || byText(nameOf(a), nameOf(b))

/** What is shown right below, in order: an item by its add, a field by the first word on it, then by name. */
export const shownChildren = (place: Place | undefined): readonly Place[] =>
  [...valuesOf(place?.below)].filter(isShown).sort(inOrder)

/** Everything right below, shown or not, in order. */
export const allChildren = (place: Place): readonly Place[] =>
  [...valuesOf(place.below)].sort(inOrder)

export const byPath = (a: Path, b: Path): number => byText(pathKey(a), pathKey(b))

/** Every shown path below that is an item or says something itself, sorted. */
export const shownBelow = (place: Place): readonly Path[] =>
  [...walkShown(place)].map(each => each.path).sort(byPath)

function* walkShown(place: Place): Generator<Place> {
  for (const each of valuesOf(place.below)) {
    if (isWithdrawn(each)) continue
    if (isItem(each) || saysSomething(each)) yield each
    yield* walkShown(each)
  }
}

/** The outermost withdrawn item on the way to a path, the path itself among them, or undefined. */
export function withdrawnOn(root: Place, path: Path): Place | undefined {
  for (let depth = 1; depth <= path.length; depth++) {
    const place = placeAt(root, path.slice(0, depth))
    if (place && isWithdrawn(place)) return place
  }
  return undefined
}

/** Whether an item around a path was withdrawn, so that nothing at the path is shown. */
export const isHidden = (root: Place, path: Path): boolean =>
  withdrawnOn(root, path.slice(0, -1)) !== undefined
