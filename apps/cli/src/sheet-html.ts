import type { ControlBox, Job, JobSheet, ProvenPlan, Survey } from '@tubwright/core'
import {
  checkSupply,
  commandLabel,
  layOutSheet,
  matchEquipment,
  surveyedCondition,
} from '@tubwright/core'
import type { SheetWords, SupplyNotice } from '@tubwright/documents'
import { printSheet, sheetWords, supplyNotice } from '@tubwright/documents'
import { ENGLISH } from '@tubwright/words'
import type { Shelf } from './catalogue.ts'

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

/** What the check of the supply says of a plan's tub, with its box as it is set. */
export function supplyOf(
  shelf: Shelf,
  survey: Survey,
  { box }: Job,
  { plan }: ProvenPlan,
): SupplyNotice {
  const { currentLimit } = plan.landing.settings
  const report = checkSupply(survey, shelf.devices, { box, currentLimit: currentLimit.si })
  return supplyNotice(report, surveyedCondition(survey, shelf.devices), ENGLISH)
}

/** The same as one HTML file. */
export const sheetHtml = (shelf: Shelf, survey: Survey, job: Job, proven: ProvenPlan): string =>
  printSheet(jobSheet(survey, job, proven), english(job.box), {
    supply: supplyOf(shelf, survey, job, proven),
  })
