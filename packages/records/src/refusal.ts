import type { Act, EntryId } from './entry.ts'
import type { Fault } from './fault.ts'
import { told } from './fault.ts'
import { fieldOf } from './field.ts'
import type { Fold, Place } from './fold.ts'
import { isContainer, isLeafHead, placeAt } from './fold.ts'
import { besideOf } from './job-state.ts'
import type { Json } from './json.ts'
import type { Path } from './path.ts'
import { taken } from './shelf.ts'
import { isAnyShownBelow, isItem, isShown, isWithdrawn, withdrawnOn } from './shown.ts'

const at = (path: readonly (string | number)[], is: string, may: string): Fault => ({
  path,
  is,
  may,
})

const shownAs = (path: Path): string => path.join(' / ')

/** The nearest place around a path with a value that leaves no room below it. */
function leafAround(root: Place, path: Path): Place | undefined {
  for (let depth = 1; depth < path.length; depth++) {
    const place = placeAt(root, path.slice(0, depth))
    if (place?.field?.heads.some(isLeafHead)) return place
  }
  return undefined
}

function refuseInside(fold: Fold, path: Path): Fault | undefined {
  const gone = withdrawnOn(fold.root, path)
  if (gone === undefined || gone.path.length === path.length) return undefined
  return at(['path'], `inside ${shownAs(gone.path)}, which was withdrawn`, 'restore that first')
}

function refuseBelow(fold: Fold, path: Path): Fault | undefined {
  const leaf = leafAround(fold.root, path)
  return leaf && at(['path'], `below the value of ${shownAs(leaf.path)}`, 'clear that first')
}

function refuseSet(fold: Fold, path: Path, value: Json): Fault | undefined {
  const place = placeAt(fold.root, path)
  if (place && isWithdrawn(place)) return at(['path'], 'a withdrawn item', 'restore it first')
  const around = placeAt(fold.root, path.slice(0, -1))
  if (path.at(-1) === 'id' && around && isItem(around))
    return at(['path'], 'the id of an item', 'the id is the last step of its path')
  if (isContainer(value) || place === undefined) return undefined
  if (isItem(place) || isAnyShownBelow(place))
    return at(['value'], `${told(value)} over what lies below`, '[], {}, or clear that first')
  return undefined
}

function refuseAdd(fold: Fold, path: Path): Fault | undefined {
  const place = placeAt(fold.root, path)
  if (place === undefined || isWithdrawn(place)) return undefined
  if (isItem(place)) return at(['path'], 'an item that is there', 'another id')
  return fieldOf(place).kind === 'empty' || !place.field?.heads.some(isLeafHead)
    ? undefined
    : at(['path'], 'a value', 'clear it first')
}

/** Withdrawing twice has a use: to say that one has seen what was done beside the first. */
function refuseWithdraw(fold: Fold, path: Path): Fault | undefined {
  const place = placeAt(fold.root, path)
  if (place && isWithdrawn(place))
    return besideOf(fold, place).length > 0
      ? undefined
      : at(['path'], 'an item already withdrawn', 'an item that is there')
  return place && isItem(place) && isShown(place)
    ? undefined
    : at(['path'], 'no item', 'an item that is there')
}

function refuseRestore(fold: Fold, path: Path): Fault | undefined {
  const place = placeAt(fold.root, path)
  return place && isWithdrawn(place)
    ? undefined
    : at(['path'], 'no withdrawn item', 'an item that was withdrawn')
}

function refuseSettle(fold: Fold, fork: EntryId, named: readonly string[]): Fault | undefined {
  const variants = taken(fold.variants, fork)
  if (variants === undefined) return at(['fork'], 'one entry at most', 'an id with several entries')
  return variants.every(each => named.includes(each.digest))
    ? undefined
    : at(['variants'], `${named.length} of them`, 'the digest of every entry under that id')
}

/** Why an act of the right shape makes no sense on what is there now, or undefined. */
export function refusalOf(fold: Fold, act: Act): Fault | undefined {
  if (act.do === 'settle') return refuseSettle(fold, act.fork, act.variants)
  return refuseInside(fold, act.path) ?? refuseHere(fold, act)
}

/** What takes something away may do so below a value, too: so the value is chosen. */
function refuseHere(fold: Fold, act: Exclude<Act, { do: 'settle' }>): Fault | undefined {
  switch (act.do) {
    case 'set':
      return refuseBelow(fold, act.path) ?? refuseSet(fold, act.path, act.value)
    case 'clear':
      return undefined
    case 'add':
      return refuseBelow(fold, act.path) ?? refuseAdd(fold, act.path)
    case 'withdraw':
      return refuseWithdraw(fold, act.path)
    case 'restore':
      return refuseBelow(fold, act.path) ?? refuseRestore(fold, act.path)
  }
}
