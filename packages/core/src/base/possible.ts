import type { Entered } from './entered.ts'
import type { Known } from './known.ts'

/** What a value can be: every value it may have, or samples of a range that decide as the range does. */
export interface Possible<Value> {
  readonly values: readonly Value[]
  readonly kind: Known<Value>['kind']
  /** Where the survey has it, such as `supply.breaker`: what is asked for where it decides. */
  readonly at: string
}

/** A value that is known. */
export const given = <Value>(value: Value, at = ''): Possible<Value> => ({
  values: [value],
  kind: 'known',
  at,
})

/** One of some values, or any of `all` where nobody knows. */
export function choiceOf<Value>(
  known: Known<Value> | undefined,
  all: readonly Value[],
  at: string,
): Possible<Value> {
  switch (known?.kind) {
    case 'known':
      return { values: [known.value], kind: 'known', at }
    case 'one-of':
      return { values: known.values, kind: 'one-of', at }
    default:
      return { values: all, kind: 'unknown', at }
  }
}

/** The ends of a range, the thresholds inside it, and a point between each two of them. */
function samples(from: number, to: number, thresholds: readonly number[]): readonly number[] {
  const inside = thresholds.filter(each => each > from && each < to)
  const points = [...new Set([from, ...inside, to])].sort((a, b) => a - b)
  return points.flatMap((each, index) => {
    const next = points[index + 1]
    return next === undefined ? [each] : [each, (each + next) / 2]
  })
}

/** How a number may lie where it is not known, and where a rule changes its mind. */
export interface NumberDomain {
  readonly from: number
  readonly to: number
  /** Values at which a rule that is not monotone in the number turns. */
  readonly thresholds?: readonly number[]
}

/**
 * A number of a survey, in SI.
 *
 * A range stands for itself by samples: its ends, the thresholds of the domain inside it, and points
 * between them. That decides as the whole range does for a rule that is monotone between thresholds.
 */
export function numberOf<U extends string>(
  known: Known<Entered<U>> | undefined,
  { from, to, thresholds = [] }: NumberDomain,
  at: string,
): Possible<number> {
  switch (known?.kind) {
    case 'known':
      return { values: [known.value.si], kind: 'known', at }
    case 'one-of':
      return { values: known.values.map(each => each.si), kind: 'one-of', at }
    case 'range':
      return { values: samples(known.from.si, known.to.si, thresholds), kind: 'range', at }
    default:
      return { values: samples(from, to, thresholds), kind: 'unknown', at }
  }
}
