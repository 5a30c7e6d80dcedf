import { resolve } from 'node:path'
import type { Shelf } from '../catalogue.ts'
import { findBox, findSurvey, jobFor, writeOutput } from '../catalogue.ts'
import { EXIT } from '../exits.ts'
import { sheetHtml } from '../sheet-html.ts'
import type { Talk } from '../talk.ts'
import { runMatch } from './match.ts'
import { bestPlan } from './plan.ts'
import { showPlan } from './show-plan.ts'

const DEMO = 'everyday-240-circulation'

/** The whole main job on the demo tub: match, plan, proof, sheet. */
export function runDemo(
  shelf: Shelf,
  _: string,
  { out }: { readonly out: string },
  talk: Talk,
): number {
  const survey = findSurvey(shelf, DEMO)
  const best = bestPlan(shelf, survey, undefined, talk).plans[0]
  if (!best) {
    runMatch(shelf, DEMO, {}, talk)
    talk.note('There is no plan for the demo tub in this catalogue, so there is no sheet.')
    return EXIT.found
  }
  const job = jobFor(shelf, survey, findBox(shelf, best.plan.box))
  // First of all: where it cannot be written, nothing is said either.
  writeOutput(shelf, out, sheetHtml(shelf, survey, job, best), [])
  runMatch(shelf, DEMO, {}, talk)
  talk.data('')
  showPlan(job, best, talk)
  talk.data(`\nThe sheet to work from: ${resolve(out)}`)
  return EXIT.fine
}
