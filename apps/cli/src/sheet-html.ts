import type { Job, ProvenPlan, Survey } from '@tubwright/core'

/** The sheet of one proven plan as one HTML file. */
export function sheetHtml(survey: Survey, job: Job, proven: ProvenPlan): string {
  return JSON.stringify([survey.id, job.box.id, proven.plan.box])
}
