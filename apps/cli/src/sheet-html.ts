import type { ControlBox, Job, JobSheet, ProvenPlan, Survey } from '@tubwright/core'
import { commandLabel, layOutSheet, matchEquipment } from '@tubwright/core'
import type { SheetWords } from '@tubwright/documents'
import { printSheet, sheetWords } from '@tubwright/documents'
import { ENGLISH } from '@tubwright/words'

/** The words of a sheet in English, with the names that the box gives its commands. */
export const english = (box?: ControlBox): SheetWords =>
  sheetWords(ENGLISH, id => (box ? commandLabel(box, id) : id))

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
