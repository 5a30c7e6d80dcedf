import type { Fault } from './fault.ts'
import { told } from './fault.ts'
import { STEP_MAX, STEPS_MAX } from './limits.ts'

/** Where in the job, from the top; an item's last step is its stable id. */
export type Path = readonly string[]

const SEPARATOR = '\u001f' // no step may hold a control character

export const pathKey = (path: Path): string => path.join(SEPARATOR)

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is refused
const CONTROL = /[\u0000-\u001f\u007f]/u

export const isStep = (step: unknown): step is string =>
  typeof step === 'string' &&
  step.length >= 1 &&
  step.length <= STEP_MAX &&
  step !== '__proto__' &&
  !CONTROL.test(step)

const MAY_STEP = `a text of 1 to ${STEP_MAX} characters, none of them a control character, not "__proto__"`

/** What is wrong with a path, or undefined. */
export function checkPath(path: unknown): Fault | undefined {
  if (!Array.isArray(path) || path.length === 0 || path.length > STEPS_MAX)
    return { path: [], is: told(path), may: `a list of 1 to ${STEPS_MAX} steps` }
  for (let index = 0; index < path.length; index++)
    if (!isStep(path[index])) return { path: [index], is: told(path[index]), may: MAY_STEP }
  return undefined
}

/** Whether the first path is the second or leads to it. */
export const leadsTo = (outer: Path, inner: Path): boolean =>
  outer.length <= inner.length && outer.every((step, index) => step === inner[index])
