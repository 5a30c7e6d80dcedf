import type { Shelf } from '../catalogue.ts'
import { findBox, findSurvey, jobFor, writeOutput } from '../catalogue.ts'
import { BadInput } from '../exits.ts'
import { sheetHtml } from '../sheet-html.ts'
import type { Talk } from '../talk.ts'
import { exitFor } from './findings.ts'
import { bestPlan, whyNone } from './plan.ts'

export interface SheetOptions {
  readonly box?: string
  readonly out?: string
}

/** The sheet of the best plan. */
export function runSheet(shelf: Shelf, name: string, options: SheetOptions, talk: Talk): number {
  const survey = findSurvey(shelf, name)
  const planned = bestPlan(shelf, survey, options.box)
  const [best] = planned.plans
  if (!best)
    throw new BadInput(`${survey.id}: there is no plan, so there is no sheet. ${whyNone(planned)}`)
  const html = sheetHtml(
    survey,
    jobFor(shelf, survey, findBox(shelf, options.box ?? best.plan.box)),
    best,
  )
  if (options.out === undefined) talk.data(html)
  else {
    writeOutput(shelf, options.out, html, [name, options.box])
    talk.note(`sheet written to ${options.out}`)
  }
  return exitFor(best.verification)
}
