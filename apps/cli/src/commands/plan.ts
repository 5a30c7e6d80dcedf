import type { ControlBox, PlannedRefit, Survey } from '@tubwright/core'
import { planAndProve, planRefit } from '@tubwright/core'
import { wirePlan, wirePlanFailure, writeLanding } from '@tubwright/formats'
import type { Shelf } from '../catalogue.ts'
import { boxesToChoose, findBox, findSurvey, jobFor, writeOutput } from '../catalogue.ts'
import { EXIT } from '../exits.ts'
import type { Talk } from '../talk.ts'
import { showWire } from '../wire.ts'
import { exitFor } from './findings.ts'
import { openQuestions, showFailures } from './show-failures.ts'
import { showOthers, showPlan } from './show-plan.ts'

export interface PlanOptions {
  readonly box?: string
  readonly json?: boolean
  readonly out?: string
}

/**
 * The best plan of a survey: on one box, or on every box that may serve.
 *
 * @param talk - told of each box; left out where the plan is not what was asked for
 */
export function bestPlan(
  shelf: Shelf,
  survey: Survey,
  box: string | undefined,
  talk?: Talk,
): PlannedRefit {
  const report = (each: ControlBox): void => talk?.note(`planning on ${each.label} …`)
  if (box === undefined)
    return planRefit(survey, boxesToChoose(shelf), shelf.devices, undefined, report)
  const chosen = findBox(shelf, box)
  const plan = planAndProve(jobFor(shelf, survey, chosen))
  const match = { survey: survey.id, boxes: [], conflict: [] }
  return plan.ok
    ? { match, plans: [plan.value], failures: [] }
    : { match, plans: [], failures: [{ box: chosen.id, failure: plan.failure }] }
}

/** Why there is no plan, for a command that needs one: what to find out, or where it is said. */
export function whyNone({ failures }: PlannedRefit): string {
  const questions = openQuestions(failures)
  return questions.length > 0 ? questions.join(' ') : '"tubwright plan" says why.'
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
  if (options.out !== undefined) {
    const text = best && writeLanding(best.plan.landing)
    if (text) writeOutput(shelf, options.out, text, [name, options.box])
    talk.note(best ? `landing written to ${options.out}` : 'no landing written: there is none')
  }
  if (options.json) showWire(wire(planned), shelf, talk)
  else {
    if (best) {
      const box = findBox(shelf, options.box ?? best.plan.box)
      showPlan(jobFor(shelf, survey, box), best, talk)
    } else if (planned.failures.length === 0)
      talk.data('No box may serve this tub: "tubwright match" says why.')
    showOthers(others, talk)
    showFailures(planned.failures, talk)
  }
  return best ? exitFor(best.verification) : EXIT.found
}
