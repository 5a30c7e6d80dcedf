import { given } from '../../../../base/possible.ts'
import type { YardBook } from '../../../../domain/codebook/yard-book.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { SupplyEvidence } from '../../supply/evidence.ts'
import type { Turns } from '../../supply/place.ts'
import {
  concludeAt,
  judgeNearest,
  lengthOf,
  lengthUnit,
  turnsOf,
  turnsOfNearest,
  yardAt,
  yesOrNo,
} from '../../supply/place.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { fact, notCovered, within } from '../../supply/rule.ts'

const AT = 'yard.disconnect'

const aboutOf = (evidence: SupplyEvidence, topic: 'near' | 'sight') => ({
  rule: disconnectPlace.id,
  subjects: [AT],
  topic,
  severity: 'warning' as const,
  params: { unit: lengthUnit(evidence) },
})

/** No barrier counts where the survey names none, or says that there is none. */
function reachOf({ survey }: SupplyEvidence, turns: Turns) {
  const reach = survey.yard?.disconnect?.reach
  const isNone = !reach || (reach.kind === 'unknown' && reach.reason === 'does not exist')
  return isNone ? given(0) : lengthOf(reach, 'distance', `${AT}.reach`, turns)
}

const distanceOf = ({ survey }: SupplyEvidence, turns: Turns) =>
  lengthOf(survey.yard?.disconnect?.distance, 'distance', `${AT}.distance`, turns)

/** As one reaches for it: round a fixed barrier the way is never shorter than straight. */
function judgeNear(evidence: SupplyEvidence): CodeFinding {
  const isGroundFault = isWatcher(evidence)
  const nearest = ({ disconnect }: YardBook) =>
    (isGroundFault ? disconnect.nearWithGroundFault : undefined) ?? disconnect.near
  const turns = turnsOf(evidence, yard => turnsOfNearest(nearest(yard)))
  const asked = {
    ...evidence.place,
    distance: distanceOf(evidence, turns),
    reach: reachOf(evidence, turns),
  }
  return concludeAt(aboutOf(evidence, 'near'), asked, point => {
    const yard = yardAt(evidence, point)
    return judgeNearest(Math.max(point.distance, point.reach), yard && nearest(yard), 'disconnect')
  })
}

/** Whether the last device before the tub, which is its disconnect, is a ground-fault device too. */
function isWatcher({ circuits, devices }: SupplyEvidence): boolean {
  const last = circuits.flatMap(({ segments }) =>
    segments.flatMap(({ isLast, cable }) => (isLast ? cable.from : [])),
  )
  return last.some(id => devices.get(id)?.board.parts.some(each => each.kind === 'ground-fault'))
}

/** Where a lock makes up for the way, nobody surveyed whether there is one. */
const orLocked = (found: PointFinding, isExcused: boolean): PointFinding =>
  isExcused && found.verdict === 'breaks'
    ? { ...found, verdict: 'not-covered', message: 'disconnect-lock' }
    : found

function judgeSight(evidence: SupplyEvidence): CodeFinding {
  const turns = turnsOf(evidence, yard => [yard.disconnect.sight?.value])
  const asked = {
    ...evidence.place,
    inSight: yesOrNo(evidence.survey.yard?.disconnect?.inSight, `${AT}.inSight`),
    distance: distanceOf(evidence, turns),
  }
  return concludeAt(aboutOf(evidence, 'sight'), asked, ({ distance, inSight, ...place }) => {
    const sight = yardAt(evidence, place)?.disconnect.sight
    if (!sight) return notCovered('disconnect-sight')
    const { value, by, isExcusedByLock } = sight
    const params = { is: distance, may: value }
    const found =
      inSight === 'yes'
        ? within(distance, value, { message: 'disconnect-sight', clause: by })
        : fact(false, { message: 'disconnect-unseen', clause: by, params })
    return orLocked(found, isExcusedByLock)
  })
}

/**
 * The disconnect is out of reach of people in the water, and in sight of who works on the tub.
 *
 * The switch that stops the pumps of a public tub is another rule's.
 */
export const disconnectPlace: SupplyRule = {
  id: 'SUPPLY-40',
  title: 'The disconnect out of reach and in sight',
  about: 'yard',
  source:
    'NEC 680.13, article 100 and 110.29; CE Code 68-404, 28-604; BS 7671 702.32, 702.53; HD 60364-7-702; AS/NZS 3000 6.3',
  check: evidence => (evidence.survey.yard ? [judgeNear(evidence), judgeSight(evidence)] : []),
}
