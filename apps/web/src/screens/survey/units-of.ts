import type { Unit } from '@tubwright/core'
import { DIMENSIONS } from '@tubwright/core'

interface Scale {
  readonly factor: number
  readonly offset?: number
}

/** What nothing at a tub is measured in. */
const FACTOR_MAX = 1e3

const HABITS: Readonly<
  Partial<Record<Unit, { readonly american: string; readonly metric: string }>>
> = {
  m: { american: 'ft', metric: 'm' },
  'm²': { american: 'ft²', metric: 'm²' },
  K: { american: '°F', metric: '°C' },
  Ω: { american: 'Ω', metric: 'Ω' },
  F: { american: 'µF', metric: 'µF' },
}

/** The unit that is usual here for a dimension, where it is not the first that is written. */
export const usualUnit = (unit: Unit, isAmerican: boolean): string | undefined =>
  HABITS[unit]?.[isAmerican ? 'american' : 'metric']

const isSymbol = (spelling: string): boolean => /[^ -~]/u.test(spelling)

/** Units of a dimension that a person may pick, the one usual here first; of two spellings the symbol. */
export const unitsOf = (unit: Unit, first: string): readonly string[] => {
  const all: Readonly<Record<string, Scale>> = DIMENSIONS[unit].spellings
  const scaleOf = (each: string): string => `${all[each]?.factor} ${all[each]?.offset ?? 0}`
  const own = Object.keys(all).filter(each => (all[each]?.factor ?? 0) <= FACTOR_MAX)
  const names = [first, ...own.filter(isSymbol), ...own].filter(each => Object.hasOwn(all, each))
  const told = names.filter(
    (each, index) => names.findIndex(other => scaleOf(other) === scaleOf(each)) === index,
  )
  // In the order in which they are described, the usual one first.
  const place = (each: string) =>
    each === first ? -1 : Object.keys(all).findIndex(other => scaleOf(other) === scaleOf(each))
  return told.toSorted((a, b) => place(a) - place(b))
}
