import type { Outcome } from '../base/outcome.ts'
import { ok } from '../base/outcome.ts'
import type { ControlBox } from '../domain/box/control-box.ts'
import type { Catalogue, Job } from '../domain/job.ts'
import { jobOf } from '../domain/job.ts'
import type { Landing } from '../domain/landing/landing.ts'
import type { MatchSet } from './match/artifact.ts'
import { matchEquipment } from './match/match-equipment.ts'
import type { JudgedPlan, PlanFailure } from './plan/artifact.ts'
import type { SearchLimits } from './plan/plan-wiring.ts'
import { isBetter, planWiring, SEARCH_LIMITS } from './plan/plan-wiring.ts'
import type { Survey } from './survey/artifact.ts'
import type { Verification } from './verify/artifact.ts'
import { verifyPlan, withBounds } from './verify/verify-plan.ts'

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

/** The best plan of one job, judged landing by landing by the verifier. */
export const planAndProve = (
  job: Job,
  limits: SearchLimits = SEARCH_LIMITS,
): Outcome<ProvenPlan, PlanFailure<Verification>> => {
  const judge = (landing: Landing): Verification | undefined => {
    const verification = verifyPlan(job, landing)
    return verification.ok ? verification.value : undefined
  }
  const planned = planWiring(job, judge, limits)
  if (!planned.ok) return planned
  const { plan, verification } = planned.value
  return ok({ plan, verification: withBounds(job, plan.landing, verification) })
}

/** A tub planned on every box that may serve it. */
export interface PlannedRefit {
  readonly match: MatchSet
  /** Proven plans, the best first. */
  readonly plans: readonly ProvenPlan[]
  /** Boxes that may serve by their requirements and yet have no plan that holds. */
  readonly failures: readonly {
    readonly box: string
    readonly failure: PlanFailure<Verification>
  }[]
}

/**
 * From what was found at the tub to proven plans.
 *
 * @param report - called before each box, so that long work shows its progress
 */
export function planRefit(
  survey: Survey,
  boxes: readonly ControlBox[],
  catalogue: Catalogue,
  limits: SearchLimits = SEARCH_LIMITS,
  report: (box: ControlBox) => void = () => undefined,
): PlannedRefit {
  const match = matchEquipment(survey, boxes)
  const may = new Set(
    match.boxes.filter(each => each.verdict === 'may-serve').map(each => each.box),
  )
  const plans: ProvenPlan[] = []
  const failures: { box: string; failure: PlanFailure<Verification> }[] = []
  for (const box of boxes) {
    if (!may.has(box.id)) continue
    report(box)
    const plan = planAndProve(jobOf(survey, box, catalogue), limits)
    if (plan.ok) plans.push(plan.value)
    else failures.push({ box: box.id, failure: plan.failure })
  }
  plans.sort((a, b) => (isBetter(a.plan.score, b.plan.score) ? -1 : 1))
  return { match, plans, failures }
}
