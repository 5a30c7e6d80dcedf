import { isSame } from './canonical.ts'
import { documentOf } from './document.ts'
import type { Act } from './entry.ts'
import { isContainer, placeAt } from './fold.ts'
import type { JobState } from './job-state.ts'
import type { Json } from './json.ts'
import { isJsonObject } from './json.ts'
import type { Line, Outline } from './outline.ts'
import { outlineOf, outlineOfItem, outlineOfPlace } from './outline.ts'
import type { Path } from './path.ts'
import { leadsTo, pathKey } from './path.ts'
import { isItem } from './shown.ts'

const at = (outline: Outline, { path }: Line): Line | undefined => outline.get(pathKey(path))

const isThere = (line: Line | undefined): boolean =>
  line?.kind === 'item' || line?.kind === 'withdrawn'

/** Items that were withdrawn and are there again. */
const restored = (before: Outline, after: Outline): readonly Path[] =>
  [...after.values()]
    .filter(line => line.kind === 'item' && at(before, line)?.kind === 'withdrawn')
    .map(line => line.path)

const isIn = (outers: readonly Path[], path: Path): boolean =>
  outers.some(outer => leadsTo(outer, path))

/** Outermost items that are there no more, but for what is left alone. */
function withdrawals(before: Outline, after: Outline, hidden: readonly Path[]): readonly Path[] {
  const gone: Path[] = []
  for (const line of before.values())
    if (line.kind === 'item' && at(after, line)?.kind !== 'item')
      if (!isIn([...gone, ...hidden], line.path)) gone.push(line.path)
  return gone
}

/** `[]` and `{}` need no clearing where a list or a group is there now. */
function isKept(line: Line & { readonly kind: 'leaf' }, after: Outline): boolean {
  const now = at(after, line)
  if (now === undefined) return false
  return now.kind === 'leaf' || (isContainer(line.value) && line.isUndecided !== true)
}

/** Values that are there no more, but for what is left alone or goes with an item. */
const cleared = (before: Outline, after: Outline, hidden: readonly Path[]): readonly Path[] =>
  [...before.values()]
    .filter(line => line.kind === 'leaf' && !isKept(line, after))
    .map(line => line.path)
    .filter(path => !isIn(hidden, path))

function additions(before: Outline, after: Outline): readonly Act[] {
  return [...after.values()].flatMap((line): readonly Act[] => {
    const old = at(before, line)
    if (line.kind === 'item') return isThere(old) ? [] : [{ do: 'add', path: line.path }]
    if (line.kind !== 'leaf') return []
    if (old?.kind === 'leaf' && !old.isOpen && isSame(old.value, line.value)) return []
    return [{ do: 'set', path: line.path, value: line.value }]
  })
}

/** Whether nothing inside is touched: a withdrawn item that stays so, a value that stays. */
function isLeft(line: Line, now: Line | undefined): boolean {
  if (line.kind === 'withdrawn') return now?.kind !== 'item'
  if (line.kind !== 'leaf' || isContainer(line.value)) return false
  return now?.kind === 'leaf' && isSame(line.value, now.value)
}

const leftAlone = (before: Outline, after: Outline): readonly Path[] =>
  [...before.values()].filter(line => isLeft(line, at(after, line))).map(line => line.path)

const each = (kind: 'clear' | 'withdraw' | 'restore', paths: readonly Path[]): readonly Act[] =>
  paths.map(path => ({ do: kind, path }))

/** First room is made, then what was withdrawn comes back; only then can anything inside it change. */
function actsOf(before: Outline, after: Outline): readonly Act[] {
  const hidden = leftAlone(before, after)
  const back = restored(before, after)
  const gone = withdrawals(before, after, hidden)
  const empty = cleared(before, after, [...gone, ...hidden])
  return [
    ...each(
      'clear',
      empty.filter(path => !isIn(back, path)),
    ),
    ...each('restore', back),
    ...each('withdraw', gone),
    ...each(
      'clear',
      empty.filter(path => isIn(back, path)),
    ),
    ...additions(before, after),
  ]
}

/**
 * The acts that make one document out of another; `undefined` is none.
 *
 * Lists of objects with an `id` each are items; other lists, `{ unknown }`, `{ from, to, source }` and
 * `{ oneOf, … }` are single values; other objects are gone into. The order of items that are there
 * already stays as it is. What only the record knows is not seen here: `actsTo` sees it.
 */
export function actsBetween(
  before: Json | undefined,
  after: Json | undefined,
  path: Path,
): readonly Act[] {
  const old = outlineOf(before, path)
  return actsOf(old, outlineOf(after, path, old))
}

/**
 * The acts after which `documentOf` says just this (in its own order of items): like `actsBetween`,
 * but withdrawn items come back by a restore, and their old values go where the document has none.
 */
export function actsTo(state: JobState, path: Path, after: Json | undefined): readonly Act[] {
  const place = placeAt(state.root, path)
  if (place === undefined) return actsBetween(undefined, after, path)
  if (after !== undefined && isSame(documentOf(state, path), after)) return []
  const old = outlineOfPlace(place)
  if (isItem(place) && isJsonObject(after))
    return actsOf(
      old,
      new Map([[pathKey(path), { kind: 'item', path }], ...outlineOfItem(after, path, old)]),
    )
  return actsOf(old, outlineOf(after, path, old))
}
