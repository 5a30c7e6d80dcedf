import type { ControlBox } from '../../domain/box/control-box.ts'
import type { Survey } from '../survey/artifact.ts'
import { newKeypads } from './along.ts'
import type { BoxChanges, Shortfall } from './artifact.ts'
import type { ChangeCosts } from './change-costs.ts'
import { costsWith } from './change-costs.ts'
import { candidatesOf, shortfallsOf } from './match-equipment.ts'
import { possibleChanges } from './possible-changes.ts'
import type { Candidate } from './requirements.ts'
import { demandsOf } from './requirements.ts'
import type { ServingSet } from './serving-sets.ts'
import { loadOf, servingSets } from './serving-sets.ts'
import { withChanges } from './with-changes.ts'

/** Where the search for changes stops, whatever it has found. */
export interface ChangeLimits {
  /** Sets looked at for one box, at most. */
  readonly sets: number
  /** Sets planned for one box, at most. */
  readonly plans: number
}

export const CHANGE_LIMITS: ChangeLimits = { sets: 5000, plans: 12 }

export interface ChangeOptions {
  /** In the place of the table's own. */
  readonly costs?: Partial<ChangeCosts>
  readonly limits?: Partial<ChangeLimits>
}

/** Requirements that only the supply could meet: the run to the box and its breaker count to it. */
const OF_SUPPLY =
  /^(region|frequency|system|conductors|high-leg|breaker|current-limit|size .*|terminal .*)$/u
const OF_BAY = 'room'

interface Reach {
  readonly candidate: Candidate
  readonly all: readonly Shortfall[]
  readonly supply: readonly Shortfall[]
  readonly bay: readonly Shortfall[]
}

/** What of a candidate's shortfalls no change of a load could mend. */
function reachOf(survey: Survey, candidate: Candidate): Reach {
  const all = shortfallsOf(demandsOf(survey), candidate)
  return {
    candidate,
    all,
    supply: all.filter(each => OF_SUPPLY.test(each.requirement)),
    bay: all.filter(each => each.requirement === OF_BAY),
  }
}

const beyond = ({ supply, bay }: Reach): number => supply.length + bay.length

/** Of two feeds the one that lacks less of what no load could mend, then less of all. */
const nearer = (a: Reach, b: Reach): Reach =>
  beyond(b) < beyond(a) || (beyond(b) === beyond(a) && b.all.length < a.all.length) ? b : a

/** Shortfalls of single loads that no change of theirs mends. */
function unmendedOf(
  survey: Survey,
  candidates: readonly Candidate[],
  costs: ChangeCosts,
): readonly Shortfall[] {
  const demands = demandsOf(survey)
  const [first, ...others] = candidates.map(each => shortfallsOf(demands, each))
  return (first ?? []).filter(({ requirement }) => {
    const load = survey.loads.find(each => each.id === loadOf(requirement))
    const isEverywhere = others.every(all => all.some(each => each.requirement === requirement))
    return (
      load !== undefined &&
      isEverywhere &&
      possibleChanges(survey, candidates, load, costs).length === 0
    )
  })
}

/** Why no further set of changes is named. */
export type NoFurther = Exclude<BoxChanges, { readonly outcome: 'found' | 'no-plan' }>

/**
 * Sets of changes at the tub with which a box would serve, the cheapest first, and why there is no
 * further one. For a box that may serve as it is the first set has no change in it.
 */
export function* changeSets(
  survey: Survey,
  box: ControlBox,
  { costs: others, limits }: ChangeOptions = {},
): Generator<ServingSet, NoFurther> {
  const costs = costsWith(others)
  const most = { ...CHANGE_LIMITS, ...limits }.sets
  const reaches = candidatesOf(survey, box).map(each => reachOf(survey, each))
  const within = reaches.filter(each => beyond(each) === 0).map(each => each.candidate)
  const kept = withChanges(survey, newKeypads(survey, box, costs))
  if (within.length === 0) {
    const { candidate, supply, bay } = reaches.reduce(nearer)
    const unmended = unmendedOf(kept, [candidate], costs)
    return { outcome: 'out-of-reach', supply, others: [...bay, ...unmended] }
  }
  const unmended = unmendedOf(kept, within, costs)
  if (unmended.length > 0) return { outcome: 'none', unmended, search: { considered: 0 } }
  const { stopped, considered } = yield* servingSets(survey, within, costs, most)
  const search = { considered }
  return stopped
    ? { outcome: 'limit-reached', of: 'sets', limit: most, search }
    : { outcome: 'none', unmended: [], search }
}

/** The cheapest changes with which a box would serve by its requirements; nothing is planned. */
export function cheapestChanges(
  survey: Survey,
  box: ControlBox,
  options: ChangeOptions = {},
): BoxChanges {
  const { done, value } = changeSets(survey, box, options).next()
  if (done) return value
  const { set, considered } = value
  return { outcome: 'found', ...set, search: { considered }, proof: 'not-tried' }
}
