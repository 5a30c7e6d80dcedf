import { given } from '../../../../base/possible.ts'
import type { LightRule } from '../../../../domain/codebook/yard-book.ts'
import type { Yard } from '../../../../domain/supply/yard.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { SupplyEvidence } from '../../supply/evidence.ts'
import type { Listed } from '../../supply/place.ts'
import {
  concludeAt,
  lengthOf,
  lengthUnit,
  listed,
  NO_TURNS,
  turnsOf,
  yardAt,
  yesOrNo,
} from '../../supply/place.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { fact, notCovered } from '../../supply/rule.ts'

type Light = NonNullable<Yard['lights']>[number]

/** Sentences are named after what is asked, and over what heights count. */
const messageOf = ({ asks, over }: LightRule): string =>
  over === 'floor'
    ? `light-${asks}-zone`
    : over === 'water'
      ? `light-${asks}`
      : `light-${asks}-level`

function judgePoint(
  rule: LightRule,
  { distance, height }: { readonly distance: number; readonly height: number },
  isProtected: boolean,
): PointFinding {
  const { isClear, asks, within, below, by } = rule
  const rest = {
    message: messageOf(rule),
    clause: by,
    params: { is: distance, may: within, height, below },
  }
  if (isClear) return fact(true, rest)
  if (asks === 'absence') return fact(false, rest)
  if (asks === 'protection') return fact(isProtected, rest)
  // Its make was not surveyed, or nothing that it asks was found: protection alone is not enough.
  return isProtected || asks === 'pool'
    ? { ...rest, verdict: 'not-covered', margin: 0 }
    : fact(false, rest)
}

function judge(evidence: SupplyEvidence, { thing, at }: Listed<Light>): CodeFinding {
  const turns = (of: 'distance' | 'height') =>
    turnsOf(evidence, ({ lights: book }) => book?.turnsAt[of] ?? [])
  return concludeAt(
    {
      rule: lights.id,
      subjects: [at],
      severity: 'danger',
      params: { light: thing.label, unit: lengthUnit(evidence) },
    },
    {
      ...evidence.place,
      groundFault: yesOrNo(thing.groundFault, `${at}.groundFault`),
      distance: lengthOf(thing.distance, 'distance', `${at}.distance`, turns('distance')),
      height: lengthOf(thing.height, 'height', `${at}.height`, turns('height')),
      rim: lengthOf(evidence.survey.yard?.rimHeight, 'rim', 'yard.rimHeight', NO_TURNS),
    },
    ({ distance, height, rim, groundFault, ...place }) => {
      const book = yardAt(evidence, place)?.lights
      return book
        ? judgePoint(
            book.at({ distance, height, rim }),
            { distance, height },
            groundFault === 'yes',
          )
        : notCovered('light')
    },
  )
}

/** Who says whether a gazebo that is closed in counts as indoors, where that decides on a light. */
const gazebo = (): CodeFinding =>
  concludeAt(
    { rule: lights.id, subjects: ['yard'], topic: 'gazebo', severity: 'caution' },
    { setting: given('open') },
    () => notCovered('gazebo'),
  )

/**
 * No light over the water or beside it, but high up or made for it.
 *
 * Lights at full voltage are meant: extra-low voltage has rules of its own, which were not surveyed.
 */
export const lights: SupplyRule = {
  id: 'SUPPLY-45',
  title: 'Lights away from the water or high above it',
  about: 'yard',
  source:
    'NEC 680.22(B), 680.43(B); CE Code 68-066; BS 7671 702.32, 702.410.3.4; HD 60364-7-702; AS/NZS 3000 6.3',
  check: evidence => {
    const found = listed(evidence, 'lights').map(each => judge(evidence, each))
    const isAsked = found.some(each => each.asks.includes('yard.setting'))
    return isAsked ? [...found, gazebo()] : found
  },
}
