import { canonical } from './canonical.ts'
import { checkJson } from './check-json.ts'
import { explainJson } from './explain-json.ts'
import type { Outcome } from './fault.ts'
import { fail, ok } from './fault.ts'
import type { Json } from './json.ts'

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/**
 * A value from its canonical text; any other text is refused, so that reading and writing are exact.
 *
 * @param depth - lists and objects inside each other, at most
 */
export function parseCanonical(text: unknown, depth: number): Outcome<Json> {
  if (typeof text !== 'string') return fail({ path: [], is: typeof text, may: 'a text' })
  const value = parsed(text)
  if (value === undefined) return fail(explainJson(text, depth))
  const fault = checkJson(value, depth)
  if (fault) return fail(fault)
  return canonical(value as Json) === text ? ok(value as Json) : fail(explainJson(text, depth))
}
