import { freeId } from '@tubwright/core'
import { shelfTexts } from '../../app/shelf.ts'
import type { ShelfText } from '../../store/database.ts'
import type { JobSpace } from '../../store/space.ts'

export type DescriptionKind = ShelfText['kind']

/** Which description it is. */
export interface DescriptionKey {
  readonly kind: DescriptionKind
  readonly id: string
}

export const KINDS: readonly DescriptionKind[] = ['control-box', 'supply-device']

export const isSame = (a: DescriptionKey, b: DescriptionKey): boolean =>
  a.kind === b.kind && a.id === b.id

/** The kind of description that a file says it is, as in `schema: control-box/1`. */
export const kindOf = (schema: unknown): DescriptionKind | undefined =>
  KINDS.find(each => schema === `${each}/1`)

const ID_LINE = /^id:[ \t]*(?:"[^"\n]*"|'[^'\n]*'|[^\s#]+)/mu

/** A text under another id; undefined where its id stands on no line of its own. */
export const withId = (text: string, id: string): string | undefined =>
  ID_LINE.test(text) ? text.replace(ID_LINE, `id: ${id}`) : undefined

export async function findOnShelf(
  space: JobSpace,
  key: DescriptionKey,
): Promise<ShelfText | undefined> {
  return (await shelfTexts(space)).find(each => isSame(each, key))
}

const idsOn = (all: readonly ShelfText[], kind: DescriptionKind): readonly string[] =>
  all.filter(each => each.kind === kind).map(each => each.id)

/** Puts a text on the shelf under its id, or where that is taken by another text, under a free one. */
export async function putBeside(
  space: JobSpace,
  { kind, id }: DescriptionKey,
  text: string,
): Promise<string | undefined> {
  const there = await findOnShelf(space, { kind, id })
  if (there?.text === text) return id
  if (there) return copyOnShelf(space, { kind, id }, text)
  await space.putOnShelf({ kind, id, text, at: space.now() })
  return id
}

/** Makes a copy of a description under a free id; says which, or undefined where its text has none. */
export async function copyOnShelf(
  space: JobSpace,
  { kind, id }: DescriptionKey,
  text: string,
): Promise<string | undefined> {
  const free = freeId(id, idsOn(await shelfTexts(space), kind))
  const written = withId(text, free)
  if (written === undefined) return undefined
  await space.putOnShelf({ kind, id: free, text: written, at: space.now() })
  return free
}
