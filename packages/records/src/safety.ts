import type { Path } from './path.ts'

/** What a wrong value could make dangerous, and where such values are; `*` is any one step. */
export const SAFETY_PATHS: readonly { readonly of: string; readonly path: Path }[] = [
  { of: 'region', path: ['survey', 'region'] },
  { of: 'voltage', path: ['survey', 'supply', 'system'] },
  { of: 'voltage', path: ['survey', 'supply', 'frequency'] },
  { of: 'voltage', path: ['survey', 'loads', '*', 'volts'] },
  { of: 'voltage', path: ['survey', 'loads', '*', 'frequency'] },
  { of: 'voltage', path: ['survey', 'loads', '*', 'straps'] },
  { of: 'voltage', path: ['survey', 'loads', '*', 'current'] },
  { of: 'return', path: ['survey', 'loads', '*', 'leads', '*', 'function'] },
  { of: 'return', path: ['survey', 'loads', '*', 'circuits', '*', 'across'] },
  { of: 'return', path: ['survey', 'loads', '*', 'plug', 'pins'] },
  { of: 'earth', path: ['survey', 'loads', '*', 'doubleInsulated'] },
  { of: 'kind', path: ['survey', 'loads', '*', 'kind'] },
  { of: 'breaker', path: ['survey', 'supply', 'breaker'] },
  { of: 'breaker', path: ['survey', 'supply', 'turnable'] },
  { of: 'breaker', path: ['survey', 'supply', 'devices', '*', 'device'] },
  { of: 'breaker', path: ['survey', 'supply', 'devices', '*', 'breaker'] },
  { of: 'breaker', path: ['survey', 'supply', 'devices', '*', 'fedBy'] },
  { of: 'current', path: ['survey', 'loads', '*', 'circuits', '*', 'amps'] },
  { of: 'current', path: ['survey', 'loads', '*', 'circuits', '*', 'power'] },
  { of: 'conductor', path: ['survey', 'supply', 'cables', '*', 'from'] },
  { of: 'conductor', path: ['survey', 'supply', 'cables', '*', 'to'] },
  { of: 'conductor', path: ['survey', 'supply', 'cables', '*', 'conductors', '*', 'size'] },
  { of: 'conductor', path: ['survey', 'supply', 'cables', '*', 'conductors', '*', 'function'] },
  { of: 'conductor', path: ['survey', 'supply', 'cables', '*', 'conductors', '*', 'from'] },
  { of: 'conductor', path: ['survey', 'supply', 'cables', '*', 'conductors', '*', 'to'] },
  { of: 'conductor', path: ['survey', 'loads', '*', 'leads', '*', 'size'] },
  { of: 'probe', path: ['survey', 'loads', '*', 'curve'] },
  { of: 'probe', path: ['survey', 'loads', '*', 'place'] },
  { of: 'landing', path: ['plan', 'taken'] },
  { of: 'landing', path: ['asBuilt', 'ends'] },
  { of: 'landing', path: ['asBuilt', 'jumpers'] },
  { of: 'landing', path: ['asBuilt', 'straps'] },
  { of: 'landing', path: ['asBuilt', 'settings'] },
  { of: 'stop', path: ['stops'] },
]

const meet = (pattern: Path, path: Path): boolean => {
  const steps = Math.min(pattern.length, path.length)
  for (let index = 0; index < steps; index++)
    if (pattern[index] !== '*' && pattern[index] !== path[index]) return false
  return true
}

/** What a survey says without any verdict resting on it, by its first or its last step. */
const PLAIN_FIRST = ['schema', 'id', 'title', 'note', 'bay', 'keypadHole']
const PLAIN_LAST = ['label', 'colour', 'condition']

/** Whatever else a survey says may move a verdict, fields that are yet to come among it. */
const isJudged = ([top, first, ...rest]: Path): boolean =>
  top === 'survey' &&
  first !== undefined &&
  !PLAIN_FIRST.includes(first) &&
  !PLAIN_LAST.includes(rest.at(-1) ?? '')

/** Whether safety rests on what is said at a path: at a place of the table, inside one, or around one. */
export const isSafetyPath = (path: Path): boolean =>
  isJudged(path) || SAFETY_PATHS.some(each => meet(each.path, path))
