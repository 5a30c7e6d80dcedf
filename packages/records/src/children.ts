import type { FieldView } from './field.ts'
import { fieldOf } from './field.ts'
import { placeAt } from './fold.ts'
import type { JobState } from './job-state.ts'
import type { Path } from './path.ts'
import { isItem, isOrphan, shownChildren } from './shown.ts'

/** What lies right below a path: an item of a list, or a field or group by its name. */
export interface Child {
  readonly id: string
  readonly path: Path
  readonly isItem: boolean
  /** What it says itself; a group says nothing. */
  readonly field: FieldView
}

/**
 * What is shown right below a path, in order: items by causal rank of their add, then id; others by the
 * first word on them, then name. Orphans are left out: the state lists them.
 */
export function childrenOf(state: JobState, path: Path): readonly Child[] {
  const around = placeAt(state.root, path)
  return shownChildren(around)
    .filter(place => around !== undefined && !isOrphan(around, place))
    .map(place => ({
      id: place.path.at(-1) ?? '',
      path: place.path,
      isItem: isItem(place),
      field: fieldOf(place),
    }))
}
