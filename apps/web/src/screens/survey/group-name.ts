import { useWeb } from '../../app/context.ts'
import type { Group } from './groups.ts'
import { useSurvey } from './use-survey.ts'

/** What a person calls a group. */
export function useGroupName(): (group: Group) => string {
  const web = useWeb()
  const { value } = useSurvey()
  return ({ kind, load }) => {
    if (kind !== 'load') return web[`survey.${kind}`]
    const label = value(['loads', load ?? '', 'label'])
    return typeof label === 'string' ? label : (load ?? '')
  }
}
