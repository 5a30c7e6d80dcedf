import type { SupplyEvidence } from '../../supply/evidence.ts'
import type { Receptacle } from '../../supply/outlets.ts'
import { feedsTubOf } from '../../supply/outlets.ts'
import type { Listed, Turns } from '../../supply/place.ts'
import { concludeAt, lengthOf, lengthUnit, listed, turnsOf, yardAt } from '../../supply/place.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { fact, notCovered, within } from '../../supply/rule.ts'

function judge(evidence: SupplyEvidence, { thing, at }: Listed<Receptacle>, turns: Turns) {
  const about = {
    rule: cordReach.id,
    subjects: [at],
    severity: 'warning' as const,
    params: { outlet: thing.label, unit: lengthUnit(evidence) },
  }
  const asked = {
    ...evidence.place,
    feedsTub: feedsTubOf(evidence, thing, at),
    distance: lengthOf(thing.distance, 'distance', `${at}.distance`, turns),
  }
  return concludeAt(about, asked, ({ distance, feedsTub, ...place }) => {
    const cord = yardAt(evidence, place)?.cord
    if (!cord) return notCovered('cord')
    const found = within(distance, cord.value, { message: 'cord', clause: cord.by })
    return feedsTub === 'yes' ? found : fact(true, { ...found })
  })
}

/**
 * The cord of the tub reaches its outlet without another cord between.
 *
 * How near that outlet may be is the rule of all outlets.
 */
export const cordReach: SupplyRule = {
  id: 'SUPPLY-44',
  title: 'The outlet of the tub within reach of its cord',
  about: 'yard',
  source: 'NEC 680.42(A)(2)',
  check: evidence => {
    const turns = turnsOf(evidence, yard => [yard.cord?.value])
    return listed(evidence, 'receptacles').flatMap(each => {
      const { values } = feedsTubOf(evidence, each.thing, each.at)
      // A book without a figure has nothing to say of outlets that may be for other things.
      const isJudged = turns().length > 0 ? values.includes('yes') : !values.includes('no')
      return isJudged ? [judge(evidence, each, turns)] : []
    })
  },
}
