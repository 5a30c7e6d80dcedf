import { atMost } from '../../../../base/compare.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { Segment, SupplyEvidence } from '../../supply/evidence.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { conclude, fact } from '../../supply/rule.ts'

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

function judge({ cable, earth, where, method }: Segment): readonly CodeFinding[] {
  if (!earth) return []
  const params = { cable: cable.label, colour: earth.colour }
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
          return fact(false, { message: 'sheathed-outdoors', clause: TUB_WIRING, params })
        if (earth.colour !== 'bare')
          return fact(true, { message: 'earth-insulated', clause: TUB_WIRING, params })
        return isSheathed
          ? indoors(params)
          : fact(false, { message: 'earth-bare', clause: TUB_WIRING, params })
      },
    ),
  ]
}

/** Where nothing is flexible there is nothing to say. */
const NOTHING = 'flexible-none'
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
  check: ({ survey, circuits }: SupplyEvidence) =>
    survey.region === 'US'
      ? circuits.flatMap(({ segments }) =>
          segments
            .filter(({ cable }) => !cable.moulded)
            .flatMap(each => [...judge(each), ...flexible(each)])
            .filter(each => each.message !== NOTHING),
        )
      : [],
}
