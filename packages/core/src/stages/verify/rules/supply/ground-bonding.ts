import type { CodeFinding } from '../../supply/artifact.ts'
import type { SupplyEvidence } from '../../supply/evidence.ts'
import { exemptionInputs, exemptionOf } from '../../supply/exemption.ts'
import { concludeAt, yardAt, yesOrNo } from '../../supply/place.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { fact, notCovered } from '../../supply/rule.ts'

function judge(evidence: SupplyEvidence): CodeFinding {
  const groundBonded = yesOrNo(evidence.survey.yard?.groundBonded, 'yard.groundBonded')
  return concludeAt(
    { rule: groundBonding.id, subjects: ['yard'], severity: 'danger' },
    { ...evidence.place, ...exemptionInputs(evidence), groundBonded },
    ({ groundBonded: bonded, ...point }) => {
      const ground = yardAt(evidence, point)?.ground
      if (!ground) return notCovered('ground')
      const exemption = exemptionOf(ground, point)
      if (exemption) return exemption
      return fact(bonded === 'yes', {
        message: bonded === 'yes' ? 'ground-bonded' : 'ground-unbonded',
        clause: ground.rim.by,
        params: { is: point.rim, may: ground.rim.value, near: ground.surfacesWithin },
      })
    },
  )
}

/**
 * Ground and floor around the tub are at its potential, unless nobody can reach the water from them.
 *
 * A rim of exactly the figure is enough and has no margin: an older text asked for more than that. A
 * deck that is built later ends the exemption, so the rim is asked for at every visit.
 */
export const groundBonding: SupplyRule = {
  id: 'SUPPLY-49',
  title: 'Ground and floor around the tub',
  about: 'yard',
  source: 'NEC 680.26(B)(2), 680.42(B), 680.43 exception 2 (from memory)',
  check: evidence => (evidence.survey.yard ? [judge(evidence)] : []),
}
