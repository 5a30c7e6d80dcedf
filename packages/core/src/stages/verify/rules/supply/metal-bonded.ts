import { atMost } from '../../../../base/compare.ts'
import {
  concludeAt,
  lengthOf,
  lengthUnit,
  listed,
  turnsOf,
  yardAt,
  yesOrNo,
} from '../../supply/place.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { fact, notCovered } from '../../supply/rule.ts'

const orAsked = (found: PointFinding, isForAuthority: boolean): PointFinding =>
  isForAuthority && found.verdict === 'breaks'
    ? { ...found, verdict: 'not-covered', message: 'metal-authority' }
    : found

/**
 * Fixed metal that people touch from the water is joined to the bonding of the tub.
 *
 * Its height and its size are left out: every piece that is listed counts.
 */
export const metalBonded: SupplyRule = {
  id: 'SUPPLY-47',
  title: 'Metal near the tub joined to its bonding',
  about: 'yard',
  source: 'NEC 680.26(B)(7), 680.43(D); CE Code 68-000; BS 7671 702.415.2; AS/NZS 3000 5.6.2.6',
  check: evidence => {
    const turns = turnsOf(evidence, yard => [yard.metal?.value])
    return listed(evidence, 'metal').map(({ thing, at }) =>
      concludeAt(
        {
          rule: metalBonded.id,
          subjects: [at],
          severity: 'danger',
          params: { metal: thing.label, unit: lengthUnit(evidence) },
        },
        {
          ...evidence.place,
          bonded: yesOrNo(thing.bonded, `${at}.bonded`),
          distance: lengthOf(thing.distance, 'distance', `${at}.distance`, turns),
        },
        ({ distance, bonded, ...place }) => {
          const figure = yardAt(evidence, place)?.metal
          if (!figure) return notCovered('metal')
          const isRight = bonded === 'yes' || !atMost(distance, figure.value)
          const params = { is: distance, may: figure.value }
          const found = fact(isRight, { message: 'metal', clause: figure.by, params })
          return orAsked(found, figure.isForAuthority)
        },
      ),
    )
  },
}
