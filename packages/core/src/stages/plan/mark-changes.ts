import type { Load } from '../../domain/load/load.ts'
import type { Adapter, Change } from '../match/artifact.ts'
import type { WiringPlan } from './artifact.ts'

const isReplaced = (change: Change): boolean =>
  change.kind === 'replace' || (change.kind === 'from-carton' && change.of !== 'keypad')

/** The adapters that the plan makes do with, which match could only estimate. */
const adaptersOf = (
  { landing }: WiringPlan,
  loads: readonly Load[],
  cost: number,
): readonly Adapter[] =>
  loads
    .filter(({ id }) => Object.hasOwn(landing.adapters, id))
    .map(({ id, label, plug }) => ({
      kind: 'adapter',
      load: id,
      label,
      cost,
      ...(plug ? { plug: plug.shape } : {}),
    }))

/**
 * A plan of a changed survey, with what was changed and how it counts against the plan.
 *
 * @param loads - of the job that was planned
 * @param adapterCost - of one adapter, in the relative units of the changes
 */
export const markChanges = (
  plan: WiringPlan,
  changes: readonly Change[],
  loads: readonly Load[],
  adapterCost: number,
): WiringPlan => ({
  ...plan,
  changes: [
    ...changes.filter(each => each.kind !== 'adapter'),
    ...adaptersOf(plan, loads, adapterCost),
  ],
  score: {
    ...plan.score,
    leftOut: changes.filter(each => each.kind === 'leave-out').length,
    replaced: changes.filter(isReplaced).length,
  },
})
