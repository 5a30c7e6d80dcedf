import type { Act } from '@tubwright/records'
import { actsBetween } from '@tubwright/records'

/** What a new job begins with: a name, and that it is a survey, whose id tells its sheets apart. */
export function firstActs(title: string, on = new Date()): readonly Act[] {
  const time = on.toISOString().replaceAll(/[^0-9]/gu, '')
  const id = `tub-${time.slice(2, 8)}-${time.slice(8, 14)}`
  return actsBetween(undefined, { schema: 'survey/1', id, title }, ['survey'])
}

/** The acts by which a survey that was read becomes the survey of a job. */
export const actsOfSurvey = (document: Readonly<Record<string, unknown>>): readonly Act[] =>
  actsBetween(undefined, document as never, ['survey'])
