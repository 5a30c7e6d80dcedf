import { canonical } from './canonical.ts'
import { digestOf } from './digest.ts'
import type { Entry, EntryId } from './entry.ts'
import { textOf } from './entry-text.ts'

import type { Json } from './json.ts'
import type { Clones, Noted, Variant } from './noted.ts'
import { note } from './noted.ts'
import type { Path } from './path.ts'
import { pathKey } from './path.ts'
import type { Reader } from './reader.ts'
import type { Register, Rule } from './register.ts'
import { FIELD, ITEM, noteDown, renoted } from './register.ts'
import type { Owner, Shelf } from './shelf.ts'
import { drop, emptyShelf, put, taken } from './shelf.ts'

/** One place of the job: its value, whether it is an item, what lies below. */
export interface Place {
  readonly owner: Owner
  readonly path: Path
  /** Least rank of any act here or below; 0 while there is none. */
  first: number
  /** Least rank of an add of it; 0: not an item. */
  added: number
  field: Register | undefined
  item: Register | undefined
  below: Shelf<Place> | undefined
  /** How many of those below are items. */
  items: number
}

/**
 * What was folded so far. Places belong to the owner: with a new owner every change copies what it
 * touches, so that whoever holds the old root keeps the old state.
 */
export interface Fold {
  owner: Owner
  readonly reader: Reader
  root: Place
  /** Fields with heads that differ. */
  contested: Shelf<Path>
  /** Items with a withdrawal that stands. */
  withdrawn: Shelf<Path>
  /** Fields with a value of their own and something below. */
  crossed: Shelf<Path>
  /** Places with items and others below. */
  mixed: Shelf<Path>
  variants: Shelf<readonly Variant[]>
  settles: Shelf<readonly Noted[]>
  strange: Shelf<Entry>
}

const newPlace = (owner: Owner, path: Path): Place => ({
  owner,
  path,
  first: 0,
  added: 0,
  field: undefined,
  item: undefined,
  below: undefined,
  items: 0,
})

export function emptyFold(reader: Reader): Fold {
  const owner = {}
  return {
    owner,
    reader,
    root: newPlace(owner, []),
    contested: emptyShelf(owner),
    withdrawn: emptyShelf(owner),
    crossed: emptyShelf(owner),
    mixed: emptyShelf(owner),
    variants: emptyShelf(owner),
    settles: emptyShelf(owner),
    strange: emptyShelf(owner),
  }
}

/** A fold that goes on from here without touching this one, as long as this one goes on no further. */
export const branched = (fold: Fold): Fold => ({ ...fold, owner: {} })

const mine = (fold: Fold, place: Place): Place =>
  place.owner === fold.owner ? place : { ...place, owner: fold.owner }

/** `[]` and `{}` say that a list or an object is there: they agree with whatever lies below. */
export const isContainer = (value: Json): boolean => {
  if (typeof value !== 'object' || value === null) return false
  return (Array.isArray(value) ? value : Object.keys(value)).length === 0
}

/** Whether a head is a value that leaves no room for anything below it. */
export const isLeafHead = ({ act }: Noted): boolean => act.do === 'set' && !isContainer(act.value)

/** What a head says, as text; a clear says nothing. */
export const saying = ({ act }: Noted): string => (act.do === 'set' ? canonical(act.value) : '')

/** Whether those who spoke last on a field said different things. */
export function isContested({ field }: Place): boolean {
  const [first, ...others] = field?.heads ?? []
  if (first === undefined || others.length === 0) return false
  const text = saying(first)
  return others.some(each => saying(each) !== text)
}

const marked = (fold: Fold, shelf: Shelf<Path>, path: Path, isIn: boolean): Shelf<Path> => {
  if (!isIn && shelf.size === 0) return shelf
  const key = pathKey(path)
  return isIn ? put(shelf, fold.owner, key, path) : drop(shelf, fold.owner, key)
}

function setField(fold: Fold, place: Place, field: Register): void {
  place.field = field
  fold.contested = marked(fold, fold.contested, place.path, isContested(place))
}

function setItem(fold: Fold, place: Place, item: Register): void {
  place.item = item
  fold.withdrawn = marked(fold, fold.withdrawn, place.path, item.heads.length > 0)
}

const earlier = (rank: number, other: number): number => (rank === 0 || other < rank ? other : rank)

function takeAct(fold: Fold, place: Place, noted: Noted): void {
  switch (noted.act.do) {
    case 'set':
    case 'clear':
      setField(fold, place, noteDown(place.field, noted, FIELD, fold))
      break
    case 'add':
      place.added = earlier(place.added, noted.rank)
      setItem(fold, place, noteDown(place.item, noted, ITEM, fold))
      break
    case 'withdraw':
    case 'restore':
      setItem(fold, place, noteDown(place.item, noted, ITEM, fold))
      break
    case 'settle': // not of one place
      break
  }
}

/** Notes that a value stands over something, or items beside what is none, where it is so. */
function markShape(fold: Fold, place: Place): void {
  const { added, below, field, items } = place
  if (below === undefined && added === 0) return
  if (field?.heads.some(isLeafHead)) fold.crossed = marked(fold, fold.crossed, place.path, true)
  if (below !== undefined && (items > 0 || fold.mixed.size > 0))
    fold.mixed = marked(fold, fold.mixed, place.path, items > 0 && items < below.size)
}

type Change = (fold: Fold, place: Place, noted: Noted) => void

/** The place with a change made where the act is, here or below. */
function changedAt(fold: Fold, old: Place, path: Path, noted: Noted, change: Change): Place {
  const place = mine(fold, old)
  place.first = earlier(place.first, noted.rank)
  if (place.path.length === path.length) change(fold, place, noted)
  else changeBelow(fold, place, path, noted, change)
  markShape(fold, place)
  return place
}

function changeBelow(fold: Fold, place: Place, path: Path, noted: Noted, change: Change): void {
  const depth = place.path.length + 1
  const step = path[depth - 1] as string
  const old = taken(place.below, step)
  const start = old ?? newPlace(fold.owner, depth === path.length ? path : path.slice(0, depth))
  const wasItem = start.added > 0
  const next = changedAt(fold, start, path, noted, change)
  if (next !== old) place.below = put(place.below, fold.owner, step, next)
  if (!wasItem && next.added > 0) place.items++
}

/** Folds one more entry. Any order, any grouping, gives the same fold; the id must be new. */
export function foldIn(fold: Fold, entry: Entry): void {
  const noted = note(fold.reader, entry)
  if (noted === undefined) fold.strange = put(fold.strange, fold.owner, textOf(entry), entry)
  else foldNoted(fold, noted)
}

function foldNoted(fold: Fold, noted: Noted): void {
  const { act } = noted
  if (act.do === 'settle') foldSettle(fold, noted, act.fork)
  else fold.root = changedAt(fold, fold.root, act.path, noted, takeAct)
}

function foldSettle(fold: Fold, noted: Noted, fork: EntryId): void {
  const all = [...(taken(fold.settles, fork) ?? []), noted]
  fold.settles = put(fold.settles, fold.owner, fork, all)
  reconsider(fold, fork)
}

/** Folds an entry whose id others have already. */
export function foldVariant(fold: Fold, entry: Entry, others: readonly Entry[]): void {
  const variants = [...others, entry].map(each => ({
    digest: digestOf(textOf(each)),
    entry: each,
  }))
  fold.variants = put(fold.variants, fold.owner, entry.id, variants)
  foldIn(fold, entry)
  reconsider(fold, entry.id)
}

/** Takes the places anew that the variants of a forked id act on. */
function reconsider(fold: Fold, id: EntryId): void {
  for (const { entry } of taken(fold.variants, id) ?? []) {
    const noted = note(fold.reader, entry)
    if (noted === undefined || noted.act.do === 'settle') continue
    fold.root = changedAt(fold, fold.root, noted.act.path, noted, renote)
  }
}

function renote(fold: Fold, place: Place): void {
  const again = (register: Register, rule: Rule) => renoted(register, rule, fold as Clones)
  if (place.field) setField(fold, place, again(place.field, FIELD))
  if (place.item) setItem(fold, place, again(place.item, ITEM))
}

/** The place at a path, or undefined where nothing was ever said. */
export function placeAt(root: Place, path: Path): Place | undefined {
  let place: Place | undefined = root
  for (const step of path) {
    if (place === undefined) return undefined
    place = taken(place.below, step)
  }
  return place
}
