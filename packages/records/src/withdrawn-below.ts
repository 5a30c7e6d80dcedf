import { itemOf } from './document.ts'
import { placeAt } from './fold.ts'
import type { JobState, Withdrawn } from './job-state.ts'
import type { Json } from './json.ts'
import type { Path } from './path.ts'
import { leadsTo } from './path.ts'

/** A withdrawn item of a list, and what it would say if it were restored. */
export interface WithdrawnChild extends Withdrawn {
  readonly id: string
  readonly document: Json
}

/** Withdrawn items right below a path, such as those of one list: each can be restored. */
export const withdrawnBelow = (state: JobState, path: Path): readonly WithdrawnChild[] =>
  state.withdrawn
    .filter(each => each.path.length === path.length + 1 && leadsTo(path, each.path))
    .map(each => ({ ...each, id: each.path.at(-1) ?? '', document: documentOf(state, each.path) }))

function documentOf(state: JobState, path: Path): Json {
  const place = placeAt(state.root, path)
  return place === undefined ? {} : itemOf(place)
}
