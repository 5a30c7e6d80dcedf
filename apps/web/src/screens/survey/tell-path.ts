import { useApp, useWeb } from '../../app/context.ts'
import { fieldName } from './field-name.ts'
import { useGroupName } from './group-name.ts'
import { groupFor, groupsOf } from './groups.ts'
import { useDocument } from './use-survey.ts'

/** What is said of a part of a value is said of the value. */
const PARTS = ['from', 'to', 'oneOf']

/** A place of the survey in words: the group that asks for it, and what the field is for. */
export function useTellPath(): (path: readonly string[]) => string {
  const { words } = useApp()
  const web = useWeb()
  const asks: Readonly<Record<string, string>> = words.supplyAsks
  const groups = groupsOf(useDocument())
  const nameOf = useGroupName()
  return path => {
    const group = groupFor(groups, path)
    const isPart = PARTS.includes(path.at(-1) ?? '')
    const name = fieldName(isPart ? path.slice(0, -1) : path)
    const ofLoad = path[0] === 'loads' && path[2] === 'plate' ? web['survey.plate'] : undefined
    const short = asks[name.replace(/^survey\./u, '')]
    const text = ofLoad ?? short ?? words.fieldText(name) ?? path.at(-1) ?? ''
    return group ? `${nameOf(group)}: ${text}` : text
  }
}
