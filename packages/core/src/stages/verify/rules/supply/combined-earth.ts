import { choiceOf } from '../../../../base/possible.ts'
import { settlePoints } from '../../../../base/settle.ts'
import { EARTHINGS } from '../../../../domain/supply/run-words.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, SupplyEvidence } from '../../supply/evidence.ts'
import { isAmerican } from '../../supply/evidence.ts'
import { yardAt } from '../../supply/place.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, fact, notCovered } from '../../supply/rule.ts'

function judge(evidence: SupplyEvidence, { circuit }: CircuitEvidence): CodeFinding {
  const [figure] = settlePoints(evidence.place, place => yardAt(evidence, place)?.combinedEarth)
  return conclude(
    { rule: combinedEarth.id, subjects: [circuit.device], severity: 'warning' },
    { earthing: choiceOf(evidence.survey.supply.earthing, EARTHINGS, 'supply.earthing') },
    ({ earthing }) => {
      if (!figure) return notCovered('earthing')
      const rest = { clause: figure.by, params: { earthing, ohms: figure.value } }
      if (earthing === 'TT') return fact(true, { ...rest, message: 'earth-electrode' })
      return earthing === 'TN-C-S'
        ? { ...rest, verdict: 'experts-differ', margin: 0, message: 'earth-combined' }
        : fact(true, { ...rest, message: 'earth-apart' })
    },
  )
}

/**
 * Where the supplier brings neutral and earth as one, the designer decides on the earth of the tub.
 *
 * Nothing is advised: an electrode of its own and the earth of the house both have their dangers. So
 * no reading stands as the safe one.
 */
export const combinedEarth: SupplyRule = {
  id: 'SUPPLY-51',
  title: 'The earth of the supply',
  about: 'circuit',
  source: 'BS 7671 702.410.3.4.3, note',
  check: evidence =>
    isAmerican(evidence.survey.region)
      ? []
      : evidence.circuits.slice(0, 1).map(each => judge(evidence, each)),
}
