import { say } from '@tubwright/words'
import { useApp, useWeb } from '../../app/context.ts'
import { fieldName } from './field-name.ts'
import { useWireName } from './option-name.ts'
import type { SurveyPath } from './use-survey.ts'
import { useSurvey } from './use-survey.ts'

const OWNERS = ['conductors', 'leads', 'circuits', 'capacitors', 'positions']

/** What a person calls a field or a list, without what it is of. */
export function useFieldName(): (path: SurveyPath) => string {
  const { words } = useApp()
  const web: Readonly<Record<string, string>> = words.web
  return path => {
    const name = fieldName(path)
    return web[`name.${name}`] ?? words.fieldText(name) ?? path.at(-1) ?? ''
  }
}

/** What a person calls one of several alike: a wire by what it carries, a pin by its number. */
export function useOwnerName(): (path: SurveyPath) => string | undefined {
  const web: Readonly<Record<string, string>> = useWeb()
  const { value } = useSurvey()
  const wireName = useWireName()
  const nameOf = useFieldName()
  return path => {
    const index = path.findLastIndex(each => OWNERS.includes(each))
    const id = path[index + 1]
    if (index < 0 || id === undefined) return undefined
    const does = String(value([...path.slice(0, index + 2), 'function']) ?? id)
    switch (path[index]) {
      case 'conductors':
        return wireName(does)
      case 'leads':
        return web[`survey.lead-${does}`] ?? id
      case 'circuits':
        return web[`survey.circuit-${id}`] ?? id
      case 'capacitors':
        return id.replace(/^capacitor/u, nameOf(path.slice(0, index + 1)))
      default:
        return id
    }
  }
}

/** A field as a question: what it is of, where there are several alike, and its name. */
export function useFieldLabel(): (path: SurveyPath) => string {
  const web = useWeb()
  const names: Readonly<Record<string, string>> = web
  const nameOf = useFieldName()
  const ownerOf = useOwnerName()
  return path => {
    const last = path.at(-1) ?? ''
    if (path.at(-2) === 'pins') return say(web['survey.pin'], { pin: last })
    const owner = ownerOf(path)
    const circuit = path.at(-2) === 'amps' ? (names[`survey.circuit-${last}`] ?? last) : undefined
    return [owner, circuit, nameOf(path)].filter(each => each !== undefined).join(' · ')
  }
}
