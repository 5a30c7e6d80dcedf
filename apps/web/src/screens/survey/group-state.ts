import { survey as surveySchema } from '@tubwright/core'
import { fieldsBelow, valueAt } from '@tubwright/formats'
import type { Document } from '../../ask/protocol.ts'
import type { Group } from './groups.ts'
import { groupFor } from './groups.ts'
import { isBelow } from './survey-path.ts'
import type { SurveyPath } from './use-survey.ts'

/** How far a group is. */
export type GroupState =
  | { readonly kind: 'not-begun' | 'answered' | 'optional' | 'says-nothing' }
  | { readonly kind: 'open' | 'answers'; readonly count: number }

/**
 * How far each group is: answered once all that it asks is answered or said to be unknown.
 *
 * @param open - what a verdict waits for
 */
export function stateOf(
  group: Group,
  groups: readonly Group[],
  document: Document,
  open: readonly SurveyPath[],
): GroupState {
  const { covers, asks = [], isOptional } = group
  const isSaid = (path: SurveyPath) => valueAt(document, path) !== undefined
  if (group.kind === 'loads') return { kind: isSaid(['loads']) ? 'says-nothing' : 'not-begun' }
  if (covers.length === 0) return { kind: 'says-nothing' }
  const answers = covers
    .flatMap(path => fieldsBelow(surveySchema, document, path))
    .filter(isSaid).length
  // What waits inside it; where a whole part of the survey is not there yet, that waits in all its groups.
  const isOpenHere = (path: SurveyPath) =>
    groupFor(groups, path)?.id === group.id || covers.some(each => isBelow(each, path))
  const own = open.filter(isOpenHere)
  const unasked = asks.filter(path => !isSaid(path) && !own.some(each => isBelow(path, each)))
  const count = own.length + unasked.length
  if (isOptional && own.length === 0)
    return answers > 0 ? { kind: 'answers', count: answers } : { kind: 'optional' }
  if (answers === 0) return { kind: 'not-begun' }
  return count > 0 ? { kind: 'open', count } : { kind: 'answered' }
}
