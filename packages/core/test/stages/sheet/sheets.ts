import { jobOf, planRefit } from '../../../src/index.ts'
import type { JobSheet } from '../../../src/stages/sheet/artifact.ts'
import { layOutSheet } from '../../../src/stages/sheet/lay-out-sheet.ts'
import { demoBoxes, demoDevices, demoTub } from '../../support/demo.ts'

const known = new Map<string, readonly JobSheet[]>()

/** The sheet of every proven plan of a demo tub; planned once a test file. */
export function sheetsOf(tub: string): readonly JobSheet[] {
  const sheets = known.get(tub) ?? freshSheets(tub)
  known.set(tub, sheets)
  return sheets
}

/** The same, planned anew. */
export function freshSheets(tub: string): readonly JobSheet[] {
  const survey = demoTub(tub)
  const boxes = demoBoxes()
  const { match, plans } = planRefit(survey, boxes, demoDevices)
  return plans.flatMap(proven => {
    const box = boxes.find(each => each.id === proven.plan.box)
    const verdict = match.boxes.find(each => each.box === proven.plan.box)
    if (!box) return []
    const job = jobOf(survey, box, demoDevices)
    return [layOutSheet({ survey, job, proven, ...(verdict ? { verdict } : {}) })]
  })
}

/** The sheet of one demo tub on one box, which has a plan. */
export function sheetOf(tub: string, box: string): JobSheet {
  const sheet = sheetsOf(tub).find(each => each.id === `${tub}/${box}`)
  if (!sheet) throw new Error(`no plan of ${tub} on ${box}`)
  return sheet
}
