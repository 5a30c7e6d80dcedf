import type { Entry, EntryId } from './entry.ts'
import { textOf } from './entry-text.ts'
import type { By, Contender } from './field.ts'
import { byOf, fieldOf, sorted } from './field.ts'
import type { Fold, Place } from './fold.ts'
import { placeAt } from './fold.ts'
import type { Json } from './json.ts'
import { byText } from './json.ts'
import type { Clones, Noted, Variant } from './noted.ts'
import { hasSeen } from './noted.ts'
import type { Path } from './path.ts'
import { pathKey } from './path.ts'
import { actsOf } from './register.ts'
import { taken, valuesOf } from './shelf.ts'
import { byPath, isHidden, isItem, isOrphan, isShown, isWithdrawn } from './shown.ts'
import type { Gap } from './tally.ts'

/** Values that nobody has decided between; of kind `shape` where one stands over others below it. */
export interface Conflict {
  readonly kind: 'values' | 'shape'
  readonly path: Path
  readonly values: readonly Contender[]
  readonly inside: readonly Path[]
}

/** A withdrawn item that can be brought back. */
export interface Withdrawn {
  readonly path: Path
  /** Every withdrawal that stands. */
  readonly by: readonly By[]
  /** What was done inside it that none of these saw. */
  readonly beside: readonly (By & { readonly path: Path })[]
}

/** More than one entry under one id: a store was cloned, or wiped and used again. */
export interface Fork {
  readonly id: EntryId
  /** Digests of the entries, sorted. */
  readonly variants: readonly string[]
  readonly entries: readonly Entry[]
  /** Whether somebody has looked at every one of them and said so. */
  readonly isSettled: boolean
}

export interface NotUnderstood {
  readonly entry: EntryId
  readonly schema: string
  readonly act: string
  readonly by: string
  readonly at: string
}

/** What a set of entries says, whatever their order. Never changes. */
export interface JobState {
  /** For the functions of this package. */
  readonly root: Place
  readonly conflicts: readonly Conflict[]
  readonly withdrawn: readonly Withdrawn[]
  readonly gaps: readonly Gap[]
  readonly forks: readonly Fork[]
  /** Fields inside an item of a list that nobody added: kept, shown once it is added. */
  readonly orphans: readonly Path[]
  readonly notUnderstood: readonly NotUnderstood[]
  /** Whether nothing is known to be missing. */
  readonly isComplete: boolean
}

/** What a fold says now; each list is made when somebody asks for it. */
export class FoldedState implements JobState {
  readonly root: Place
  readonly gaps: readonly Gap[]
  readonly #fold: Fold
  #conflicts: readonly Conflict[] | undefined
  #withdrawn: readonly Withdrawn[] | undefined
  #forks: readonly Fork[] | undefined
  #orphans: readonly Path[] | undefined
  #notUnderstood: readonly NotUnderstood[] | undefined

  constructor(fold: Fold, gaps: readonly Gap[]) {
    this.root = fold.root
    this.gaps = gaps
    this.#fold = { ...fold }
  }

  get isComplete(): boolean {
    return this.gaps.length === 0
  }

  get conflicts(): readonly Conflict[] {
    this.#conflicts ??= conflictsOf(this.#fold)
    return this.#conflicts
  }

  get withdrawn(): readonly Withdrawn[] {
    this.#withdrawn ??= withdrawnOf(this.#fold)
    return this.#withdrawn
  }

  get forks(): readonly Fork[] {
    this.#forks ??= forksOf(this.#fold)
    return this.#forks
  }

  get orphans(): readonly Path[] {
    this.#orphans ??= orphansOf(this.#fold)
    return this.#orphans
  }

  get notUnderstood(): readonly NotUnderstood[] {
    this.#notUnderstood ??= notUnderstoodOf(this.#fold)
    return this.#notUnderstood
  }
}

const placesOf = (fold: Fold, paths: Iterable<Path>): readonly Place[] =>
  [...new Map([...paths].map(path => [pathKey(path), path])).values()]
    .sort(byPath)
    .filter(path => !isHidden(fold.root, path))
    .flatMap(path => placeAt(fold.root, path) ?? [])

function conflictsOf(fold: Fold): readonly Conflict[] {
  const paths = [...valuesOf(fold.contested), ...valuesOf(fold.crossed)]
  return placesOf(fold, paths)
    .filter(place => !isWithdrawn(place))
    .flatMap(conflictAt)
}

function conflictAt(place: Place): readonly Conflict[] {
  const field = fieldOf(place)
  if (field.kind !== 'conflict') return []
  const { values, inside } = field
  const kind = inside.length > 0 || isItem(place) ? 'shape' : 'values'
  return [{ kind, path: place.path, values, inside }]
}

const withdrawnOf = (fold: Fold): readonly Withdrawn[] =>
  placesOf(fold, valuesOf(fold.withdrawn)).map(place => ({
    path: place.path,
    by: sorted(place.item?.heads ?? []).map(byOf),
    beside: besideOf(fold, place),
  }))

/** What stands inside a withdrawn item that no standing withdrawal has seen. */
export function besideOf(clones: Clones, place: Place): Withdrawn['beside'] {
  const withdrawals = place.item?.heads ?? []
  const unseen = [...standing(place, true)].filter(
    ({ noted }) => !withdrawals.some(each => hasSeen(clones, each, noted)),
  )
  return unseen
    .map(({ path, noted }) => ({ path, ...byOf(noted), order: noted }))
    .sort((a, b) => byPath(a.path, b.path) || compareNoted(a.order, b.order))
    .map(({ order: _order, ...each }) => each)
}

const compareNoted = (a: Noted, b: Noted): number => (sorted([a, b])[0] === a ? -1 : 1)

/** Acts on an item and inside it: values that stand, adds, withdrawals and restores further in. */
function* standing(place: Place, isTop: boolean): Generator<{ path: Path; noted: Noted }> {
  for (const noted of place.field?.heads ?? []) yield { path: place.path, noted }
  if (!isTop) for (const noted of actsOf(place.item)) yield { path: place.path, noted }
  for (const each of valuesOf(place.below)) yield* standing(each, false)
}

const forksOf = (fold: Fold): readonly Fork[] =>
  [...valuesOf(fold.variants)]
    .map(variants => forkOf(fold, variants))
    .sort((a, b) => byText(a.id, b.id))

function forkOf(fold: Fold, all: readonly Variant[]): Fork {
  const inOrder = all.toSorted((a, b) => byText(a.digest, b.digest))
  const variants = inOrder.map(each => each.digest)
  const id = (all[0] as Variant).entry.id
  const isSettled = (taken(fold.settles, id) ?? []).some(({ act }) =>
    variants.every(each => act.do === 'settle' && act.variants.includes(each)),
  )
  return { id, variants, entries: inOrder.map(each => each.entry), isSettled }
}

const orphansOf = (fold: Fold): readonly Path[] =>
  placesOf(fold, valuesOf(fold.mixed))
    .filter(place => !isWithdrawn(place))
    .flatMap(place => [...valuesOf(place.below)].filter(each => isOrphan(place, each)))
    .filter(isShown)
    .map(each => each.path)
    .sort(byPath)

const kindOf = ({ act }: Entry): string => {
  const kind: Json | undefined = act.do
  return typeof kind === 'string' ? kind : ''
}

const notUnderstoodOf = (fold: Fold): readonly NotUnderstood[] =>
  [...valuesOf(fold.strange)]
    .map(entry => ({ entry, text: textOf(entry) }))
    .sort((a, b) => byText(a.entry.id, b.entry.id) || byText(a.text, b.text))
    .map(({ entry }) => ({
      entry: entry.id,
      schema: entry.schema,
      act: kindOf(entry),
      by: entry.author,
      at: entry.at,
    }))
