import type { Entered } from './entered.ts'

export const UNKNOWN_REASONS = [
  'not visible',
  'owner unsure',
  'not measured',
  'does not exist',
] as const
export type UnknownReason = (typeof UNKNOWN_REASONS)[number]

/** What is known of a surveyed value. Unknown is a state of its own, never a number or a blank. */
export type Known<Value> =
  | { readonly kind: 'known'; readonly value: Value }
  | { readonly kind: 'range'; readonly from: Value; readonly to: Value; readonly source: string }
  | { readonly kind: 'one-of'; readonly values: readonly Value[]; readonly source: string }
  | { readonly kind: 'unknown'; readonly reason: UnknownReason }

/** The least and the greatest the value can be, or undefined when nothing bounds it. */
export function boundsOf<U extends string>(
  value: Known<Entered<U>>,
): { readonly from: Entered<U>['si']; readonly to: Entered<U>['si'] } | undefined {
  switch (value.kind) {
    case 'known':
      return { from: value.value.si, to: value.value.si }
    case 'range':
      return { from: value.from.si, to: value.to.si }
    case 'one-of': {
      const all = value.values.map(each => each.si)
      return { from: least(all), to: greatest(all) }
    }
    case 'unknown':
      return undefined
  }
}

const least = <U extends string>(all: readonly Entered<U>['si'][]) =>
  Math.min(...all) as Entered<U>['si']
const greatest = <U extends string>(all: readonly Entered<U>['si'][]) =>
  Math.max(...all) as Entered<U>['si']
