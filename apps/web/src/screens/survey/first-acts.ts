import { freeId } from '@tubwright/core'
import type { Act } from '@tubwright/records'
import { actsBetween } from '@tubwright/records'

/** What a new job begins with: a name, and that it is a survey. */
export const firstActs = (title: string): readonly Act[] =>
  actsBetween(undefined, { schema: 'survey/1', id: freeId('tub', []), title }, ['survey'])

/** The acts by which a survey that was read becomes the survey of a job. */
export const actsOfSurvey = (document: Readonly<Record<string, unknown>>): readonly Act[] =>
  actsBetween(undefined, document as never, ['survey'])
