import type { Unit } from '@tubwright/core'
import { DIMENSIONS } from '@tubwright/core'

interface Scale {
  readonly factor: number
  readonly offset?: number
}

/** Units of a dimension that a person may pick, the one usual here first; of two spellings one. */
export const unitsOf = (unit: Unit, first: string): readonly string[] => {
  const all: Readonly<Record<string, Scale>> = DIMENSIONS[unit].spellings
  const scaleOf = (each: string): string => `${all[each]?.factor} ${all[each]?.offset ?? 0}`
  const names = [first, ...Object.keys(all)].filter(each => Object.hasOwn(all, each))
  return names.filter(
    (each, index) => names.findIndex(other => scaleOf(other) === scaleOf(each)) === index,
  )
}
