import type { Job, ProvenPlan, Survey } from '@tubwright/core'
import { layOutSheet, matchEquipment } from '@tubwright/core'
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

const ENGLISH: SheetWords = {
  language: 'en',
  messages: SHEET_EN,
  page: SHEET_PAGE_EN,
  colours: COLOUR_EN,
  lines: LINE_EN,
  severities: SEVERITY_EN,
  findingText: tellFinding,
  questionText: tellMatch,
}

/** The sheet of one proven plan as one HTML file. */
export function sheetHtml(survey: Survey, job: Job, proven: ProvenPlan): string {
  const [verdict] = matchEquipment(survey, [job.box]).boxes
  const sheet = layOutSheet({ survey, job, proven, ...(verdict ? { verdict } : {}) })
  return printSheet(sheet, ENGLISH)
}
