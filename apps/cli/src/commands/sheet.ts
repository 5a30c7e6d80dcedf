import type { Job, JobSheet, ProvenPlan, Survey } from '@tubwright/core'
import { changesLoads, feedOf, planAsLanded, withChanges } from '@tubwright/core'
import type { SheetPart, SheetWords, SupplyNotice } from '@tubwright/documents'
import { drawBoard, drawLadder, printSheet, SHEET_PARTS } from '@tubwright/documents'
import type { Shelf } from '../catalogue.ts'
import { findBox, findSurvey, jobFor, writeOutput } from '../catalogue.ts'
import { BadInput, EXIT } from '../exits.ts'
import { english, jobSheet, supplyOf } from '../sheet-html.ts'
import type { Talk } from '../talk.ts'
import { exitFor } from './findings.ts'
import { bestPlan, whyNone } from './plan.ts'
import { jobAndLanding, refuseUnsolved } from './verify.ts'

export interface SheetOptions {
  readonly box?: string
  readonly out?: string
  readonly part?: string
  readonly svg?: string
  readonly landing?: string
  readonly withChanges?: boolean
}

type Printer = (sheet: JobSheet, words: SheetWords, supply: SupplyNotice) => string

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
function printerFor({ part, svg }: SheetOptions): Printer {
  if (part !== undefined && svg !== undefined)
    throw new BadInput('--part gives a page, --svg a drawing alone: name one of them.')
  if (svg !== undefined) {
    const draw = Object.hasOwn(DRAWINGS, svg) ? DRAWINGS[svg] : undefined
    if (!draw) return refuse('--svg', svg, Object.keys(DRAWINGS))
    return (sheet, words) => draw(sheet, words)
  }
  if (part !== undefined && !isPart(part)) return refuse('--part', part, SHEET_PARTS)
  return (sheet, words, supply) => printSheet(sheet, words, { only: part, supply })
}

interface Subject {
  readonly survey: Survey
  readonly job: Job
  readonly proven: ProvenPlan
}

/** The best plan; of the changed tub where that was asked for. */
function planned(shelf: Shelf, found: Survey, options: SheetOptions): Subject {
  const refit = bestPlan(shelf, found, options.box, undefined, options.withChanges)
  const [best] = refit.plans
  if (!best)
    throw new BadInput(`${found.id}: there is no plan, so there is no sheet. ${whyNone(refit)}`)
  const survey = withChanges(found, best.plan.changes)
  const job = jobFor(shelf, survey, findBox(shelf, options.box ?? best.plan.box))
  return { survey, job, proven: best }
}

/** A landing from a file, whatever the verifier says of it. */
function given(shelf: Shelf, survey: Survey, options: SheetOptions, talk: Talk): Subject {
  const { job, landing } = jobAndLanding(shelf, survey, options, 'laying out', talk)
  if (!feedOf(job))
    throw new BadInput(
      `${survey.id}: ${job.box.label} takes no ${survey.supply.system} supply, so there is no sheet.`,
    )
  const proven = planAsLanded(job, landing)
  return proven.ok ? { survey, job, proven: proven.value } : refuseUnsolved(proven.failure)
}

/** The sheet of the best plan or of a landing from a file, or one part or drawing of it. */
export function runSheet(shelf: Shelf, name: string, options: SheetOptions, talk: Talk): number {
  const print = printerFor(options)
  const isGiven = options.landing !== undefined
  if (isGiven && options.withChanges)
    throw new BadInput(
      '--landing gives one landing, --with-changes looks for another: name one of them.',
    )
  const found = findSurvey(shelf, name)
  const subject = isGiven ? given(shelf, found, options, talk) : planned(shelf, found, options)
  const { survey, job, proven } = subject
  const printed = print(
    jobSheet(survey, job, proven, isGiven),
    english(job.box),
    supplyOf(shelf, survey, job, proven),
  )
  if (options.out === undefined) talk.data(printed)
  else {
    writeOutput(shelf, options.out, printed, [name, options.box, options.landing])
    talk.note(`sheet written to ${options.out}`)
  }
  // A change at the tub is something to heed, however well the plan then holds.
  return proven.plan.changes.some(changesLoads) ? EXIT.found : exitFor(proven.verification)
}
