import { secondLines } from '../../src/domain/supply/circuits.ts'
import { offersOf } from '../../src/domain/wiring/offers.ts'
import type { Finding, Job, Landing, ProvenPlan } from '../../src/index.ts'
import { feedOf, judgeLanding, planAndProve } from '../../src/index.ts'
import { currentLimitFor, endsFor, seatings } from '../../src/stages/plan/candidates.ts'
import { demoJob } from './demo.ts'

/** A demo job with its proven plan. */
export interface Planned {
  readonly job: Job
  readonly proven: ProvenPlan
  readonly landing: Landing
}

/** Plans a demo tub on a demo box; a scenario starts from what is right. */
export function planned(tub: string, box: string): Planned {
  const job = demoJob(tub, box)
  const plan = planAndProve(job)
  if (!plan.ok) throw new Error(`no plan for ${tub} on ${box}: ${JSON.stringify(plan.failure)}`)
  return { job, proven: plan.value, landing: plan.value.plan.landing }
}

/** A landing as the planner proposes the first of its candidates, whether or not it holds. */
export function proposed(job: Job): Landing {
  const feed = feedOf(job)
  const [seating] = seatings(job)
  const currentLimit = currentLimitFor(job)
  const [offer] = feed ? offersOf(job.box, feed, secondLines(job.tub.supply)) : []
  const profile = job.box.profiles.find(each => each.id === job.box.profileFactory)
  if (!feed || !seating || !currentLimit || !offer || !profile)
    throw new Error(`nothing to propose for ${job.tub.id} on ${job.box.id}`)
  return {
    schema: 'landing/1',
    survey: job.tub.id,
    box: job.box.id,
    ends: endsFor(job, feed, seating),
    jumpers: offer.jumpers,
    straps: {},
    settings: { profile: profile.id, currentLimit },
    adapters: {},
  }
}

/** What is changed in a landing: ends moved, jumpers, straps and settings otherwise. */
export interface Slip {
  readonly ends?: Readonly<Record<string, string>>
  readonly jumpers?: Readonly<Record<string, string>>
  readonly straps?: Readonly<Record<string, string>>
  readonly profile?: string
  readonly amps?: number
}

export const slipped = (landing: Landing, slip: Slip): Landing => ({
  ...landing,
  ends: { ...landing.ends, ...slip.ends },
  jumpers: { ...landing.jumpers, ...slip.jumpers },
  straps: { ...landing.straps, ...slip.straps },
  settings: {
    profile: slip.profile ?? landing.settings.profile,
    currentLimit:
      slip.amps === undefined
        ? landing.settings.currentLimit
        : {
            si: slip.amps as Landing['settings']['currentLimit']['si'],
            text: `${slip.amps} A`,
          },
  },
})

/** Findings of a slip that the plan itself does not have. */
export function findingsOf(job: Job, landing: Landing): readonly Finding[] {
  const judged = judgeLanding(job, landing)
  if (!judged.ok) throw new Error(`no verdict: ${JSON.stringify(judged.failure)}`)
  return judged.value
}

/** `severity message subjects`, for findings that break. */
export const broken = (findings: readonly Finding[]): readonly string[] =>
  findings
    .filter(each => each.verdict === 'breaks' && each.severity !== 'notice')
    .map(each => `${each.severity} ${each.message} ${each.subjects.join(' ')}`)

export const messages = (findings: readonly Finding[]): ReadonlySet<string> =>
  new Set(findings.filter(each => each.severity !== 'notice').map(each => each.message))
