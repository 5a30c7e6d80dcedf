import type { Diagnostic } from '@tubwright/core'
import { distance } from 'fastest-levenshtein'
import type { Document } from 'yaml'
import { isMap, isNode, isPair, isScalar, LineCounter, parseDocument } from 'yaml'
import type * as z from 'zod'
import type { LocatedDiagnostic, Read } from './located.ts'
import { keysOf, schemaAt, wordsOf } from './schema-walk.ts'

/** Text longer than this is no description of a tub: it is refused unread. */
export const TEXT_MAX = 1_000_000 // [characters]
const ALIASES_MAX = 50
const DIAGNOSTICS_MAX = 100
const NEAR = 3 // [edits]

type Path = readonly (string | number)[]

/** The word nearest to a misspelt one, if any is near. */
export function nearest(word: string, words: readonly string[]): string | undefined {
  const ranked = words
    .map(each => ({ each, edits: distance(word.toLowerCase(), each.toLowerCase()) }))
    .sort((a, b) => a.edits - b.edits)
  const best = ranked[0]
  return best && best.edits <= Math.min(NEAR, Math.ceil(word.length / 2)) ? best.each : undefined
}

const quote = (value: unknown): string => {
  const text = JSON.stringify(value) ?? 'nothing'
  return text.length > 60 ? `${text.slice(0, 57)}…` : text
}

const withNearest = (word: string, words: readonly string[]) => {
  const near = nearest(word, words)
  return near === undefined ? {} : { didYouMean: near }
}

const valueAt = (value: unknown, path: Path): unknown =>
  path.reduce<unknown>(
    (inner, key) => (inner as Record<string | number, unknown> | null | undefined)?.[key],
    value,
  )

type Issue = z.core.$ZodIssue

function unknownKeys(issue: Issue & { keys: string[] }, path: Path, may: readonly string[]) {
  return issue.keys.map(
    (key): Diagnostic => ({
      code: 'unknown-key',
      path: [...path, key],
      is: `"${key}"`,
      may: may.join(', '),
      ...withNearest(key, may),
    }),
  )
}

function wrongValue(path: Path, value: unknown, words: readonly string[]): Diagnostic {
  if (value === undefined)
    return { code: 'missing-key', path, is: 'missing', may: words.join(', ') || 'a value' }
  return {
    code: 'wrong-value',
    path,
    is: quote(value),
    may: words.join(', ') || 'something else',
    ...withNearest(String(value), words),
  }
}

const plain = (path: readonly PropertyKey[]): Path =>
  path.map(key => (typeof key === 'symbol' ? key.toString() : key))

/** Of the alternatives of a union, the one that got furthest speaks for all. */
function furthest(errors: readonly (readonly Issue[])[]): readonly Issue[] {
  const depth = (issues: readonly Issue[]) => Math.max(0, ...issues.map(each => each.path.length))
  const bad = (issues: readonly Issue[]) =>
    issues.some(each => each.code === 'invalid_type' && each.path.length === 0) ? 1 : 0
  const ranked = [...errors].sort((a, b) => bad(a) - bad(b) || depth(b) - depth(a))
  return ranked[0] ?? []
}

function fromIssue(
  issue: Issue,
  schema: z.ZodType,
  value: unknown,
  base: Path,
): readonly Diagnostic[] {
  const path = [...base, ...plain(issue.path)]
  const here = valueAt(value, path)
  switch (issue.code) {
    case 'unrecognized_keys':
      return unknownKeys(issue, path, keysOf(schemaAt(schema, path, value)))
    case 'invalid_union': {
      const tag = (issue as { discriminator?: string }).discriminator
      if (tag !== undefined) {
        const words = wordsOf(schemaAt(schema, path.slice(0, -1), value), tag)
        const all = words.length > 0 ? words : wordsOf(schemaAt(schema, path, value), tag)
        return [wrongValue(path, here, all)]
      }
      return furthest(issue.errors).flatMap(each => fromIssue(each, schema, value, path))
    }
    case 'invalid_value':
      return [wrongValue(path, here, issue.values.map(String))]
    case 'custom': {
      const params = issue.params as { is?: string } | undefined
      const is = params?.is ?? quote(here)
      return [{ code: 'wrong-quantity', path, is, may: issue.message }]
    }
    case 'invalid_type':
      return here === undefined
        ? [{ code: 'missing-key', path, is: 'missing', may: `a ${issue.expected}` }]
        : [{ code: 'wrong-type', path, is: quote(here), may: `a ${issue.expected}` }]
    default:
      return [{ code: 'wrong-value', path, is: quote(here), may: issue.message }]
  }
}

/** Where a path stands in the text; the nearest parent where the end of it is missing. */
function placeOf(document: Document, lines: LineCounter, path: Path, atKey: boolean) {
  for (let length = path.length; length >= 0; length--) {
    const part = path.slice(0, length)
    const offset = offsetOf(document, part, atKey || length < path.length)
    if (offset !== undefined) {
      const { line, col } = lines.linePos(offset)
      return { line, column: col }
    }
  }
  return { line: 1, column: 1 }
}

function offsetOf(document: Document, path: Path, atKey: boolean): number | undefined {
  const last = path.at(-1)
  const parent = path.length > 0 ? document.getIn(path.slice(0, -1), true) : undefined
  if (atKey && isMap(parent)) {
    const pair = parent.items.find(
      each => isPair(each) && isScalar(each.key) && String(each.key.value) === String(last),
    )
    if (pair && isScalar(pair.key)) return pair.key.range?.[0]
  }
  const node = document.getIn(path, true)
  return isNode(node) ? node.range?.[0] : undefined
}

function parsed(text: string, lines: LineCounter): Document | Diagnostic {
  const at = { path: [] as const, is: '' }
  if (text.length > TEXT_MAX)
    return {
      ...at,
      code: 'too-large',
      is: `${text.length} characters`,
      may: `at most ${TEXT_MAX} characters`,
    }
  try {
    return parseDocument(text, { lineCounter: lines, uniqueKeys: true, version: '1.2' })
  } catch (error) {
    const is = error instanceof Error ? error.message : String(error)
    return { ...at, code: 'yaml-syntax', is, may: 'YAML that nests less deeply' }
  }
}

function toValue(document: Document): { value: unknown } | Diagnostic {
  try {
    return { value: document.toJS({ maxAliasCount: ALIASES_MAX }) as unknown }
  } catch (error) {
    const is = error instanceof Error ? error.message : String(error)
    return { code: 'too-many-aliases', path: [], is, may: `at most ${ALIASES_MAX} aliases` }
  }
}

const atTop = (file: string, diagnostic: Diagnostic): Read<never> => ({
  diagnostics: [{ ...diagnostic, file, line: 1, column: 1 }],
})

/** Further checks that a schema cannot say, such as a name that nothing carries. */
export type Check<Value> = (value: Value) => readonly Diagnostic[]

/**
 * Reads one YAML text against a schema.
 *
 * Never throws, whatever the text; all diagnostics at once, each with its line and column.
 */
export function readYaml<Schema extends z.ZodType>(
  file: string,
  text: string,
  schema: Schema,
  check: Check<z.output<Schema>> = () => [],
): Read<z.output<Schema>> {
  const lines = new LineCounter()
  const document = parsed(text, lines)
  if ('code' in document) return atTop(file, document)
  if (document.errors.length > 0)
    return {
      diagnostics: document.errors.slice(0, DIAGNOSTICS_MAX).map((error): LocatedDiagnostic => {
        const { line, col } = lines.linePos(error.pos[0])
        const is = error.message.split('\n')[0] ?? ''
        return { code: 'yaml-syntax', path: [], is, may: 'YAML', file, line, column: col }
      }),
    }
  const js = toValue(document)
  if ('code' in js) return atTop(file, js)
  const result = schema.safeParse(js.value)
  const found = result.success
    ? check(result.data)
    : result.error.issues.flatMap(issue => fromIssue(issue, schema, js.value, []))
  const diagnostics = found.slice(0, DIAGNOSTICS_MAX).map(each => ({
    ...each,
    file,
    ...placeOf(document, lines, each.path, each.code === 'unknown-key'),
  }))
  if (!result.success || diagnostics.length > 0) return { diagnostics }
  return { value: result.data, diagnostics }
}
