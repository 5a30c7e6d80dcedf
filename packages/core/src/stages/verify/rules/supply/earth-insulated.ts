import { atMost } from '../../../../base/compare.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { Segment, SupplyEvidence } from '../../supply/evidence.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { conclude, fact, notCovered, within } from '../../supply/rule.ts'

/** Where nothing is flexible, or no earth lies, there is nothing to say. */
const NOTHING = 'wiring-none'

/** The longest cord of a tub [m]: 15 ft. @source [NEC-680] 680.42(A)(2) */
const CORD_MOST = 4.572

const TUB_WIRING = {
  standard: 'NEC',
  edition: '2020',
  clause: '680.42(C), 680.21(A)',
  read: 'page',
} as const

/** Wires of an indoor cable: bare earth within the sheath is read both ways. */
const indoors = (params: PointFinding['params']): PointFinding => ({
  verdict: 'experts-differ',
  margin: 0,
  message: 'earth-bare-indoors',
  clause: TUB_WIRING,
  params,
  readings: { strict: 1, lenient: 0, decides: 'authority' },
})

function judge(
  { survey: { region } }: SupplyEvidence,
  { cable, earth, where, method }: Segment,
): readonly CodeFinding[] {
  const params = { cable: cable.label, colour: earth?.colour ?? '' }
  const isLong = !atMost(cable.length.si, CORD_MOST)
  // Elsewhere it is common practice, without a clause.
  const clause = region === 'US' ? TUB_WIRING : undefined
  return [
    conclude(
      {
        rule: earthInsulated.id,
        subjects: [cable.id],
        topic: 'earth',
        severity: 'warning',
        params,
      },
      { where, method },
      point => {
        const isSheathed = point.method.startsWith('sheathed-cable')
        if (isSheathed && point.where !== 'indoors')
          return fact(false, { message: 'sheathed-outdoors', clause, params })
        if (point.method === 'cord' && (isLong || point.where === 'underground'))
          return fact(false, { message: 'cord-as-run', clause, params })
        // A cable in conduit outdoors has to be one for wet places: which it is was not told.
        if (point.method === 'cable-in-conduit' && point.where !== 'indoors')
          return notCovered('cable')
        // Without an earth another rule breaks.
        if (!earth) return fact(true, { message: NOTHING })
        if (earth.colour !== 'bare')
          return fact(true, { message: 'earth-insulated', clause, params })
        return isSheathed ? indoors(params) : fact(false, { message: 'earth-bare', clause, params })
      },
    ),
  ]
}

/** The cord of a tub, as it is listed with it. */
function cord({ cable }: Segment): CodeFinding {
  return conclude(
    {
      rule: earthInsulated.id,
      subjects: [cable.id],
      topic: 'cord',
      severity: 'warning',
      params: { cable: cable.label, unit: 'ft' },
    },
    {},
    () => within(cable.length.si, CORD_MOST, { message: 'cord-length', clause: TUB_WIRING }),
  )
}

const FLEXIBLE_MOST = 1.8288 // [m] 6 ft: a rule of thumb since the editions from 2014 on dropped it

function flexible({ cable, method, isLast }: Segment): readonly CodeFinding[] {
  if (!isLast || cable.moulded) return []
  return [
    conclude(
      {
        rule: earthInsulated.id,
        subjects: [cable.id],
        topic: 'flexible',
        severity: 'caution',
        params: { cable: cable.label, is: cable.length.si, may: FLEXIBLE_MOST, unit: 'ft' },
      },
      { method },
      point => {
        const isShort = atMost(cable.length.si, FLEXIBLE_MOST)
        if (point.method !== 'flexible-conduit') return fact(true, { message: NOTHING })
        if (isShort) return fact(true, { message: 'flexible-piece' })
        return {
          verdict: 'experts-differ',
          margin: 0,
          message: 'flexible-piece',
          params: {},
          readings: {
            strict: FLEXIBLE_MOST,
            lenient: cable.length.si,
            decides: 'authority',
          },
        }
      },
    ),
  ]
}

/** Wires towards a tub outdoors are insulated, their earth too; sheathed cable ends where the weather begins. */
export const earthInsulated: SupplyRule = {
  id: 'SUPPLY-14',
  title: 'Wiring fit for where it lies',
  about: 'segment',
  source: 'NEC 680.42(C), 680.21(A); 680.42(A)(1) of 2011 for the flexible piece',
  check: evidence => {
    const { survey, circuits } = evidence
    const isUnited = survey.region === 'US'
    const all = circuits.flatMap(({ segments }) => segments)
    const laid = all.filter(({ cable }) => !cable.moulded)
    return [
      ...laid.flatMap(each => judge(evidence, each)),
      ...(isUnited ? laid.flatMap(flexible) : []),
      ...(isUnited ? all.filter(({ cable }) => cable.moulded).map(cord) : []),
    ].filter(each => each.message !== NOTHING)
  },
}
