import type { Diagnostic } from '@tubwright/core'
import type * as z from 'zod'
import { suggested } from './nearest.ts'
import {
  bestOption,
  keySchemaOf,
  keysOf,
  optionKeys,
  rawSchemaAt,
  schemaAt,
  wordsOf,
} from './schema-walk.ts'

type Issue = z.core.$ZodIssue
type Path = Diagnostic['path']
/** What a schema of ours gives with an issue of its own. */
type CustomParams = { readonly code?: Diagnostic['code']; readonly is?: string }

const SHOWN_MAX = 60 // [characters]
const KEYS_MAX = 100

const EXPECTED: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list',
  tuple: 'a list',
  object: 'keys and values',
  record: 'keys and values',
}

/** A value as it may be shown: short, and whatever it is. */
export function quote(value: unknown): string {
  if (value === undefined) return 'missing'
  if (value === null) return 'empty'
  if (Array.isArray(value)) return `a list of ${value.length}`
  if (typeof value === 'object')
    return `keys and values (${shorten(Object.keys(value).join(', '))})`
  return shorten(typeof value === 'string' ? `"${value}"` : String(value))
}

const shorten = (text: string): string =>
  text.length > SHOWN_MAX ? `${text.slice(0, SHOWN_MAX - 1)}…` : text

const valueAt = (value: unknown, path: Path): unknown =>
  path.reduce<unknown>(
    (inner, key) =>
      typeof inner === 'object' && inner !== null && Object.hasOwn(inner, key)
        ? (inner as Record<string | number, unknown>)[key]
        : undefined,
    value,
  )

const plain = (path: readonly PropertyKey[]): Path =>
  path.map(key => (typeof key === 'symbol' ? key.toString() : key))

const codeOf = (here: unknown, otherwise: Diagnostic['code']): Diagnostic['code'] =>
  here === undefined ? 'missing-key' : otherwise

const unknownKeys = (keys: readonly string[], path: Path, may: readonly string[]) =>
  keys.slice(0, KEYS_MAX).map(
    (key): Diagnostic => ({
      code: 'unknown-key',
      path: [...path, key],
      is: quote(key),
      may: may.join(', ') || 'no key at all',
      ...suggested(key, may),
    }),
  )

const wrongWord = (path: Path, here: unknown, words: readonly string[]): Diagnostic => ({
  code: codeOf(here, 'wrong-value'),
  path,
  is: quote(here),
  may: words.join(', '),
  ...(typeof here === 'string' ? suggested(here, words) : {}),
})

/** The units that a quantity's list names: `12 a` is a slip for `12 A`. */
function withUnit(written: string, may: string): { didYouMean?: string } {
  const units = /\(units: ([^)]*)\)/u.exec(may)?.[1]?.split(', ') ?? []
  const [, number = '', unit = ''] = /^\s*([+-]?[\d.]+)\s*(\S.*)$/u.exec(written) ?? []
  const meant = units.find(each => each.toLowerCase() === unit.trim().toLowerCase())
  return meant === undefined ? {} : { didYouMean: `${number} ${meant}` }
}

/** A letter before what begins with a digit, where a name has to begin with one: `v120` for 120. */
function withLetter(written: unknown, wanted: z.ZodType | undefined): { didYouMean?: string } {
  const near = `v${String(written)}`
  return /^\d/u.test(String(written)) && wanted?.safeParse(near).success ? { didYouMean: near } : {}
}

/** A number, an empty place or nothing where text was wanted: what that text would have to be. */
function wantsText(path: Path, here: unknown, schema: z.ZodType, value: unknown): Diagnostic {
  const at = rawSchemaAt(schema, path, value)
  const tried = at?.safeParse(here === undefined || here === null ? '' : String(here))
  const issue = tried?.error?.issues.find(each => each.code === 'custom')
  const isNumber = typeof here === 'number'
  const format = isNumber && tried?.error?.issues.find(each => each.code === 'invalid_format')
  const may = (issue || format || undefined)?.message ?? (isNumber ? `text: "${here}"` : 'text')
  const code = codeOf(here, issue ? 'wrong-quantity' : 'wrong-type')
  return { code, path, is: quote(here), may, ...(format ? withLetter(here, at) : {}) }
}

function wrongType(
  path: Path,
  here: unknown,
  expected: string,
  schema: z.ZodType,
  value: unknown,
): Diagnostic {
  if (expected === 'string' && (typeof here !== 'object' || here === null))
    return wantsText(path, here, schema, value)
  const keys = expected === 'object' ? keysOf(schemaAt(schema, path, value)) : []
  const what = EXPECTED[expected] ?? expected
  const may = keys.length > 0 ? `${what}: ${keys.join(', ')}` : what
  return { code: codeOf(here, 'wrong-type'), path, is: quote(here), may }
}

type Sized = Extract<Issue, { code: 'too_small' | 'too_big' }>

const COUNTED: Readonly<Record<string, readonly [one: string, many: string]>> = {
  array: ['entry', 'entries'],
  string: ['character', 'characters'],
}

/** A number of what is counted, such as `1 entry`; alone where nothing is. */
function counted(count: number, origin: string): string {
  const [one, many] = COUNTED[origin] ?? []
  return one === undefined ? String(count) : `${count} ${count === 1 ? one : many}`
}

const limitOf = (issue: Sized): string => {
  const least = issue.code === 'too_small'
  const word = issue.exact ? 'exactly' : least ? 'at least' : 'at most'
  return `${word} ${counted(Number(least ? issue.minimum : issue.maximum), issue.origin)}`
}

function wrongSize(path: Path, here: unknown, issue: Sized): Diagnostic {
  const size = issue.origin in COUNTED ? (here as { length: number }).length : undefined
  const is = size === undefined ? quote(here) : `${counted(size, issue.origin)} long`
  return { code: 'wrong-value', path, is, may: limitOf(issue) }
}

/** A key of free choice that is no name. */
function wrongKey(
  path: Path,
  issue: Extract<Issue, { code: 'invalid_key' }>,
  wanted: z.ZodType | undefined,
): Diagnostic {
  const [first] = issue.issues
  const isSize = first?.code === 'too_small' || first?.code === 'too_big'
  const may = first && isSize ? limitOf(first) : (first?.message ?? 'a name')
  const key = path.at(-1)
  return { code: 'unknown-key', path, is: quote(key), may, ...withLetter(key, wanted) }
}

/** Something that may be said in several ways, and is said in none of them. */
function wrongUnion(
  issue: Extract<Issue, { code: 'invalid_union' }>,
  path: Path,
  schema: z.ZodType,
  value: unknown,
): readonly Diagnostic[] {
  const here = valueAt(value, path)
  const tag = (issue as { discriminator?: string }).discriminator
  if (tag !== undefined) {
    const union = rawSchemaAt(schema, path.at(-1) === tag ? path.slice(0, -1) : path, value)
    return [wrongWord(path, here, wordsOf(union, tag))]
  }
  if (typeof here !== 'object' || here === null) return [wantsText(path, here, schema, value)]
  const union = rawSchemaAt(schema, path, value)
  const best = bestOption(union, here)
  if (best !== undefined)
    return (issue.errors[best] ?? []).flatMap(each => tellIssue(each, schema, value, path))
  const ways = optionKeys(union)
  const may = ways.map(each => `{ ${each.join(', ')} }`).join(' or ')
  const [key = ''] = Object.keys(here)
  return [{ code: 'wrong-value', path, is: quote(here), may, ...suggested(key, ways.flat()) }]
}

/** One issue of a schema as diagnostics: what is, against what may be. */
export function tellIssue(
  issue: Issue,
  schema: z.ZodType,
  value: unknown,
  base: Path = [],
): readonly Diagnostic[] {
  const path = [...base, ...plain(issue.path)]
  const here = valueAt(value, path)
  switch (issue.code) {
    case 'unrecognized_keys':
      return unknownKeys(issue.keys, path, keysOf(schemaAt(schema, path, value)))
    case 'invalid_union':
      return wrongUnion(issue, path, schema, value)
    case 'invalid_value':
      return [wrongWord(path, here, issue.values.map(String))]
    case 'invalid_type':
      return [wrongType(path, here, issue.expected, schema, value)]
    case 'too_small':
    case 'too_big':
      return [wrongSize(path, here, issue)]
    case 'invalid_key': {
      const key = String(path.at(-1) ?? '')
      const record = rawSchemaAt(schema, path.slice(0, -1), value)
      const may = wordsOf(record, 'key')
      return may.length > 0
        ? unknownKeys([key], path.slice(0, -1), may)
        : [wrongKey(path, issue, keySchemaOf(record))]
    }
    case 'custom': {
      const { code = 'wrong-quantity', is = quote(here) } = (issue.params ?? {}) as CustomParams
      const told = { path, is: shorten(is), may: issue.message }
      return [{ code, ...told, ...withUnit(String(here), issue.message) }]
    }
    default: {
      const near = withLetter(here, rawSchemaAt(schema, path, value))
      return [{ code: 'wrong-value', path, is: quote(here), may: issue.message, ...near }]
    }
  }
}
