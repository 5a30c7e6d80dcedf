import {
  concludeAt,
  judgeNearest,
  lengthOf,
  lengthUnit,
  listed,
  turnsOf,
  turnsOfNearest,
  yardAt,
} from '../../supply/place.ts'
import type { SupplyRule } from '../../supply/rule.ts'

/** Nobody in the water reaches an outlet, the one of the tub's own cord included. */
export const receptacleDistance: SupplyRule = {
  id: 'SUPPLY-42',
  title: 'Outlets out of reach',
  about: 'yard',
  source:
    'NEC 680.22(A), 680.43(A); CE Code 68-064; BS 7671 702.32, 702.53; HD 60364-7-702; AS/NZS 3000 6.3',
  check: evidence => {
    const turns = turnsOf(evidence, yard => turnsOfNearest(yard.receptacle))
    return listed(evidence, 'receptacles').map(({ thing, at }) =>
      concludeAt(
        {
          rule: receptacleDistance.id,
          subjects: [at],
          severity: 'danger',
          params: { outlet: thing.label, unit: lengthUnit(evidence) },
        },
        {
          ...evidence.place,
          distance: lengthOf(thing.distance, 'distance', `${at}.distance`, turns),
        },
        point => judgeNearest(point.distance, yardAt(evidence, point)?.receptacle, 'receptacle'),
      ),
    )
  },
}
