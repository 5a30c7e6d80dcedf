import { createContext, useContext } from 'react'
import { isBelow } from './survey-path.ts'
import type { SurveyPath } from './use-survey.ts'

/** The field that somebody was sent to, where he was sent to one. */
const AskedContext = createContext<SurveyPath | undefined>(undefined)
export const AskedProvider = AskedContext.Provider

/** Where somebody was sent. */
export const useAsked = (): SurveyPath | undefined => useContext(AskedContext)

const FOCUSABLE =
  'input:checked:enabled, input:enabled, select:enabled, textarea:enabled, button:enabled'

/** The field of a path, or the first one below it or, failing that, beside it. */
function fieldFor(path: SurveyPath): HTMLElement | undefined {
  const all = [...document.querySelectorAll<HTMLElement>('[data-field]')]
  const at = (each: HTMLElement): SurveyPath => (each.dataset['field'] ?? '').split('/')
  for (let end = path.length; end > 1; end--) {
    const found = all.find(each => isBelow(at(each), path.slice(0, end)))
    if (found) return found
  }
  return undefined
}

/** Shows the field of a path and puts the focus on it. */
export function goToField(path: SurveyPath): void {
  const field = fieldFor(path)
  if (!field) return
  const inputs = [...field.querySelectorAll<HTMLElement>(FOCUSABLE)]
  const first = inputs.find(each => each.matches('input:checked')) ?? inputs[0]
  first?.focus({ preventScroll: true })
  field.scrollIntoView({ block: 'center' })
}
