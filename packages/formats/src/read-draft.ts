import type { Catalogue, Diagnostic, Survey, UnknownReason } from '@tubwright/core'
import { blocks, checkSurvey, survey, UNKNOWN_REASONS } from '@tubwright/core'
import type { Field } from './field-at.ts'
import { fieldAt } from './field-at.ts'
import { byId } from './item-paths.ts'
import { judge } from './read-yaml.ts'

/** A field that a survey needs and that nobody has answered yet, by the ids of its items. */
export interface OpenField {
  readonly path: readonly string[]
  /** Absent where it was never answered. */
  readonly unknown?: UnknownReason
}

/** A survey that is still being made. */
export interface Draft {
  /** Present once nothing that it needs is open. */
  readonly survey?: Survey
  readonly open: readonly OpenField[]
  /** What is wrong or unlikely in what was answered; paths by the ids of items. */
  readonly diagnostics: readonly Diagnostic[]
}

const reasonOf = (value: unknown): UnknownReason | undefined => {
  if (typeof value !== 'object' || value === null) return undefined
  const { unknown } = value as { unknown?: unknown }
  return UNKNOWN_REASONS.find(each => each === unknown)
}

type Reasons = Map<string, UnknownReason>

/** Where not knowing is the same as saying nothing: plates seldom show it, and 1 is the worse case. */
const NEED_NOT_BE_SAID = ['powerFactor']

/** Whether something else would be taken for what is not known: then it is open. */
function standsForMore(whole: unknown, path: readonly (string | number)[]): boolean {
  if (NEED_NOT_BE_SAID.includes(String(path.at(-1)))) return false
  const field = fieldAt(survey, whole, path)
  return field?.usual !== undefined || field?.isEntry === true
}

const keyOf = (path: readonly (string | number)[]): string => JSON.stringify(path)

/** Whether the schema itself can say that it is unknown. */
const isKnownPart = (field: Field | undefined): boolean =>
  field?.form.kind === 'known' || field?.form.kind === 'known-choice'

/** Takes out every "unknown" that the schema cannot say itself, and keeps its reason by its path. */
function withoutUnknowns(whole: unknown, reasons: Reasons): unknown {
  const walk = (value: unknown, path: readonly (string | number)[]): unknown => {
    const reason = reasonOf(value)
    if (reason !== undefined && !isKnownPart(fieldAt(survey, whole, path))) {
      reasons.set(keyOf(path), reason)
      return undefined
    }
    if (Array.isArray(value)) return value.map((each, index) => walk(each, [...path, index]))
    if (typeof value !== 'object' || value === null) return value
    const kept = Object.entries(value).map(([key, each]) => [key, walk(each, [...path, key])])
    return Object.fromEntries(kept.filter(([, each]) => each !== undefined))
  }
  return walk(whole, [])
}

/** A list without entries where at least one is needed is open, not wrong. */
const isOpen = ({ code, is }: Diagnostic): boolean => code === 'missing-key' || is === 'a list of 0'

/**
 * Reads a survey that may have gaps, as a form keeps it: every field may be missing or unknown.
 *
 * @param document - as the schema has it written, except that any field may be `{ unknown: reason }`
 */
export function readDraft(document: unknown, catalogue: Catalogue): Draft {
  const reasons: Reasons = new Map()
  const plain = withoutUnknowns(document, reasons)
  const { value, found } = judge(plain, survey, each => checkSurvey(each, catalogue))
  const open = [
    ...found.filter(isOpen).map(({ path }): OpenField => {
      const unknown = reasons.get(keyOf(path))
      return { path: byId(document, path), ...(unknown === undefined ? {} : { unknown }) }
    }),
    ...[...reasons].flatMap(([key, unknown]): readonly OpenField[] => {
      const path = JSON.parse(key) as (string | number)[]
      return standsForMore(document, path) ? [{ path: byId(document, path), unknown }] : []
    }),
  ]
  const diagnostics = found
    .filter(each => !isOpen(each))
    .map(each => ({ ...each, path: byId(document, each.path) }))
  const isSurvey = value !== undefined && open.length === 0 && !found.some(blocks)
  return { ...(isSurvey ? { survey: value } : {}), open, diagnostics }
}
