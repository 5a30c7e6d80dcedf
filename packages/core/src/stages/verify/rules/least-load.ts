import { atLeast } from '../../../base/compare.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf, standing } from '../rule.ts'

/** A triac carries at least the load below which it neither turns on nor off for certain. */
export const leastLoad: Rule = {
  id: 'VERIFY-28',
  title: 'Enough load on a triac',
  source: COMMON_PRACTICE,
  check: evidence =>
    evidence.plant.parts.flatMap(({ part, name, element }) => {
      if (part.kind !== 'contact' || part.leastLoad === undefined) return []
      const carrying = standing(evidence)
        .map(at => ({ at, amps: at.solved.amps(element) }))
        // What merely leaks or hangs on insulation is no load.
        .filter(({ amps }) => amps > (part.leakage?.si ?? 0) + LIMITS.touchAmps)
        .sort((a, b) => a.amps - b.amps)
      const [least] = carrying
      return !least || atLeast(least.amps, part.leastLoad.si)
        ? []
        : [
            {
              rule: leastLoad.id,
              message: 'below-least-load',
              verdict: 'breaks' as const,
              severity: 'caution' as const,
              subjects: [name],
              params: { part: part.id, amps: least.amps, least: part.leastLoad.si },
              on: commandsOf(least.at.state),
            },
          ]
    }),
}
