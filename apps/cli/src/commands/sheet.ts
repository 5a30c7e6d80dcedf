import type { JobSheet } from '@tubwright/core'
import type { SheetPart, SheetWords } from '@tubwright/documents'
import { drawBoard, drawLadder, printSheet, SHEET_PARTS } from '@tubwright/documents'
import type { Shelf } from '../catalogue.ts'
import { findBox, findSurvey, jobFor, writeOutput } from '../catalogue.ts'
import { BadInput } from '../exits.ts'
import { english, jobSheet } from '../sheet-html.ts'
import type { Talk } from '../talk.ts'
import { exitFor } from './findings.ts'
import { bestPlan, whyNone } from './plan.ts'

export interface SheetOptions {
  readonly box?: string
  readonly out?: string
  readonly part?: string
  readonly svg?: string
}

const DRAWINGS: Readonly<Record<string, (sheet: JobSheet, words: SheetWords) => string>> = {
  board: drawBoard,
  ladder: drawLadder,
}

function refuse(option: string, given: string, may: readonly string[]): never {
  throw new BadInput(`${option} ${given}: there is no such one. It may be: ${may.join(', ')}.`)
}

const isPart = (name: string): name is SheetPart =>
  (SHEET_PARTS as readonly string[]).includes(name)

/** How what was asked for is made of a sheet: refused before anything is planned. */
function printerFor({ part, svg }: SheetOptions): (sheet: JobSheet, words: SheetWords) => string {
  if (part !== undefined && svg !== undefined)
    throw new BadInput('--part gives a page, --svg a drawing alone: name one of them.')
  if (svg !== undefined) {
    const draw = Object.hasOwn(DRAWINGS, svg) ? DRAWINGS[svg] : undefined
    return draw ?? refuse('--svg', svg, Object.keys(DRAWINGS))
  }
  if (part === undefined) return printSheet
  if (!isPart(part)) return refuse('--part', part, SHEET_PARTS)
  return (sheet, words) => printSheet(sheet, words, part)
}

/** The sheet of the best plan, or one part or drawing of it. */
export function runSheet(shelf: Shelf, name: string, options: SheetOptions, talk: Talk): number {
  const print = printerFor(options)
  const survey = findSurvey(shelf, name)
  const planned = bestPlan(shelf, survey, options.box)
  const [best] = planned.plans
  if (!best)
    throw new BadInput(`${survey.id}: there is no plan, so there is no sheet. ${whyNone(planned)}`)
  const job = jobFor(shelf, survey, findBox(shelf, options.box ?? best.plan.box))
  const printed = print(jobSheet(survey, job, best), english(job.box))
  if (options.out === undefined) talk.data(printed)
  else {
    writeOutput(shelf, options.out, printed, [name, options.box])
    talk.note(`sheet written to ${options.out}`)
  }
  return exitFor(best.verification)
}
