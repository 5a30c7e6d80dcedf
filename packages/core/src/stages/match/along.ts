import type { ControlBox } from '../../domain/box/control-box.ts'
import { leavesGap } from '../../domain/box/keypad-hole.ts'
import type { Survey } from '../survey/artifact.ts'
import type { Adapter, BlankingPlate, Change } from './artifact.ts'
import type { ChangeCosts } from './change-costs.ts'
import { adaptersOf } from './match-equipment.ts'
import { fromCarton } from './possible-changes.ts'
import type { Candidate } from './requirements.ts'
import { withChanges } from './with-changes.ts'

/** A keypad of another maker is never used again where the box brings its own. */
export const newKeypads = (
  survey: Survey,
  box: ControlBox,
  costs: ChangeCosts,
): readonly Change[] =>
  survey.loads.flatMap(load =>
    load.kind === 'keypad' ? (fromCarton(survey, box, load, costs) ?? []) : [],
  )

/** A plate for what the old keypad's hole leaves open around the new keypad. */
export function plateFor(
  { keypadHole: hole }: Survey,
  { keypadHole: own }: ControlBox,
  costs: ChangeCosts,
): readonly BlankingPlate[] {
  if (!hole || !own || !leavesGap(hole, own)) return []
  return [
    {
      kind: 'blanking-plate',
      load: 'keypad',
      label: 'keypad',
      cost: costs['blanking-plate'],
      width: hole.width.si,
      height: hole.height.si,
      ownWidth: own.width.si,
      ownHeight: own.height.si,
    },
  ]
}

/** The adapters that a changed tub asks for, as match counts them. */
function adaptersFor(survey: Survey, candidate: Candidate, costs: ChangeCosts): readonly Adapter[] {
  const needing = adaptersOf(survey, candidate)
  return survey.loads
    .filter(load => needing.includes(load.id))
    .map(({ id, label, plug }) => ({
      kind: 'adapter',
      load: id,
      label,
      cost: costs.adapter,
      ...(plug ? { plug: plug.shape } : {}),
    }))
}

/**
 * What a box asks for beside these changes, on the feed that asks for the fewest adapters.
 *
 * @param serving - the box on each feed on which it serves the changed tub; one at least
 */
export function alongWith(
  survey: Survey,
  changes: readonly Change[],
  serving: readonly Candidate[],
  costs: ChangeCosts,
): readonly Change[] {
  const box = serving[0]?.box
  if (!box) return []
  const keypads = newKeypads(survey, box, costs)
  const changed = withChanges(survey, [...changes, ...keypads])
  const adapters = serving
    .map(candidate => adaptersFor(changed, candidate, costs))
    .reduce((a, b) => (b.length < a.length ? b : a))
  return [...keypads, ...adapters, ...plateFor(survey, box, costs)]
}
