import type { Shelf } from '../catalogue.ts'
import { findBox, findSurvey, jobFor } from '../catalogue.ts'
import { BadInput } from '../exits.ts'
import { writeWhole } from '../files.ts'
import { sheetHtml } from '../sheet-html.ts'
import type { Talk } from '../talk.ts'
import { exitFor } from './findings.ts'
import { bestPlan } from './plan.ts'

export interface SheetOptions {
  readonly box?: string
  readonly out?: string
}

/** The sheet of the best plan. */
export function runSheet(shelf: Shelf, name: string, options: SheetOptions, talk: Talk): number {
  const survey = findSurvey(shelf, name)
  const best = bestPlan(shelf, survey, options.box, talk).plans[0]
  if (!best)
    throw new BadInput(
      `${survey.id}: there is no plan, so there is no sheet; "tubwright match" and "tubwright plan" say why.`,
    )
  const html = sheetHtml(
    survey,
    jobFor(shelf, survey, findBox(shelf, options.box ?? best.plan.box)),
    best,
  )
  if (options.out === undefined) talk.data(html)
  else {
    writeWhole(options.out, html)
    talk.note(`sheet written to ${options.out}`)
  }
  return exitFor(best.verification)
}
