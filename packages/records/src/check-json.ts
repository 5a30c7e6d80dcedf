import { canonical } from './canonical.ts'
import type { Fault } from './fault.ts'
import { told } from './fault.ts'
import type { Json, JsonObject } from './json.ts'

type Steps = (string | number)[]

/**
 * What keeps a value from being JSON that every machine reads alike, or undefined.
 *
 * Refuses what JSON cannot say (undefined, NaN, functions, objects of a class), keys that mean
 * something else to JavaScript, and nesting deeper than it may; never recurses further than that.
 *
 * @param depth - lists and objects inside each other, at most
 */
export function checkJson(value: unknown, depth: number): Fault | undefined {
  const steps: Steps = []
  const found = walk(value, steps, depth)
  return found && { path: steps, ...found }
}

type Found = Omit<Fault, 'path'> | undefined

/** What is said of nesting that goes too deep. */
export const tooDeep = (depth: number): Omit<Fault, 'path'> => ({
  is: `more than ${depth} levels`,
  may: `at most ${depth} levels of nesting`,
})

function walk(value: unknown, steps: Steps, depth: number): Found {
  switch (typeof value) {
    case 'string':
    case 'boolean':
      return undefined
    case 'number':
      return Number.isFinite(value) ? undefined : { is: `${value}`, may: 'a finite number' }
    case 'object':
      if (value === null) return undefined
      if (steps.length >= depth) return tooDeep(depth)
      return Array.isArray(value) ? walkList(value, steps, depth) : walkObject(value, steps, depth)
    default:
      return { is: told(value), may: 'a JSON value' }
  }
}

/** Walks one level down; the step stays where something was found. */
function walkIn(value: unknown, step: string | number, steps: Steps, depth: number): Found {
  steps.push(step)
  const found = walk(value, steps, depth)
  if (found === undefined) steps.pop()
  return found
}

function walkList(list: readonly unknown[], steps: Steps, depth: number): Found {
  for (let index = 0; index < list.length; index++) {
    const found = walkIn(list[index], index, steps, depth)
    if (found) return found
  }
  return undefined
}

const isPlain = (value: object): boolean => {
  const prototype = Object.getPrototypeOf(value)
  return prototype === Object.prototype || prototype === null
}

function walkObject(value: object, steps: Steps, depth: number): Found {
  if (!isPlain(value)) return { is: 'an object of a class', may: 'a plain object' }
  for (const key of Object.keys(value)) {
    if (key === '__proto__') return { is: 'a key "__proto__"', may: 'any other key' }
    const found = walkIn((value as Record<string, unknown>)[key], key, steps, depth)
    if (found) return found
  }
  return undefined
}

/** Bytes of a text in UTF-8. */
function bytesOf(text: string): number {
  let bytes = text.length
  for (let index = 0; index < text.length; index++) {
    const unit = text.charCodeAt(index)
    if (unit < 0x80) continue
    bytes += unit < 0x800 || (unit >= 0xd800 && unit < 0xe000) ? 1 : 2
  }
  return bytes
}

/** The most bytes that a checked value can take as canonical UTF-8: cheap, and often enough. */
function bytesAtMost(value: Json): number {
  if (typeof value === 'string') return 6 * value.length + 2
  if (typeof value !== 'object' || value === null) return 25
  if (Array.isArray(value))
    return value.reduce((sum: number, each) => sum + 1 + bytesAtMost(each), 2)
  let sum = 2
  for (const key of Object.keys(value))
    sum += 6 * key.length + 4 + bytesAtMost((value as JsonObject)[key] as Json)
  return sum
}

/** Whether a checked value is within so many bytes as canonical UTF-8. */
export const fits = (value: Json, max: number): boolean =>
  bytesAtMost(value) <= max || bytesOf(canonical(value)) <= max

/** A checked value as a copy of its own, so that nobody changes it from outside. */
export const ownCopy = (value: Json): Json =>
  typeof value === 'object' && value !== null ? JSON.parse(canonical(value)) : plainNumber(value)

/** JSON knows no −0. */
const plainNumber = (value: Json): Json => (value === 0 ? 0 : value)
