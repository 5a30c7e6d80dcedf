import type { Job, Landing, Survey, Verification, VerifyFailure } from '@tubwright/core'
import { isToHeed, verifyPlan, withBounds } from '@tubwright/core'
import { wireVerification } from '@tubwright/formats'
import { tellDiagnostic } from '@tubwright/words'
import type { Shelf } from '../catalogue.ts'
import { boxNamedBy, findBox, findLanding, findSurvey, jobFor } from '../catalogue.ts'
import { BadInput } from '../exits.ts'
import type { Talk } from '../talk.ts'
import { showWire } from '../wire.ts'
import { exitFor, proofLine, showFindings } from './findings.ts'
import { bestPlan, whyNone } from './plan.ts'

export interface VerifyOptions {
  readonly box?: string
  readonly landing?: string
  readonly json?: boolean
}

/**
 * The job and the landing that a command is about: as built from a file, else as planned.
 *
 * @param doing - what the command does with it, as it is told where no landing is given
 */
export function jobAndLanding(
  shelf: Shelf,
  survey: Survey,
  options: VerifyOptions,
  doing: string,
  talk: Talk,
): { readonly job: Job; readonly landing: Landing } {
  if (options.landing !== undefined) {
    const box =
      options.box === undefined ? boxNamedBy(shelf, options.landing) : findBox(shelf, options.box)
    const job = jobFor(shelf, survey, box)
    return { job, landing: findLanding(shelf, job, options.landing) }
  }
  const planned = bestPlan(shelf, survey, options.box)
  const [best] = planned.plans
  if (!best)
    throw new BadInput(
      `${survey.id}: no landing is given and there is no plan to take. ${whyNone(planned)} Else give a landing with --landing FILE.`,
    )
  const job = jobFor(shelf, survey, findBox(shelf, options.box ?? best.plan.box))
  talk.note(`${doing} the plan on ${job.box.label}, for no landing is given`)
  return { job, landing: best.plan.landing }
}

function verdictOf({ holds, findings }: Verification, talk: Talk): string {
  if (!holds) return talk.red('It breaks.')
  return findings.some(isToHeed)
    ? talk.yellow('It holds, provided what is said below.')
    : talk.green('It holds.')
}

/** Refuses a landing of which no verdict can be given. */
export function refuseUnsolved(failure: VerifyFailure): never {
  throw new BadInput(
    failure.reason === 'limit-reached'
      ? `More than ${failure.limit} commands: its states cannot all be solved, so nothing is shown.`
      : tellDiagnostic({
          code: 'contradiction',
          path: ['landing'],
          is: failure.details.join(', '),
          may: 'a network that can be solved',
        }),
  )
}

/** Judges a landing: the one in a file, or the plan again. */
export function runVerify(shelf: Shelf, name: string, options: VerifyOptions, talk: Talk): number {
  const survey = findSurvey(shelf, name)
  const { job, landing } = jobAndLanding(shelf, survey, options, 'judging', talk)
  const verification = verifyPlan(job, landing)
  if (!verification.ok) refuseUnsolved(verification.failure)
  const told = withBounds(job, landing, verification.value)
  if (options.json) showWire(wireVerification(told), shelf, talk)
  else {
    talk.data(`${survey.title} on ${job.box.label}: ${verdictOf(told, talk)}`)
    talk.data(`${proofLine(told)}.\n`)
    showFindings(told.findings, talk)
  }
  return exitFor(told)
}
