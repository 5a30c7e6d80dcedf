import { isSame } from './canonical.ts'
import { undecided } from './document.ts'
import { fieldOf } from './field.ts'
import type { Place } from './fold.ts'
import { isContainer, isContested } from './fold.ts'
import type { Json, JsonObject } from './json.ts'
import { isJsonObject } from './json.ts'
import { STEPS_MAX } from './limits.ts'
import type { Path } from './path.ts'
import { isStep, pathKey } from './path.ts'
import { allChildren, isItem, isOrphan, isWithdrawn } from './shown.ts'

/** One thing that a document says: a value, or that an item, a list or a group is there. */
export type Line =
  | {
      readonly kind: 'leaf'
      readonly path: Path
      readonly value: Json
      /** Items were added below once: an object there would not read as one. */
      readonly wasList?: boolean
      /** One of several that nobody has decided between. */
      readonly isUndecided?: boolean
      /** Nobody has decided, and it makes no difference as long as something is shown below. */
      readonly isOpen?: boolean
    }
  | { readonly kind: 'item' | 'withdrawn' | 'list' | 'group'; readonly path: Path }

/** What a document says, line by line, what is outside before what is inside, in order. */
export type Outline = ReadonlyMap<string, Line>

type Item = JsonObject & { readonly id: string }

const isItemObject = (value: Json): value is Item =>
  isJsonObject(value) && typeof value['id'] === 'string' && isStep(value['id'])

/** A list of objects that each have an `id` of their own. */
const isItemList = (value: Json): value is readonly Item[] =>
  Array.isArray(value) &&
  value.length > 0 &&
  value.every(isItemObject) &&
  new Set(value.map(each => each.id)).size === value.length

const hasJust = (value: JsonObject, ...keys: readonly string[]): boolean =>
  Object.keys(value).length === keys.length && keys.every(key => Object.hasOwn(value, key))

/** Objects that are one value: not known, a range, one of several, or not decided. */
const isOneValue = (value: JsonObject): boolean =>
  hasJust(value, 'unknown') ||
  hasJust(value, 'from', 'to', 'source') ||
  hasJust(value, 'conflict') ||
  Object.hasOwn(value, 'oneOf')

const isGroup = (value: Json): value is JsonObject =>
  isJsonObject(value) &&
  !isContainer(value) &&
  !isOneValue(value) &&
  Object.keys(value).every(isStep)

interface Drawing {
  readonly lines: Map<string, Line>
  /** Lines of what is there already. */
  readonly before: Outline
}

const draw = ({ lines }: Drawing, line: Line): void => {
  lines.set(pathKey(line.path), line)
}

/** A value that stood whole where it is, and an object where a list was, stay one value. */
function staysLeaf({ before }: Drawing, path: Path, value: Json): boolean {
  const old = before.get(pathKey(path))
  if (old?.kind === 'list') return isJsonObject(value)
  if (old?.kind !== 'leaf') return false
  return isSame(old.value, value) || (old.wasList === true && isJsonObject(value))
}

function drawValue(drawing: Drawing, path: Path, value: Json): void {
  const isFull = path.length + 2 > STEPS_MAX
  if (isFull || staysLeaf(drawing, path, value)) draw(drawing, { kind: 'leaf', path, value })
  else if (isItemList(value)) drawList(drawing, path, value)
  else if (isGroup(value)) drawGroup(drawing, path, value)
  else draw(drawing, { kind: 'leaf', path, value })
}

function drawGroup(drawing: Drawing, path: Path, group: JsonObject): void {
  draw(drawing, { kind: 'group', path })
  drawFields(drawing, path, group)
}

function drawFields(drawing: Drawing, path: Path, fields: JsonObject): void {
  for (const [key, value] of Object.entries(fields))
    if (value !== undefined) drawValue(drawing, [...path, key], value)
}

function drawList(drawing: Drawing, path: Path, list: readonly Item[]): void {
  draw(drawing, { kind: 'list', path })
  for (const { id, ...fields } of list) {
    draw(drawing, { kind: 'item', path: [...path, id] })
    drawFields(drawing, [...path, id], fields)
  }
}

/** The lines of a document, with an eye to what is there already. */
export function outlineOf(
  document: Json | undefined,
  path: Path,
  before: Outline = new Map(),
): Outline {
  const drawing = { lines: new Map<string, Line>(), before }
  if (document !== undefined) drawValue(drawing, path, document)
  return drawing.lines
}

/** Lines of the fields of an item, its own id left out. */
export function outlineOfItem(document: JsonObject, path: Path, before: Outline): Outline {
  const drawing = { lines: new Map<string, Line>(), before }
  const { id: _id, ...fields } = document
  drawFields(drawing, path, fields)
  return drawing.lines
}

/**
 * The lines of a place as it is, withdrawn items and what is in them among them. Orphans are left out,
 * as a document leaves them out: they wait for whoever adds their item.
 */
export function outlineOfPlace(place: Place): Outline {
  const lines = new Map<string, Line>()
  drawPlace(lines, place)
  return lines
}

function drawPlace(lines: Map<string, Line>, place: Place): void {
  const line = lineOf(place)
  if (line) lines.set(pathKey(place.path), line)
  for (const each of allChildren(place)) if (!isOrphan(place, each)) drawPlace(lines, each)
}

function lineOf(place: Place): Line | undefined {
  const { path } = place
  if (isWithdrawn(place)) return { kind: 'withdrawn', path }
  const wasList = place.items > 0
  const field = fieldOf(place)
  if (field.kind === 'conflict')
    return { kind: 'leaf', path, value: undecided(path, field), wasList, isUndecided: true }
  if (isItem(place)) return { kind: 'item', path }
  if (field.kind === 'set')
    return { kind: 'leaf', path, value: field.value, wasList, isOpen: isContested(place) }
  if (wasList) return { kind: 'list', path }
  return place.below ? { kind: 'group', path } : undefined
}
