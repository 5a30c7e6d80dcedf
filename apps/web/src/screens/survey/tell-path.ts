import { useApp } from '../../app/context.ts'
import { fieldName } from './field-name.ts'
import { useGroupName } from './group-name.ts'
import { groupFor, groupsOf } from './groups.ts'
import { useDocument } from './use-survey.ts'

/** A place of the survey in words: the group that asks for it, and what the field is for. */
export function useTellPath(): (path: readonly string[]) => string {
  const { words } = useApp()
  const asks: Readonly<Record<string, string>> = words.supplyAsks
  const groups = groupsOf(useDocument())
  const nameOf = useGroupName()
  return path => {
    const group = groupFor(groups, path)
    const name = fieldName(path)
    const short = asks[name.replace(/^survey\./u, '')]
    const text = short ?? words.fieldText(name) ?? path.at(-1) ?? ''
    return group ? `${nameOf(group)}: ${text}` : text
  }
}
