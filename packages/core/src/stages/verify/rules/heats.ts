import type { Rule } from '../rule.ts'
import { COMMON_PRACTICE, standing } from '../rule.ts'
import { hasMovingWater, isHeating } from './heater-water.ts'

/** The box can heat in some mode, with water moving. */
export const heats: Rule = {
  id: 'VERIFY-17',
  title: 'Heat in some mode',
  source: COMMON_PRACTICE,
  check: evidence => {
    const heaters = evidence.plant.circuits.filter(each => each.load.kind === 'heater')
    const heater = heaters[0]
    if (!heater || standing(evidence).length === 0) return []
    const can = standing(evidence).some(
      at =>
        at.state.kind === 'mode' &&
        hasMovingWater(evidence, at) &&
        heaters.some(each => isHeating(each, at)),
    )
    if (can) return []
    return [
      {
        rule: heats.id,
        message: 'never-heats',
        verdict: 'breaks',
        severity: 'caution',
        subjects: [heater.load.id, 'profile'],
        params: { heater: heater.load.label },
      },
    ]
  },
}
