import { choiceOf } from '../../../../base/possible.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { SupplyEvidence } from '../../supply/evidence.ts'
import { lengthUnit, yardAt } from '../../supply/place.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, fact, notCovered } from '../../supply/rule.ts'

const judge = (evidence: SupplyEvidence): CodeFinding =>
  conclude(
    {
      rule: emergencyStop.id,
      subjects: ['yard'],
      severity: 'warning',
      params: { unit: lengthUnit(evidence) },
    },
    {
      ...evidence.place,
      dwelling: choiceOf(evidence.survey.yard?.dwelling, ['one-family', 'other'], 'yard.dwelling'),
    },
    ({ dwelling, ...place }) => {
      const stop = yardAt(evidence, place)?.emergencyStop
      if (!stop) return notCovered('emergency')
      if (dwelling === 'one-family')
        return fact(true, { message: 'emergency-none', clause: stop.by })
      // Whether one is there was not surveyed.
      const found = { verdict: 'not-covered', margin: 0, clause: stop.by } as const
      return stop.least === undefined
        ? { ...found, message: 'emergency-needed', params: {} }
        : { ...found, message: 'emergency-needed-at', params: { may: stop.least } }
    },
  )

/** Users find a switch that stops the pumps, everywhere but at a one-family dwelling. */
export const emergencyStop: SupplyRule = {
  id: 'SUPPLY-50',
  title: 'A switch for users that stops the pumps',
  about: 'yard',
  source: 'NEC 680.41; CE Code 68-404 4)',
  check: evidence => (evidence.survey.yard ? [judge(evidence)] : []),
}
