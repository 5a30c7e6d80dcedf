import { holdUpdates } from '../offline/index.ts'

const TYPED =
  'input:not([type="radio"]):not([type="checkbox"]):not([type="file"]), textarea, select, [contenteditable="true"]'

const isTyped = (target: EventTarget | null): boolean =>
  target instanceof Element && (target.matches(TYPED) || target.shadowRoot !== null)

/**
 * No new version of the app is taken while somebody is in a field: it would be taken from under his hands,
 * and what is typed is an answer only once the field is left.
 *
 * @returns ends it
 */
export function holdWhileTyping(): () => void {
  let release: (() => void) | undefined
  const enter = ({ target }: FocusEvent): void => {
    if (isTyped(target)) release ??= holdUpdates('a field is open')
  }
  const leave = (): void => {
    release?.()
    release = undefined
  }
  document.addEventListener('focusin', enter)
  document.addEventListener('focusout', leave)
  return () => {
    document.removeEventListener('focusin', enter)
    document.removeEventListener('focusout', leave)
    leave()
  }
}
