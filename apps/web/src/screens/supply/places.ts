import { useParams } from 'wouter'
import { useApp } from '../../app/context.ts'
import { groupFor, groupsOf } from '../survey/groups.ts'
import { pathAt } from '../survey/survey-path.ts'
import { useDocument } from '../survey/use-survey.ts'

/** Where the survey asks for what a finding depends on. */
export function useFieldHref(): (at: string) => string {
  const { id = '' } = useParams()
  const groups = groupsOf(useDocument())
  return at => `/job/${id}/survey/${groupFor(groups, pathAt(at))?.id ?? ''}/${at}`
}

/** What is told as a line of its own begins with a capital. */
const capital = (text: string): string => text.charAt(0).toLocaleUpperCase() + text.slice(1)

/** What is asked for at a place of the survey, as a line of its own. */
export function useTellAsk(): (at: string) => string {
  const { words } = useApp()
  const nameOf = useNameOf()
  return at => capital(words.tellAsk(at, nameOf))
}

/** Everything of a document that has an id and a label, wherever it stands. */
function labelsIn(value: unknown): readonly (readonly [string, string])[] {
  if (typeof value !== 'object' || value === null) return []
  const { id, label } = value as { readonly id?: unknown; readonly label?: unknown }
  const own = typeof id === 'string' && typeof label === 'string' ? [[id, label] as const] : []
  return [...own, ...Object.values(value).flatMap(labelsIn)]
}

/** What a person calls something of the survey that has an id. */
export function useNameOf(): (id: string) => string {
  const labels = new Map(labelsIn(useDocument()))
  return id => labels.get(id) ?? id
}
