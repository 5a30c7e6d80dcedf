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

/** Nobody in the water reaches a wall switch. */
export const wallSwitches: SupplyRule = {
  id: 'SUPPLY-46',
  title: 'Wall switches out of reach',
  about: 'yard',
  source:
    'NEC 680.22(C), 680.43(C); CE Code 68-404; BS 7671 702.32, 702.53; HD 60364-7-702; AS/NZS 3000 6.3',
  check: evidence => {
    const turns = turnsOf(evidence, yard => turnsOfNearest(yard.wallSwitch))
    return listed(evidence, 'switches').map(({ thing, at }) =>
      concludeAt(
        {
          rule: wallSwitches.id,
          subjects: [at],
          severity: 'danger',
          params: { switch: thing.label, unit: lengthUnit(evidence) },
        },
        {
          ...evidence.place,
          distance: lengthOf(thing.distance, 'distance', `${at}.distance`, turns),
        },
        point => judgeNearest(point.distance, yardAt(evidence, point)?.wallSwitch, 'switch'),
      ),
    )
  },
}
