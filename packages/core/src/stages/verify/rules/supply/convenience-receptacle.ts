import { atLeast, atMost } from '../../../../base/compare.ts'
import type { Possible } from '../../../../base/possible.ts'
import { settlePoints } from '../../../../base/settle.ts'
import type { YardBook, YardPlace } from '../../../../domain/codebook/yard-book.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { Either, Member } from '../../supply/either.ts'
import { askingFor, eitherOf } from '../../supply/either.ts'
import type { SupplyEvidence } from '../../supply/evidence.ts'
import type { Receptacle } from '../../supply/outlets.ts'
import { feedsTubOf } from '../../supply/outlets.ts'
import type { Listed } from '../../supply/place.ts'
import { concludeAt, lengthOf, lengthUnit, listed, turnsOf, yardAt } from '../../supply/place.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { fact, notCovered } from '../../supply/rule.ts'

const AT = 'yard.receptacles'

type Band = NonNullable<YardBook['convenience']>

const nameOf = ({ edition, setting }: YardPlace): string => `${edition} ${setting}`

/** The bands that may count, by the place that they count at. */
function bandsOf(evidence: SupplyEvidence): ReadonlyMap<string, Band> {
  const found = settlePoints(evidence.place, place => {
    const band = yardAt(evidence, place)?.convenience
    return band ? [[nameOf(place), band] as const] : []
  })
  return new Map(found.flat())
}

const isIn = (distance: number, { least, most }: Band): boolean =>
  atLeast(distance, least.value) && atMost(distance, most.value)

const servesAt = (bands: ReadonlyMap<string, Band>, distance: number): ReadonlySet<string> =>
  new Set([...bands].flatMap(([place, band]) => (isIn(distance, band) ? [place] : [])))

/** An outlet: what hangs on its distance, and what on whether the cord of the tub takes it. */
function memberOf(
  evidence: SupplyEvidence,
  { thing, at }: Listed<Receptacle>,
  bands: ReadonlyMap<string, Band>,
): Member {
  const turns = turnsOf(evidence, ({ convenience }) => [
    convenience?.least.value,
    convenience?.most.value,
  ])
  const feeds = feedsTubOf(evidence, thing, at)
  const distance: Possible<number> = lengthOf(thing.distance, 'distance', `${at}.distance`, turns)
  const byDistance = distance.values.map(each => servesAt(bands, each))
  const isForOthers = feeds.values.includes('no')
  const mayServe = (place: string) => byDistance.some(each => each.has(place))
  return {
    serves: [
      ...(isForOthers ? byDistance : []),
      ...(feeds.values.includes('yes') ? [new Set<string>()] : []),
    ],
    inputs: [
      {
        ...distance,
        decides: place =>
          isForOthers && mayServe(place) && !byDistance.every(each => each.has(place)),
      },
      { ...feeds, decides: place => feeds.values.length > 1 && mayServe(place) },
    ],
  }
}

/** Outlets that nobody listed may be there or not. */
function outletsOf(evidence: SupplyEvidence, bands: ReadonlyMap<string, Band>): Either {
  const places = [...bands.keys()]
  if (evidence.survey.yard?.receptacles)
    return eitherOf(
      listed(evidence, 'receptacles').map(each => memberOf(evidence, each, bands)),
      places,
      AT,
    )
  const values = [new Set<string>(), new Set(places)]
  return { possible: { values, kind: 'unknown', at: AT }, asks: [AT] }
}

function judge(evidence: SupplyEvidence): CodeFinding {
  const bands = bandsOf(evidence)
  const { possible, asks } = outletsOf(evidence, bands)
  const found = concludeAt(
    {
      rule: convenienceReceptacle.id,
      subjects: [AT],
      severity: 'caution',
      params: { unit: lengthUnit(evidence) },
    },
    { ...evidence.place, serves: possible },
    ({ serves, ...place }) => {
      const band = bands.get(nameOf(place))
      if (!band) return notCovered('convenience')
      const isThere = serves.has(nameOf(place))
      return fact(isThere, {
        message: isThere ? 'convenience-there' : 'convenience-missing',
        clause: band.least.by,
        params: { least: band.least.value, may: band.most.value },
      })
    },
  )
  return askingFor(found, AT, asks)
}

/** An outlet for other things is there, near enough to need no long cord and too far to reach. */
export const convenienceReceptacle: SupplyRule = {
  id: 'SUPPLY-41',
  title: 'An outlet for other things, neither near nor far',
  about: 'yard',
  source: 'NEC 680.22(A)(1) by 680.42, 680.43(A)',
  check: evidence => (evidence.survey.yard ? [judge(evidence)] : []),
}
