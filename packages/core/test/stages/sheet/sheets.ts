import type { WiringPlan } from '../../../src/index.ts'
import { jobOf, planRefit } from '../../../src/index.ts'
import type { JobSheet } from '../../../src/stages/sheet/artifact.ts'
import { layOutSheet } from '../../../src/stages/sheet/lay-out-sheet.ts'
import { demoBoxes, demoDevices, demoTub } from '../../support/demo.ts'

interface Planned {
  readonly plan: WiringPlan
  readonly sheet: JobSheet
}

const known = new Map<string, readonly Planned[]>()

/** Every proven plan of a demo tub with its sheet; planned once a test file. */
export function plansOf(tub: string): readonly Planned[] {
  const plans = known.get(tub) ?? freshPlans(tub)
  known.set(tub, plans)
  return plans
}

/** The sheet of every proven plan of a demo tub; planned once a test file. */
export const sheetsOf = (tub: string): readonly JobSheet[] => plansOf(tub).map(each => each.sheet)

/** The same, planned anew. */
export const freshSheets = (tub: string): readonly JobSheet[] =>
  freshPlans(tub).map(each => each.sheet)

function freshPlans(tub: string): readonly Planned[] {
  const survey = demoTub(tub)
  const boxes = demoBoxes()
  const { match, plans } = planRefit(survey, boxes, demoDevices)
  return plans.flatMap(proven => {
    const box = boxes.find(each => each.id === proven.plan.box)
    const verdict = match.boxes.find(each => each.box === proven.plan.box)
    if (!box) return []
    const job = jobOf(survey, box, demoDevices)
    const sheet = layOutSheet({ survey, job, proven, ...(verdict ? { verdict } : {}) })
    return [{ plan: proven.plan, sheet }]
  })
}

/** The sheet of one demo tub on one box, which has a plan. */
export function sheetOf(tub: string, box: string): JobSheet {
  const sheet = sheetsOf(tub).find(each => each.id === `${tub}/${box}`)
  if (!sheet) throw new Error(`no plan of ${tub} on ${box}`)
  return sheet
}
