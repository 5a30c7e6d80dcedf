import { invariant } from '../base/invariant.ts'
import type { Outcome } from '../base/outcome.ts'
import { fail, ok } from '../base/outcome.ts'
import type { ControlBox } from '../domain/box/control-box.ts'
import type { Catalogue, Job } from '../domain/job.ts'
import { jobOf } from '../domain/job.ts'
import type { Landing } from '../domain/landing/landing.ts'
import type { BoxChanges, BoxMatch, MatchSet } from './match/artifact.ts'
import { costsWith } from './match/change-costs.ts'
import type { ChangeOptions } from './match/find-changes.ts'
import { CHANGE_LIMITS, changeSets } from './match/find-changes.ts'
import { matchEquipment } from './match/match-equipment.ts'
import type { ServingSet } from './match/serving-sets.ts'
import { withChanges } from './match/with-changes.ts'
import type { JudgedPlan, PlanFailure } from './plan/artifact.ts'
import { markChanges } from './plan/mark-changes.ts'
import { partsOf } from './plan/parts.ts'
import type { SearchLimits } from './plan/plan-wiring.ts'
import { isBetter, planWiring, SEARCH_LIMITS, scoreOf } from './plan/plan-wiring.ts'
import { landedPlan } from './sheet/landed-plan.ts'
import type { Survey } from './survey/artifact.ts'
import type { Verification, VerifyFailure } from './verify/artifact.ts'
import type { Weighed } from './verify/verify-plan.ts'
import { verifyPlan, weighPlan, withBounds } from './verify/verify-plan.ts'

/** The job in the order it is done. The architecture check reads this: a stage imports earlier ones. */
export const STAGES = [
  'survey',
  'match',
  'plan',
  'verify',
  'tune',
  'sheet',
  'commission',
  'diagnose',
  'handover',
] as const

/** The plan with its proof: the verifier solved the network that the plan makes, afresh. */
export type ProvenPlan = JudgedPlan<Verification>

/** Why there is no proven plan: plain data, like the plan, so that it can be kept and sent. */
export type ProofFailure = PlanFailure<Verification>

/** The best plan of one job, judged landing by landing by the verifier. */
export const planAndProve = (
  job: Job,
  limits: SearchLimits = SEARCH_LIMITS,
): Outcome<ProvenPlan, ProofFailure> => {
  const judge = (landing: Landing): Weighed | undefined => {
    const weighed = weighPlan(job, landing)
    return weighed.ok ? weighed.value : undefined
  }
  const planned = planWiring(job, judge, limits)
  if (!planned.ok) return fail(proofFailure(planned.failure))
  const { plan, verification } = planned.value
  return ok({ plan, verification: withBounds(job, plan.landing, verification.verification()) })
}

const proofFailure = (failure: PlanFailure<Weighed>): ProofFailure =>
  failure.reason === 'no-plan' ? { ...failure, closest: failure.closest?.verification() } : failure

/**
 * A landing that somebody made or found, as a plan with what the verifier says of it: whatever that is.
 *
 * Nothing was searched, so it is best of nothing.
 */
export function planAsLanded(job: Job, landing: Landing): Outcome<ProvenPlan, VerifyFailure> {
  const judged = verifyPlan(job, landing)
  if (!judged.ok) return judged
  const verification = withBounds(job, landing, judged.value)
  const adapters = Object.keys(landing.adapters).length
  const score = scoreOf(job, landing, adapters, verification)
  const plan = landedPlan(job, landing, verification, { parts: partsOf(job, landing), score })
  return ok({ plan, verification })
}

/** A tub planned on every box that may serve it. */
export interface PlannedRefit {
  readonly match: MatchSet
  /** Proven plans, the best first. */
  readonly plans: readonly ProvenPlan[]
  /** Boxes that may serve by their requirements and yet have no plan that holds. */
  readonly failures: readonly {
    readonly box: string
    readonly failure: ProofFailure
  }[]
}

/** What the changes of one box come to, with the plan where one holds. */
export interface ChangedRefit {
  readonly changes: BoxChanges
  readonly proven?: ProvenPlan
}

/** Plans a tub with these changes made, and marks the plan with them. */
function planChanged(
  survey: Survey,
  box: ControlBox,
  catalogue: Catalogue,
  { set }: ServingSet,
  { costs }: ChangeOptions,
  limits: SearchLimits,
): Outcome<ProvenPlan, ProofFailure> {
  const all = [...set.changes, ...set.along]
  const job = jobOf(withChanges(survey, all), box, catalogue)
  const planned = planAndProve(job, limits)
  if (!planned.ok) return planned
  const { plan, verification } = planned.value
  const marked = markChanges(plan, all, job.loads, costsWith(costs).adapter)
  return ok({ plan: marked, verification })
}

/**
 * The cheapest changes at the tub with which a box has a plan that holds, and that plan.
 *
 * Sets come cheapest first; the first one that leads to a plan is the answer. A search of landings
 * that stops shows nothing of its set, so nothing dearer is handed out in its place.
 */
export function changeAndProve(
  survey: Survey,
  box: ControlBox,
  catalogue: Catalogue,
  options: ChangeOptions = {},
  limits: SearchLimits = SEARCH_LIMITS,
): ChangedRefit {
  const most = { ...CHANGE_LIMITS, ...options.limits }.plans
  const sets = changeSets(survey, box, options)
  let tried = 0
  for (;;) {
    const next = sets.next()
    if (next.done) {
      const { value } = next
      return value.outcome === 'none' && tried > 0
        ? { changes: { outcome: 'no-plan', tried, search: value.search } }
        : { changes: value }
    }
    const { set, considered } = next.value
    const search = { considered }
    if (tried >= most)
      return { changes: { outcome: 'limit-reached', of: 'plans', limit: most, search } }
    tried++
    const planned = planChanged(survey, box, catalogue, next.value, options, limits)
    const found = { outcome: 'found', ...set, search } as const
    if (planned.ok) return { changes: { ...found, proof: 'holds' }, proven: planned.value }
    if (planned.failure.reason === 'open') return { changes: { ...found, proof: 'waits' } }
    if (planned.failure.reason === 'limit-reached') {
      const { limit } = planned.failure
      return { changes: { outcome: 'limit-reached', of: 'solves', limit, search } }
    }
  }
}

/** How a refit is planned, where not as usual. */
export interface RefitOptions {
  /** Work out, for boxes that cannot serve the tub as it is, what would have to change there. */
  readonly withChanges?: boolean
  readonly changes?: ChangeOptions
}

/** Whether a box is asked for changes: it cannot serve, or would use another maker's keypad. */
const asksForChanges = (survey: Survey, { verdict }: BoxMatch): boolean =>
  verdict === 'cannot' || survey.loads.some(each => each.kind === 'keypad')

/**
 * From what was found at the tub to proven plans.
 *
 * With changes, a box that cannot serve the tub as it is is planned with the cheapest set of changes
 * that leads to a plan; `match` then says of each such box what they are, or why there are none.
 *
 * @param report - called before each box, so that long work shows its progress
 */
export function planRefit(
  survey: Survey,
  boxes: readonly ControlBox[],
  catalogue: Catalogue,
  limits: SearchLimits = SEARCH_LIMITS,
  report: (box: ControlBox) => void = () => undefined,
  options: RefitOptions = {},
): PlannedRefit {
  const match = matchEquipment(survey, boxes)
  const plans: ProvenPlan[] = []
  const failures: { box: string; failure: ProofFailure }[] = []
  const matches: BoxMatch[] = []
  for (const [index, matched] of match.boxes.entries()) {
    const box = boxes[index]
    invariant(box !== undefined, 'a box for every match')
    if (options.withChanges && asksForChanges(survey, matched)) {
      report(box)
      const { changes, proven } = changeAndProve(survey, box, catalogue, options.changes, limits)
      if (proven) plans.push(proven)
      matches.push({ ...matched, changes })
      continue
    }
    matches.push(matched)
    if (matched.verdict !== 'may-serve') continue
    report(box)
    const plan = planAndProve(jobOf(survey, box, catalogue), limits)
    if (plan.ok) plans.push(plan.value)
    else failures.push({ box: box.id, failure: plan.failure })
  }
  plans.sort((a, b) => (isBetter(a.plan.score, b.plan.score) ? -1 : 1))
  return { match: { ...match, boxes: matches }, plans, failures }
}

/** Which boxes may serve, and for the others the cheapest changes that lead to a plan that holds. */
export function matchWithChanges(
  survey: Survey,
  boxes: readonly ControlBox[],
  catalogue: Catalogue,
  options: ChangeOptions = {},
  report: (box: ControlBox) => void = () => undefined,
): MatchSet {
  const match = matchEquipment(survey, boxes)
  const matches = match.boxes.map((matched, index) => {
    const box = boxes[index]
    if (!box || !asksForChanges(survey, matched)) return matched
    report(box)
    return { ...matched, changes: changeAndProve(survey, box, catalogue, options).changes }
  })
  return { ...match, boxes: matches }
}
