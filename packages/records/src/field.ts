import type { EntryId } from './entry.ts'
import { textOf } from './entry-text.ts'
import type { Place } from './fold.ts'
import { isLeafHead, placeAt, saying } from './fold.ts'
import type { Json } from './json.ts'
import { byText } from './json.ts'
import type { Noted } from './noted.ts'
import { inOrder } from './noted.ts'
import type { Path } from './path.ts'
import { isAnyShownBelow, shownBelow } from './shown.ts'

/** Who said something, when by his device, in which entry. */
export interface By {
  readonly by: string
  readonly at: string
  readonly entry: EntryId
}

/** One of several values that nobody has decided between. */
export type Contender =
  | ({ readonly kind: 'set'; readonly value: Json } & By)
  | ({ readonly kind: 'cleared'; readonly value?: undefined } & By)

/** What one place says. `{ unknown: reason }` is a value like any other: not known is not empty. */
export type FieldView =
  | { readonly kind: 'empty' }
  | ({
      readonly kind: 'set'
      readonly value: Json
      /** Others who said the same without having seen it. */
      readonly agreed: readonly EntryId[]
    } & By)
  | {
      readonly kind: 'conflict'
      /** In the order of everything shown. */
      readonly values: readonly Contender[]
      /** What lies below a value that leaves no room for it. */
      readonly inside: readonly Path[]
    }

export const byOf = ({ entry }: Noted): By => ({ by: entry.author, at: entry.at, entry: entry.id })

/** In the order of everything shown; forked entries by their text. */
export const sorted = (all: readonly Noted[]): readonly Noted[] =>
  all.toSorted((a, b) => inOrder(a, b) || byText(textOf(a.entry), textOf(b.entry)))

const contenderOf = (head: Noted): Contender =>
  head.act.do === 'set'
    ? { kind: 'set', value: head.act.value, ...byOf(head) }
    : { kind: 'cleared', ...byOf(head) }

const EMPTY: FieldView = { kind: 'empty' }

/** Whether it is there whatever its own field says: an item, or something is shown below. */
const isHeldOpen = (place: Place): boolean => place.added > 0 || isAnyShownBelow(place)

/** What a place says of itself, whether or not an item around it was withdrawn. */
export function fieldOf(place: Place | undefined): FieldView {
  const heads = place?.field?.heads ?? []
  const [first] = heads
  if (place === undefined || first === undefined) return EMPTY
  const isAgreed = heads.every(each => saying(each) === saying(first))
  if (isAgreed && !isLeafHead(first)) return agreedOf(heads)
  if (!isHeldOpen(place)) return isAgreed ? agreedOf(heads) : conflictOf(heads, [])
  return heads.some(isLeafHead) ? conflictOf(heads, shownBelow(place)) : openOf(heads)
}

/** Where something is shown below, `[]`, `{}` and a clear make no difference. */
const openOf = (heads: readonly Noted[]): FieldView =>
  agreedOf(heads.filter(each => each.act.do === 'set'))

const conflictOf = (heads: readonly Noted[], inside: readonly Path[]): FieldView => ({
  kind: 'conflict',
  values: sorted(heads).map(contenderOf),
  inside,
})

function agreedOf(heads: readonly Noted[]): FieldView {
  const [first, ...others] = heads.length > 1 ? sorted(heads) : heads
  if (first?.act.do !== 'set') return EMPTY
  const agreed = others.map(each => each.entry.id)
  return { kind: 'set', value: first.act.value, ...byOf(first), agreed }
}

/** What the job says at a path: nothing, one value, or several that nobody has decided between. */
export const fieldAt = (state: { readonly root: Place }, path: Path): FieldView =>
  fieldOf(placeAt(state.root, path))
