import type { Evidence, Rule } from '../rule.ts'
import { COMMON_PRACTICE } from '../rule.ts'

/** Loads that are off and still have a lead near line volts. */
export function liveWhenOffLoads({ allOff, plant, legVolts }: Evidence): readonly string[] {
  if (allOff.trip) return []
  const live = (node: string) => allOff.solved.potential(node) >= 0.5 * legVolts
  return [
    ...new Set(
      plant.circuits
        .filter(
          ({ load, a, b }) =>
            load.kind !== 'keypad' && load.kind !== 'audio' && (live(a) || live(b)),
        )
        .map(({ load }) => load.id),
    ),
  ]
}

/** A load switched in one leg stays live to earth when off: a caution for the lid, no fault. */
export const liveWhenOff: Rule = {
  id: 'VERIFY-19',
  title: 'Live when off',
  source: COMMON_PRACTICE,
  check: evidence =>
    liveWhenOffLoads(evidence).map(id => ({
      rule: liveWhenOff.id,
      message: 'live-when-off',
      verdict: 'holds',
      severity: 'notice',
      subjects: [id],
      params: { load: evidence.job.loads.find(each => each.id === id)?.label ?? id },
    })),
}
