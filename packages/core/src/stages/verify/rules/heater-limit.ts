import type { Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf } from '../rule.ts'
import { isHeating } from './heater-water.ts'

/** With the limit contacts open no heater is energised, whatever is commanded. */
export const heaterLimit: Rule = {
  id: 'VERIFY-9',
  title: 'The limit stops the heater',
  source: COMMON_PRACTICE,
  check: evidence => {
    const heaters = evidence.plant.circuits.filter(each => each.load.kind === 'heater')
    for (const at of evidence.limitOpen)
      for (const heater of heaters)
        if (isHeating(heater, at))
          return [
            {
              rule: heaterLimit.id,
              message: 'heater-past-limit',
              verdict: 'breaks',
              severity: 'danger',
              subjects: [heater.load.id],
              params: { heater: heater.load.label },
              on: commandsOf(at.state),
            },
          ]
    return []
  },
}
