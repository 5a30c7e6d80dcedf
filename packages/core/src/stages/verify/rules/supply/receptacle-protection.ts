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
import type { SupplyRule } from '../../supply/rule.ts'
import { fact, notCovered } from '../../supply/rule.ts'

/** An outlet near the tub is behind a ground-fault device, whatever it is for. */
export const receptacleProtection: SupplyRule = {
  id: 'SUPPLY-43',
  title: 'Outlets near the tub behind ground-fault protection',
  about: 'yard',
  source:
    'NEC 680.22(A)(4), 680.43(A)(2); CE Code 68-064; BS 7671 702.410.3.4; HD 60364-7-702 702.410.3.101',
  check: evidence => {
    const turns = turnsOf(evidence, yard => [yard.receptacleProtected?.value])
    return listed(evidence, 'receptacles').map(({ thing, at }) =>
      concludeAt(
        {
          rule: receptacleProtection.id,
          subjects: [at],
          severity: 'danger',
          params: { outlet: thing.label, unit: lengthUnit(evidence) },
        },
        {
          ...evidence.place,
          groundFault: yesOrNo(thing.groundFault, `${at}.groundFault`),
          distance: lengthOf(thing.distance, 'distance', `${at}.distance`, turns),
        },
        ({ distance, groundFault, ...place }) => {
          const figure = yardAt(evidence, place)?.receptacleProtected
          if (!figure) return notCovered('receptacle-protection')
          return fact(groundFault === 'yes' || !atMost(distance, figure.value), {
            message: 'receptacle-protection',
            clause: figure.by,
            params: { is: distance, may: figure.value },
          })
        },
      ),
    )
  },
}
