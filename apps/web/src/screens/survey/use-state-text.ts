import { say } from '@tubwright/words'
import { useWeb } from '../../app/context.ts'
import { stateOf } from './group-state.ts'
import type { Group } from './groups.ts'
import { groupFor } from './groups.ts'
import { useDraft } from './use-draft.ts'
import { useStandingFields } from './use-standing.ts'
import { useDocument } from './use-survey.ts'

/** How far a group is, in words. */
export function useStateText(groups: readonly Group[]): (group: Group) => string {
  const web = useWeb()
  const { open, isRead } = useDraft()
  const document = useDocument()
  const standing = useStandingFields()
  const paths = open.map(each => each.path)
  return group => {
    if (!isRead) return ''
    const unused = standing.filter(path => groupFor(groups, path)?.id === group.id).length
    if (unused > 0) return say(web['survey.not-used'], { count: String(unused) })
    const state = stateOf(group, groups, document, paths)
    switch (state.kind) {
      case 'open':
        return say(web['survey.still-open'], { count: String(state.count) })
      case 'answers':
        return say(web['survey.answers'], { count: String(state.count) })
      case 'says-nothing':
        return ''
      case 'not-begun':
      case 'answered':
      case 'optional':
        return web[`survey.${state.kind}`]
    }
  }
}
