import type { ControlBox, Job, JobSheet, ProvenPlan, Survey } from '@tubwright/core'
import { commandLabel, layOutSheet, matchEquipment } from '@tubwright/core'
import type { SheetWords } from '@tubwright/documents'
import { printSheet } from '@tubwright/documents'
import {
  COLOUR_EN,
  LINE_EN,
  SEVERITY_EN,
  SHEET_EN,
  SHEET_PAGE_EN,
  TO_GET_EN,
  tellChange,
  tellFinding,
  tellMatch,
} from '@tubwright/words'

/** The words of a sheet in English, with the names that the box gives its commands. */
export const english = (box?: ControlBox): SheetWords => ({
  language: 'en',
  messages: SHEET_EN,
  page: SHEET_PAGE_EN,
  colours: COLOUR_EN,
  lines: LINE_EN,
  severities: SEVERITY_EN,
  findingText: finding => tellFinding(finding, id => (box ? commandLabel(box, id) : id)),
  questionText: tellMatch,
  changeText: change => tellChange(change),
  toGet: TO_GET_EN,
})

/**
 * The sheet of one judged plan, before it is printed.
 *
 * @param isGiven - whether its landing came out of a file
 */
export function jobSheet(survey: Survey, job: Job, proven: ProvenPlan, isGiven = false): JobSheet {
  const [verdict] = matchEquipment(survey, [job.box]).boxes
  return layOutSheet({ survey, job, proven, isGiven, ...(verdict ? { verdict } : {}) })
}

/** The same as one HTML file. */
export const sheetHtml = (survey: Survey, job: Job, proven: ProvenPlan): string =>
  printSheet(jobSheet(survey, job, proven), english(job.box))
