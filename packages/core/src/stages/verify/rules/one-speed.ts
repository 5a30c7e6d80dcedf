import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf, plateShare, standing } from '../rule.ts'

/** Never two speeds of one motor together, nor the supply across low and high. */
export const oneSpeed: Rule = {
  id: 'VERIFY-10',
  title: 'One speed at a time',
  source: COMMON_PRACTICE,
  check: evidence =>
    evidence.job.loads.flatMap(load => {
      const windings = evidence.plant.circuits.filter(each => each.isMotor && each.load === load)
      if (windings.length < 2) return []
      const both = standing(evidence).find(
        at => windings.filter(each => plateShare(each, at) >= LIMITS.energised).length > 1,
      )
      if (!both) return []
      return [
        {
          rule: oneSpeed.id,
          message: 'two-speeds-together',
          verdict: 'breaks' as const,
          severity: 'danger' as const,
          subjects: [load.id],
          params: { load: load.label },
          on: commandsOf(both.state),
        },
      ]
    }),
}
