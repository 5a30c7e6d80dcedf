import type { ControlBox, Landing, PlannedRefit, ProvenPlan, Survey } from '@tubwright/core'
import { changesLoads, planAndProve, planRefit, withChanges } from '@tubwright/core'
import { wireChanges, wirePlan, wirePlanFailure, writeLanding } from '@tubwright/formats'
import { CHANGED_NOTE_EN, say, tellChanges } from '@tubwright/words'
import type { Shelf } from '../catalogue.ts'
import { boxesToChoose, findBox, findSurvey, jobFor, writeOutput } from '../catalogue.ts'
import { EXIT } from '../exits.ts'
import type { Talk } from '../talk.ts'
import { showWire } from '../wire.ts'
import { exitFor } from './findings.ts'
import { showUnchangeable } from './show-changes.ts'
import { openQuestions, showFailures } from './show-failures.ts'
import { showOthers, showPlan } from './show-plan.ts'

export interface PlanOptions {
  readonly box?: string
  readonly json?: boolean
  readonly out?: string
  readonly withChanges?: boolean
}

const NOTE_MAX = 400 // what a landing's note holds

/** A landing of a changed tub says so: it is none of the tub as it was found. */
function landingOf({ plan }: ProvenPlan): Landing {
  const ofLoads = plan.changes.filter(changesLoads)
  if (ofLoads.length === 0) return plan.landing
  const changes = tellChanges(ofLoads)
    .map(each => each.told)
    .join(' ')
  return { ...plan.landing, note: say(CHANGED_NOTE_EN, { changes }).slice(0, NOTE_MAX) }
}

/**
 * The best plan of a survey: on one box, or on every box that may serve.
 *
 * @param talk - told of each box; left out where the plan is not what was asked for
 * @param withChanges - whether a box that cannot serve is planned with the cheapest changes
 */
export function bestPlan(
  shelf: Shelf,
  survey: Survey,
  box: string | undefined,
  talk?: Talk,
  withChanges = false,
): PlannedRefit {
  const report = (each: ControlBox): void => talk?.note(`planning on ${each.label} …`)
  if (box === undefined)
    return planRefit(survey, boxesToChoose(shelf), shelf.devices, undefined, report, {
      withChanges,
    })
  const chosen = findBox(shelf, box)
  if (withChanges)
    return planRefit(survey, [chosen], shelf.devices, undefined, report, { withChanges })
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

function wire({ plans: [best], failures, match }: PlannedRefit) {
  return best
    ? wirePlan(best)
    : {
        schema: 'plan-failures/1' as const,
        failures: failures.map(each => wirePlanFailure(each.box, each.failure)),
        changes: wireChanges(match),
      }
}

/** A complete landing with its proof, or why there is none. */
export function runPlan(shelf: Shelf, name: string, options: PlanOptions, talk: Talk): number {
  const survey = findSurvey(shelf, name)
  const planned = bestPlan(shelf, survey, options.box, talk, options.withChanges)
  const [best, ...others] = planned.plans
  if (options.out !== undefined) {
    const text = best && writeLanding(landingOf(best))
    if (text) writeOutput(shelf, options.out, text, [name, options.box])
    talk.note(best ? `landing written to ${options.out}` : 'no landing written: there is none')
  }
  if (options.json) showWire(wire(planned), shelf, talk)
  else {
    if (best) {
      const box = findBox(shelf, options.box ?? best.plan.box)
      const changed = withChanges(survey, best.plan.changes)
      showPlan(jobFor(shelf, changed, box), best, talk)
    } else if (planned.failures.length === 0 && !options.withChanges)
      talk.data('No box may serve this tub: "tubwright match" says why.')
    showOthers(others, talk)
    showFailures(planned.failures, talk)
    if (!best || options.box !== undefined) showUnchangeable(planned.match.boxes, talk)
  }
  // A change at the tub is something to heed, however well the plan then holds.
  return best && !best.plan.changes.some(changesLoads) ? exitFor(best.verification) : EXIT.found
}
