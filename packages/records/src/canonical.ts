import type { Json, JsonObject } from './json.ts'

/**
 * The one text of a JSON value: keys sorted by code units, no spaces, numbers in their shortest form,
 * lone surrogates escaped, so that equal values are equal bytes in UTF-8.
 *
 * @param value - checked already: `checkJson` bounds its depth
 */
export const canonical = (value: Json): string =>
  isOrdered(value) ? JSON.stringify(value) : reordered(value)

/** Whether every object in it has its keys in order already, as what was read has: then it is fast. */
function isOrdered(value: Json): boolean {
  if (typeof value !== 'object' || value === null) return true
  return Array.isArray(value) ? value.every(isOrdered) : isOrderedObject(value as JsonObject)
}

function isOrderedObject(value: JsonObject): boolean {
  let last = ''
  for (const key of Object.keys(value)) {
    if (key < last || !isOrdered(value[key] as Json)) return false
    last = key
  }
  return true
}

/** What is not in order, put so; looks into each level again, of which there are few. */
function reordered(value: Json): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value)
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`
  const pairs = Object.keys(value)
    .sort()
    .map(key => `${JSON.stringify(key)}:${canonical((value as JsonObject)[key] as Json)}`)
  return `{${pairs.join(',')}}`
}

/** Whether two checked values are the same in all that JSON can say: just where their texts are. */
export function isSame(a: Json, b: Json): boolean {
  if (a === b) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  if (Array.isArray(a) !== Array.isArray(b)) return false
  const keys = Object.keys(a)
  return keys.length === Object.keys(b).length && keys.every(key => isSameAt(a, b, key))
}

const isSameAt = (a: object, b: object, key: string): boolean =>
  Object.hasOwn(b, key) && isSame((a as JsonObject)[key] as Json, (b as JsonObject)[key] as Json)
