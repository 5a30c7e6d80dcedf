import type { ControlBox, Job, ProvenPlan, Survey } from '@tubwright/core'
import { commandLabel, layOutSheet, matchEquipment } from '@tubwright/core'
import type { SheetWords } from '@tubwright/documents'
import { printSheet } from '@tubwright/documents'
import {
  COLOUR_EN,
  LINE_EN,
  SEVERITY_EN,
  SHEET_EN,
  SHEET_PAGE_EN,
  tellFinding,
  tellMatch,
} from '@tubwright/words'

/** The words of a sheet in English, with the names that the box gives its commands. */
const english = (box: ControlBox): SheetWords => ({
  language: 'en',
  messages: SHEET_EN,
  page: SHEET_PAGE_EN,
  colours: COLOUR_EN,
  lines: LINE_EN,
  severities: SEVERITY_EN,
  findingText: finding => tellFinding(finding, id => commandLabel(box, id)),
  questionText: tellMatch,
})

/** The sheet of one proven plan as one HTML file. */
export function sheetHtml(survey: Survey, job: Job, proven: ProvenPlan): string {
  const [verdict] = matchEquipment(survey, [job.box]).boxes
  const sheet = layOutSheet({ survey, job, proven, ...(verdict ? { verdict } : {}) })
  return printSheet(sheet, english(job.box))
}
