import type { PlannedRefit, Survey } from '@tubwright/core'
import { planAndProve, planRefit } from '@tubwright/core'
import { wirePlan, wirePlanFailure, writeLanding } from '@tubwright/formats'
import type { Shelf } from '../catalogue.ts'
import { findBox, findSurvey, jobFor } from '../catalogue.ts'
import { EXIT } from '../exits.ts'
import { writeWhole } from '../files.ts'
import type { Talk } from '../talk.ts'
import { exitFor } from './findings.ts'
import { showFailure, showOthers, showPlan } from './show-plan.ts'

export interface PlanOptions {
  readonly box?: string
  readonly json?: boolean
  readonly landing?: string
}

/** The best plan of a survey: on one box, or on every box that may serve. */
export function bestPlan(
  shelf: Shelf,
  survey: Survey,
  box: string | undefined,
  talk: Talk,
): PlannedRefit {
  if (box === undefined)
    return planRefit(survey, shelf.boxes, shelf.devices, undefined, each =>
      talk.note(`planning on ${each.label} …`),
    )
  const chosen = findBox(shelf, box)
  const plan = planAndProve(jobFor(shelf, survey, chosen))
  const match = { survey: survey.id, boxes: [], conflict: [] }
  return plan.ok
    ? { match, plans: [plan.value], failures: [] }
    : { match, plans: [], failures: [{ box: chosen.id, failure: plan.failure }] }
}

function wire({ plans: [best], failures }: PlannedRefit) {
  return best
    ? wirePlan(best)
    : {
        schema: 'plan-failures/1' as const,
        failures: failures.map(each => wirePlanFailure(each.box, each.failure)),
      }
}

/** A complete landing with its proof, or why there is none. */
export function runPlan(shelf: Shelf, name: string, options: PlanOptions, talk: Talk): number {
  const survey = findSurvey(shelf, name)
  const planned = bestPlan(shelf, survey, options.box, talk)
  const [best, ...others] = planned.plans
  if (options.landing !== undefined) {
    if (best) writeWhole(options.landing, writeLanding(best.plan.landing))
    talk.note(best ? `landing written to ${options.landing}` : 'no landing written: there is none')
  }
  if (options.json) talk.data(JSON.stringify(wire(planned), null, 2))
  else {
    if (best) {
      const box = findBox(shelf, options.box ?? best.plan.box)
      showPlan(jobFor(shelf, survey, box), best, talk)
    } else if (planned.failures.length === 0)
      talk.data('No box may serve this tub: "tubwright match" says why.')
    showOthers(others, talk)
    for (const each of planned.failures) showFailure(each.box, each.failure, talk)
  }
  return best ? exitFor(best.verification) : EXIT.found
}
