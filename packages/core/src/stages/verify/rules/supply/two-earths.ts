import { atMost } from '../../../../base/compare.ts'
import { choiceOf } from '../../../../base/possible.ts'
import { EARTHINGS } from '../../../../domain/supply/run-words.ts'
import type { Yard } from '../../../../domain/supply/yard.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { SupplyEvidence } from '../../supply/evidence.ts'
import type { Listed } from '../../supply/place.ts'
import { concludeAt, lengthOf, lengthUnit, listed } from '../../supply/place.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { fact } from '../../supply/rule.ts'

/** How far people reach from one earthed thing to another [m]; common practice, no source. */
const REACH = { strict: 2.5, lenient: 2 } as const

function judgePoint(earthing: string, distance: number): PointFinding {
  const rest = { message: 'two-earths', params: { earthing, is: distance, may: REACH.strict } }
  if (earthing === 'TN-S' || !atMost(distance, REACH.strict)) return fact(true, rest)
  const found = { ...rest, verdict: 'experts-differ', margin: distance - REACH.strict } as const
  // Nearer than both readings nothing is disputed but what is to be done.
  return atMost(distance, REACH.lenient)
    ? found
    : { ...found, readings: { ...REACH, decides: 'designer' } }
}

const turns = () => [REACH.lenient, REACH.strict]

const judge = (
  evidence: SupplyEvidence,
  { thing, at }: Listed<NonNullable<Yard['metal']>[number]>,
): CodeFinding =>
  concludeAt(
    {
      rule: twoEarths.id,
      subjects: [at],
      severity: 'warning',
      params: { metal: thing.label, unit: lengthUnit(evidence) },
    },
    {
      earthing: choiceOf(evidence.survey.supply.earthing, EARTHINGS, 'supply.earthing'),
      distance: lengthOf(thing.distance, 'distance', `${at}.distance`, turns),
    },
    ({ earthing, distance }) => judgePoint(earthing, distance),
  )

/**
 * Earthed metal near a tub whose earth may become another one than that metal's.
 *
 * Two earths within reach of each other are a danger of their own: the designer has to know of it.
 */
export const twoEarths: SupplyRule = {
  id: 'SUPPLY-52',
  title: 'No two earths within reach',
  about: 'yard',
  source: 'common practice, no source',
  check: evidence =>
    evidence.survey.region === 'UK'
      ? listed(evidence, 'metal').map(each => judge(evidence, each))
      : [],
}
