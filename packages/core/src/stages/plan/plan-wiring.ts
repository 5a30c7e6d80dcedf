import { boundsOf } from '../../base/known.ts'
import type { Outcome } from '../../base/outcome.ts'
import { fail, ok } from '../../base/outcome.ts'
import type { Feed } from '../../domain/box/control-box.ts'
import type { Job } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import { jumperSettings, movedEnds, strapSettings } from '../../domain/landing/positions.ts'
import { secondLines } from '../../domain/supply/circuits.ts'
import { offersOf } from '../../domain/wiring/offers.ts'
import { arriving, feedOf } from '../../domain/wiring/states.ts'
import type {
  CannotMessage,
  Judge,
  Judged,
  JudgedPlan,
  PlanFailure,
  Score,
  SearchReport,
  WiringPlan,
} from './artifact.ts'
import type { Seating } from './candidates.ts'
import {
  adaptersOf,
  currentLimitFor,
  endsFor,
  mayHeatWet,
  seatings,
  strapsFor,
  unseated,
} from './candidates.ts'
import { partsOf } from './parts.ts'

/** Where a search stops, whatever it has found. */
export interface SearchLimits {
  /** Landings solved, at most. */
  readonly solves: number
}

export const SEARCH_LIMITS: SearchLimits = { solves: 2000 }

interface Candidate {
  readonly seating: Seating
  readonly adapters: number
  readonly landing: Landing
}

function* candidatesOf(
  job: Job,
  feed: Feed,
  limit: Landing['settings']['currentLimit'],
): Generator<Candidate> {
  const offers = offersOf(job.box, feed, secondLines(job.tub.supply))
  const seated = seatings(job)
    .map(seating => ({ seating, adapters: adaptersOf(job, seating) }))
    .sort((a, b) => a.adapters.length - b.adapters.length)
  for (const { seating, adapters } of seated) {
    const ends = endsFor(job, feed, seating)
    const wet = job.box.profiles.filter(each => mayHeatWet(job, seating, each))
    // Where none is left, the judge says of each what it makes of it.
    const profiles = wet.length > 0 ? wet : job.box.profiles
    for (const offer of offers)
      for (const straps of strapsFor(job, seating, offer))
        for (const profile of profiles)
          yield {
            seating,
            adapters: adapters.length,
            landing: {
              schema: 'landing/1',
              survey: job.tub.id,
              box: job.box.id,
              ends,
              jumpers: offer.jumpers,
              straps,
              settings: { profile: profile.id, currentLimit: limit },
              adapters: Object.fromEntries(adapters.map(load => [load.id, load.label])),
            },
          }
  }
}

/** How good a proven landing is. */
export function scoreOf(job: Job, landing: Landing, adapters: number, verification: Judged): Score {
  const jumpers = jumperSettings(job, landing).filter(each => each.moves).length
  const straps = strapSettings(job, landing).filter(each => each.moves).length
  return {
    dangers: verification.findings.filter(each => each.severity === 'danger').length,
    warnings: verification.findings.filter(each => each.severity === 'warning').length,
    // Of this tub as it is described: `markChanges` counts what was changed in the survey before.
    leftOut: 0,
    replaced: 0,
    adapters,
    heatModes: -verification.modes.filter(each => each.heats).length,
    margin: -Math.round(verification.smallestMargin * 1000),
    imbalance: Math.round(verification.imbalance * 1000),
    bridged: Math.round(verification.jumperAmps * 1000),
    moved: jumpers + straps,
    order: job.ends.map(end => landing.ends[end.id] ?? '').join(' '),
  }
}

const KEYS = [
  'dangers',
  'warnings',
  'leftOut',
  'replaced',
  'adapters',
  'heatModes',
  'margin',
  'imbalance',
  'bridged',
  'moved',
] as const

/** Whether a is better than b: the first difference decides. */
export function isBetter(a: Score, b: Score): boolean {
  for (const key of KEYS) if (a[key] !== b[key]) return a[key] < b[key]
  return a.order < b.order
}

/** Nothing can be better but by adapters and what comes after them. */
const isSafe = ({ dangers, warnings }: Score): boolean => dangers === 0 && warnings === 0

const breaksOf = (verification: Judged): number =>
  verification.findings.filter(each => each.verdict === 'breaks' && each.severity !== 'notice')
    .length

interface Found<Verdict extends Judged> {
  readonly candidate: Candidate
  readonly verification: Verdict
  readonly score: Score
}

function planOf(job: Job, feed: Feed, found: Found<Judged>, search: SearchReport): WiringPlan {
  const { landing, seating } = found.candidate
  const used = new Set([...seating.values()].map(place => place.id))
  return {
    survey: job.tub.id,
    box: job.box.id,
    feed: feed.id,
    landing,
    assignments: [...seating].map(([load, place]) => ({ load: load.id, place: place.id })),
    jumpers: jumperSettings(job, landing),
    straps: strapSettings(job, landing),
    parts: partsOf(job, landing),
    changes: [],
    reidentify: found.verification.findings
      .filter(each => each.message === 're-identify')
      .flatMap(each => each.subjects),
    capped: job.ends.filter(end => landing.ends[end.id] === 'insulated').map(end => end.id),
    unusedPlaces: job.box.places.filter(place => !used.has(place.id)).map(place => place.id),
    moved: movedEnds(job, landing),
    score: found.score,
    search,
  }
}

const cannot = (
  box: string,
  message: CannotMessage,
  params: Readonly<Record<string, string>> = {},
): PlanFailure<never> => ({ reason: 'cannot', box, message, params })

/** Every landing sets a current limit; where none can be chosen, why. */
function withoutLimit({ tub, box }: Job): PlanFailure<never> {
  return boundsOf(tub.supply.breaker)
    ? cannot(box.id, 'no-setting-low-enough')
    : {
        reason: 'open',
        box: box.id,
        question: { message: 'ask-breaker', subjects: ['supply'], params: {} },
      }
}

function withoutCandidate(job: Job): PlanFailure<never> {
  const without = unseated(job).map(each => each.label)
  return without.length > 0
    ? cannot(job.box.id, 'too-few-places', { loads: without.join(', ') })
    : cannot(job.box.id, 'volts-not-together')
}

/**
 * The best landing of this tub on this box, with what the judge says of it.
 *
 * Goes through every seating, jumper, strap and profile, seatings with the fewest adapters first:
 * once one holds without a danger or a warning, seatings that need more adapters are bounded out. Jumper and strap positions
 * that give some load other volts than its plate are left out on the solution of the empty box, and
 * profiles that could only heat dry or never.
 * Best is: no danger, no warning, no load left out, none replaced, fewest adapters, heat in most modes, largest smallest margin, legs
 * best balanced, least through the jumpers, fewest positions moved, then the order of the terminals.
 *
 * @returns fails with 'no-plan' when every candidate breaks something, with 'limit-reached' when
 *   the search stopped first: never the one for the other; with 'open' or 'cannot' when there is no
 *   candidate at all
 */
export function planWiring<Verdict extends Judged>(
  job: Job,
  judge: Judge<Verdict>,
  limits: SearchLimits = SEARCH_LIMITS,
): Outcome<JudgedPlan<Verdict>, PlanFailure<Verdict>> {
  const feed = feedOf(job)
  if (!feed) return fail(cannot(job.box.id, 'not-for-system'))
  const here = arriving(job)
  if (!Object.keys(feed.lands).every(each => (here as ReadonlySet<string>).has(each)))
    return fail(cannot(job.box.id, 'conductor-missing'))
  const limit = currentLimitFor(job)
  if (!limit) return fail(withoutLimit(job))
  let best: Found<Verdict> | undefined
  let closest: Verdict | undefined
  let [considered, solved, boundedOut] = [0, 0, 0]
  for (const candidate of candidatesOf(job, feed, limit)) {
    considered++
    if (best && isSafe(best.score) && candidate.adapters > best.score.adapters) {
      boundedOut++
      continue
    }
    if (solved >= limits.solves)
      return fail({
        reason: 'limit-reached',
        limit: limits.solves,
        search: { considered, solved, boundedOut },
      })
    solved++
    const verification = judge(candidate.landing)
    if (!verification) continue
    if (!verification.holds) {
      if (!closest || breaksOf(verification) < breaksOf(closest)) closest = verification
      continue
    }
    const score = scoreOf(job, candidate.landing, candidate.adapters, verification)
    if (!best || isBetter(score, best.score)) best = { candidate, verification, score }
  }
  const search = { considered, solved, boundedOut }
  if (considered === 0) return fail(withoutCandidate(job))
  if (!best) return fail({ reason: 'no-plan', box: job.box.id, search, closest })
  return ok({ plan: planOf(job, feed, best, search), verification: best.verification })
}
