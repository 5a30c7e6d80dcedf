import type { Gap, JobState } from '@tubwright/records'
import { fieldAt, pathKey } from '@tubwright/records'
import type { Opinion } from './oracle.ts'

const slashed = (path: readonly string[]): string => pathKey(path).replaceAll('\u001f', '/')

const eachOf = ({ store, from, to }: Gap): readonly string[] =>
  Array.from({ length: to - from + 1 }, (_, index) => `${store}:${from + index}`)

/** Every missing id that a state tells of, one by one. */
export const missingOf = (state: JobState): readonly string[] => state.gaps.flatMap(eachOf).sort()

/** What a state says, in the words of the oracle; heads from `stateText`, which lists them all. */
export function opinionOfState(state: JobState, text: string): Opinion {
  const { places } = JSON.parse(text) as {
    places: { path: string[]; field: [string, string, string, string][] }[]
  }
  const heads = places
    .filter(each => each.field.length > 0)
    .map(each => [
      slashed(each.path),
      each.field.map(([id, , , says]) => `${id} ${says === '' ? 'nothing' : says}`).sort(),
    ])
  return {
    heads: Object.fromEntries(heads),
    withdrawn: state.withdrawn.map(each => slashed(each.path)).sort(),
    beside: Object.fromEntries(
      state.withdrawn.map(each => [
        slashed(each.path),
        each.beside.map(({ entry }) => entry).sort(),
      ]),
    ),
    conflicts: state.conflicts.map(each => slashed(each.path)).sort(),
    orphans: state.orphans.map(slashed).sort(),
    gaps: missingOf(state),
    forks: state.forks.map(each => each.id).sort(),
    strange: state.notUnderstood.map(each => each.entry).sort(),
  }
}

/** What `fieldAt` says, short. */
export const saidAt = (state: JobState, path: readonly string[]): unknown => {
  const field = fieldAt(state, path)
  switch (field.kind) {
    case 'empty':
      return undefined
    case 'set':
      return field.value
    case 'conflict':
      return { conflict: field.values.map(each => each.value) }
  }
}
