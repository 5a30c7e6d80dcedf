import type { Diagnostic } from '@tubwright/core'
import { blocks } from '@tubwright/core'
import type { Document } from 'yaml'
import type * as z from 'zod'
import { inspectDocument, offsetOf } from './inspect-document.ts'
import type { LocatedDiagnostic, Read } from './located.ts'
import { suggested } from './nearest.ts'
import type { Placed } from './parse-text.ts'
import { ALIASES_MAX, parseText } from './parse-text.ts'
import { schemaAt, wordsOf } from './schema-walk.ts'
import { tellIssue } from './tell-issue.ts'

const DIAGNOSTICS_MAX = 100
const TOLD_MAX = 800 // [characters]

/** Further checks that a schema cannot say, such as a name that nothing carries. */
export type Check<Value> = (value: Value) => readonly Diagnostic[]

type Issues = readonly z.core.$ZodIssue[]

/** The value of a document, or what is wrong where aliases repeat aliases without end. */
function toValue(document: Document, offset: number): { value: unknown } | Placed {
  try {
    return { value: document.toJS({ maxAliasCount: ALIASES_MAX }) as unknown }
  } catch (error) {
    if (!(error instanceof ReferenceError)) throw error
    const is = 'aliases of aliases, which multiply'
    const may = `at most ${ALIASES_MAX}, counted with what they repeat`
    return { code: 'too-many-aliases', path: [], is, may, offset }
  }
}

/** Of a text that is plainly another kind of document, only that is worth saying. */
function otherKind(issues: Issues, schema: z.ZodType, value: unknown): Issues {
  const words = wordsOf(schemaAt(schema, ['schema'], value))
  const said = (value as { schema?: unknown } | null)?.schema
  if (typeof said !== 'string' || !/^[a-z-]+\/\d+$/u.test(said)) return issues
  if (words.includes(said) || suggested(said, words).didYouMean !== undefined) return issues
  return issues.filter(each => each.path[0] === 'schema')
}

/** Takes out keys that nobody knows, so that the rest can be checked all the same. */
function dropUnknown(value: unknown, issues: Issues): boolean {
  for (const issue of issues) {
    if (issue.code !== 'unrecognized_keys') return false
    const at = issue.path.reduce<unknown>(
      (inner, key) => (inner as Record<PropertyKey, unknown> | undefined)?.[key],
      value,
    )
    for (const key of issue.keys) delete (at as Record<string, unknown>)[key]
  }
  return true
}

/** The names that a diagnostic lists as those that may stand there. */
const namesIn = (may: string): readonly string[] =>
  may.slice(may.indexOf(': ') + 2).split(/, (?:or )?/u)

const withSuggestion = (each: Diagnostic): Diagnostic => ({
  ...each,
  ...(each.code === 'unknown-name' ? suggested(each.is.slice(1, -1), namesIn(each.may)) : {}),
})

/** Judges a value by its schema, then by what a schema cannot say; whatever the value is. */
export function judge<Schema extends z.ZodType>(
  value: unknown,
  schema: Schema,
  check: Check<z.output<Schema>>,
): { readonly value?: z.output<Schema>; readonly found: readonly Diagnostic[] } {
  const result = schema.safeParse(value)
  if (result.success) return { value: result.data, found: check(result.data).map(withSuggestion) }
  const issues = otherKind(result.error.issues, schema, value)
  const found = issues.slice(0, DIAGNOSTICS_MAX).flatMap(each => tellIssue(each, schema, value))
  const again = dropUnknown(value, issues) ? schema.safeParse(value) : undefined
  return again?.success
    ? { found: [...found, ...check(again.data).map(withSuggestion)] }
    : { found }
}

const shorten = (text: string): string =>
  text.length > TOLD_MAX ? `${text.slice(0, TOLD_MAX - 1)}…` : text

/** Errors before warnings: where not all are told, no error is left out for a warning. */
const errorsFirst = (all: readonly Placed[]): readonly Placed[] => [
  ...all.filter(blocks),
  ...all.filter(each => !blocks(each)),
]

const inOrder = (a: LocatedDiagnostic, b: LocatedDiagnostic): number =>
  a.line - b.line || a.column - b.column

/**
 * Reads one YAML text against a schema.
 *
 * Never throws, whatever the text; all diagnostics at once in the order of the text, each with its
 * line and column. Only the first hundred are told. Warnings come beside the value.
 */
export function readYaml<Schema extends z.ZodType>(
  file: string,
  text: string,
  schema: Schema,
  check: Check<z.output<Schema>> = () => [],
): Read<z.output<Schema>> {
  const { lines, document, problems } = parseText(text)
  const locate = ({ offset, ...each }: Placed): LocatedDiagnostic => {
    const { line, col } = lines.linePos(offset)
    const at = { file, line: Math.max(1, line), column: Math.max(1, col) }
    return { ...each, is: shorten(each.is), may: shorten(each.may), ...at }
  }
  const told = (all: readonly Placed[]) => ({
    diagnostics: errorsFirst(all).slice(0, DIAGNOSTICS_MAX).map(locate).sort(inOrder),
  })
  if (!document) return told(problems)
  const inspection = inspectDocument(document)
  const own = [...problems, ...inspection.problems]
  if (inspection.fatal) return told(own)
  const js = toValue(document, inspection.aliasAt)
  if ('code' in js) return told([...own, js])
  const { value, found } = judge(js.value, schema, check)
  const all = [
    ...own,
    ...found.map(each => ({
      ...each,
      offset: offsetOf(document, each.path, each.code === 'unknown-key'),
    })),
  ]
  return value === undefined || all.some(blocks) ? told(all) : { value, ...told(all) }
}
