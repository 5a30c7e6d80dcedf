import type { PlanFailure, PlannedRefit, ProvenPlan, Survey, Verification } from '@tubwright/core'
import { planAndProve, planRefit } from '@tubwright/core'
import { wirePlan, wirePlanFailure, writeLanding } from '@tubwright/formats'
import type { Shelf } from '../catalogue.ts'
import { findBox, findSurvey, jobFor } from '../catalogue.ts'
import { EXIT } from '../exits.ts'
import { writeWhole } from '../files.ts'
import type { Talk } from '../talk.ts'
import { exitFor, proofLine, showFindings } from './findings.ts'

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

const pad = (text: string, width: number): string => text.padEnd(width)

function showLanding({ plan, verification }: ProvenPlan, talk: Talk): void {
  talk.data(talk.bold('\nWires'))
  for (const [end, at] of Object.entries(plan.landing.ends))
    talk.data(`  ${pad(end, 28)} ${at.replace('.', ' ')}`)
  talk.data(talk.bold('\nJumpers and straps'))
  for (const each of plan.jumpers)
    talk.data(
      `  ${pad(each.jumper, 6)} ${pad(each.toLabel, 12)} ${each.moves ? 'MOVE' : 'stays'}  ${each.label}`,
    )
  for (const each of plan.straps)
    talk.data(
      `  ${pad(each.load, 6)} ${pad(each.to, 12)} ${each.moves ? 'MOVE' : 'stays'}  ${each.label}`,
    )
  talk.data(talk.bold('\nSettings'))
  talk.data(`  profile        ${plan.landing.settings.profile}`)
  talk.data(`  current limit  ${plan.landing.settings.currentLimit.text}`)
  talk.data(talk.bold('\nFindings'))
  showFindings(verification.findings, talk)
}

export function showPlan(proven: ProvenPlan, talk: Talk): void {
  const { plan, verification } = proven
  talk.data(talk.bold(`${plan.survey} on ${plan.box}`))
  talk.data(`Proven: ${proofLine(verification)}.`)
  const { considered, solved, boundedOut } = plan.search
  talk.data(`Best of ${considered} candidates: ${solved} solved, ${boundedOut} bounded out.`)
  showLanding(proven, talk)
}

export function showFailure(box: string, failure: PlanFailure<Verification>, talk: Talk): void {
  switch (failure.reason) {
    case 'no-plan':
      talk.data(
        `${talk.red('no plan')}  ${box}: all ${failure.search.considered} candidates break something. The least bad:`,
      )
      if (failure.closest) showFindings(failure.closest.findings, talk)
      return
    case 'limit-reached':
      talk.data(
        `${talk.yellow('stopped')}  ${box}: the search reached its limit of ${failure.limit} solves; that proves nothing.`,
      )
      return
    case 'cannot':
      talk.data(
        `${talk.red('cannot')}  ${box}: its feed does not suit this supply; "tubwright match" says why.`,
      )
  }
}

/** A complete landing with its proof, or why there is none. */
export function runPlan(shelf: Shelf, name: string, options: PlanOptions, talk: Talk): number {
  const survey = findSurvey(shelf, name)
  const { plans, failures } = bestPlan(shelf, survey, options.box, talk)
  const best = plans[0]
  if (best && options.landing !== undefined) {
    writeWhole(options.landing, writeLanding(best.plan.landing))
    talk.note(`landing written to ${options.landing}`)
  }
  if (options.json) {
    const told = best
      ? wirePlan(best)
      : {
          schema: 'plan-failures/1',
          failures: failures.map(f => wirePlanFailure(f.box, f.failure)),
        }
    talk.data(JSON.stringify(told, null, 2))
  } else if (best) {
    showPlan(best, talk)
    for (const each of plans.slice(1))
      talk.data(`\nAlso proven: ${each.plan.box}, ${each.plan.score.adapters} adapters`)
    for (const each of failures) showFailure(each.box, each.failure, talk)
  } else if (failures.length > 0) {
    for (const each of failures) showFailure(each.box, each.failure, talk)
  } else talk.data('No box may serve this tub: "tubwright match" says why.')
  return best ? exitFor(best.verification) : EXIT.found
}
