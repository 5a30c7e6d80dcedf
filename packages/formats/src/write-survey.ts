import { survey } from '@tubwright/core'
import { stringify } from 'yaml'
import { keysOf, schemaAt } from './schema-walk.ts'

/** The same value with the keys of every object in the order of its schema; unknown keys last. */
function ordered(whole: unknown, value: unknown, path: readonly (string | number)[]): unknown {
  if (Array.isArray(value))
    return value.map((each, index) => ordered(whole, each, [...path, index]))
  if (typeof value !== 'object' || value === null) return value
  const order = keysOf(schemaAt(survey, path, whole))
  const place = (key: string): number => (order.includes(key) ? order.indexOf(key) : order.length)
  const entries = Object.entries(value)
    .map(([key, each], index) => ({ key, each, index }))
    .sort((a, b) => place(a.key) - place(b.key) || a.index - b.index)
  return Object.fromEntries(
    entries.map(({ key, each }) => [key, ordered(whole, each, [...path, key])]),
  )
}

/**
 * A survey as YAML that the command line reads, drafts included.
 *
 * Equal documents give equal texts, in whatever order their keys were set.
 */
export const writeSurvey = (document: unknown): string =>
  stringify(ordered(document, document, []), { lineWidth: 100 })
