import type { EntryId } from './entry.ts'
import type { JobState, Withdrawn } from './job-state.ts'
import type { Path } from './path.ts'
import { isSafetyPath } from './safety.ts'

/** Why no verdict may be given yet: ids and parameters, no sentence. */
export type Hold =
  | { readonly kind: 'conflict'; readonly path: Path; readonly entries: readonly EntryId[] }
  | { readonly kind: 'shape'; readonly path: Path; readonly inside: readonly Path[] }
  /** An item was withdrawn by somebody who had not seen what was done inside it. */
  | { readonly kind: 'withdrawn'; readonly path: Path; readonly beside: readonly EntryId[] }
  | { readonly kind: 'orphan'; readonly path: Path }
  | { readonly kind: 'gap'; readonly store: string; readonly from: number; readonly to: number }
  | { readonly kind: 'fork'; readonly id: EntryId; readonly variants: readonly string[] }
  | {
      readonly kind: 'not-understood'
      readonly entry: EntryId
      readonly schema: string
      readonly act: string
    }

const heldByConflicts = ({ conflicts }: JobState): readonly Hold[] =>
  conflicts
    .filter(({ path }) => isSafetyPath(path))
    .map(({ kind, path, values, inside }) =>
      kind === 'shape'
        ? { kind: 'shape', path, inside }
        : { kind: 'conflict', path, entries: values.map(each => each.entry) },
    )

const restsOn = ({ path, beside }: Withdrawn): boolean =>
  beside.length > 0 && (isSafetyPath(path) || beside.some(each => isSafetyPath(each.path)))

const heldByWithdrawals = ({ withdrawn }: JobState): readonly Hold[] =>
  withdrawn.filter(restsOn).map(({ path, beside }) => ({
    kind: 'withdrawn',
    path,
    beside: beside.map(each => each.entry),
  }))

/** Everything that holds every verdict back. Empty: verdicts may be given. */
export function heldBack(state: JobState): readonly Hold[] {
  return [
    ...heldByConflicts(state),
    ...heldByWithdrawals(state),
    ...state.orphans.map((path): Hold => ({ kind: 'orphan', path })),
    ...state.gaps.map((gap): Hold => ({ kind: 'gap', ...gap })),
    ...state.forks
      .filter(fork => !fork.isSettled)
      .map(({ id, variants }): Hold => ({ kind: 'fork', id, variants })),
    ...state.notUnderstood.map(
      ({ entry, schema, act }): Hold => ({ kind: 'not-understood', entry, schema, act }),
    ),
  ]
}
