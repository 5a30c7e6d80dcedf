import type { Unit } from '@tubwright/core'
import { writtenAs } from '@tubwright/core'
import type * as z from 'zod'
import { byPosition, valueAt } from './item-paths.ts'
import { keysOf, rawSchemaAt, schemaAt, wordsOf } from './schema-walk.ts'

/** How one field of a document is asked for. */
export type FieldForm =
  | { readonly kind: 'quantity'; readonly unit: Unit }
  | { readonly kind: 'known'; readonly unit: Unit }
  | { readonly kind: 'size' }
  | { readonly kind: 'choice'; readonly options: readonly string[] }
  /** A choice that may be known in part, or unknown with its reason. */
  | { readonly kind: 'known-choice'; readonly options: readonly string[] }
  | { readonly kind: 'yes-no' }
  | { readonly kind: 'number' }
  | { readonly kind: 'text' }
  /** Names of things in the same document. */
  | { readonly kind: 'names' }

/** One field of a document: how it is asked for, and whether the document needs it. */
export interface Field {
  readonly form: FieldForm
  readonly isRequired: boolean
  /** Whether it is one of some named entries, any of which may be left out. */
  readonly isEntry: boolean
  /** What is taken where nothing is said. */
  readonly usual?: unknown
}

interface Definition {
  readonly type: string
  readonly defaultValue?: unknown
  readonly innerType?: z.ZodType
  readonly in?: z.ZodType
}

const definitionOf = (schema: z.ZodType): Definition => schema.def as unknown as Definition

/** What is registered of a schema or of what it wraps. */
function registered(schema: z.ZodType): FieldForm | undefined {
  const own = writtenAs.get(schema)
  const { innerType } = definitionOf(schema)
  return own ?? (innerType && registered(innerType))
}

const isWrapped = (schema: z.ZodType): boolean =>
  ['optional', 'default'].includes(definitionOf(schema).type)

function formOf(schema: z.ZodType): FieldForm | undefined {
  const { type } = definitionOf(schema)
  const options = wordsOf(schema)
  if (options.length > 0) return { kind: 'choice', options }
  if (type === 'boolean') return { kind: 'yes-no' }
  if (type === 'number' || type === 'int') return { kind: 'number' }
  if (type === 'string') return { kind: 'text' }
  return type === 'array' || type === 'tuple' ? { kind: 'names' } : undefined
}

const isNamed = (
  schema: z.ZodType,
  document: unknown,
  at: readonly (string | number)[],
): boolean => {
  const above = at.length > 0 ? schemaAt(schema, at.slice(0, -1), document) : undefined
  return above !== undefined && definitionOf(above).type === 'record'
}

/**
 * The field at a path of a document; undefined where there is none, or where it holds other fields.
 *
 * @param path - items by id or by position
 */
export function fieldAt(
  schema: z.ZodType,
  document: unknown,
  path: readonly (string | number)[],
): Field | undefined {
  const at = byPosition(document, path)
  const raw = rawSchemaAt(schema, at, document)
  if (!raw || takesItems(schema, document, path)) return undefined
  const plain = schemaAt(schema, at, document)
  const form = registered(raw) ?? (plain && formOf(plain))
  const { defaultValue: usual } = definitionOf(raw)
  const isEntry = isNamed(schema, document, at)
  const isRequired = !isWrapped(raw) && !isEntry
  return form && { form, isRequired, isEntry, ...(usual === undefined ? {} : { usual }) }
}

/** Ids of the items that a document has at a path, where a list of items stands there. */
function itemsAt(document: unknown, path: readonly (string | number)[]): readonly string[] {
  const list = valueAt(document, path)
  return Array.isArray(list)
    ? list.flatMap((each: { id?: unknown } | null) =>
        typeof each?.id === 'string' ? [each.id] : [],
      )
    : []
}

const recordKeys = (document: unknown, path: readonly (string | number)[]): readonly string[] => {
  const value = valueAt(document, path)
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.keys(value)
    : []
}

const DEPTH_MAX = 12

/**
 * Every field that a schema has at or below a path, in its order: of each item and each named entry
 * that the document has, present or not. Ids and the kind of file are no questions and are left out.
 */
export function fieldsBelow(
  schema: z.ZodType,
  document: unknown,
  path: readonly string[] = [],
): readonly (readonly string[])[] {
  if (path.length > DEPTH_MAX) return []
  const last = path.at(-1)
  if (last === 'id' || last === 'schema') return []
  if (fieldAt(schema, document, path)) return [path]
  const plain = schemaAt(schema, byPosition(document, path), document)
  const fixed = keysOf(plain)
  const keys =
    fixed.length > 0 ? fixed : [...itemsAt(document, path), ...recordKeys(document, path)]
  return keys.flatMap(key => fieldsBelow(schema, document, [...path, key]))
}

/** Whether a list of items stands at a path: it is no field, and one may be added to it. */
export function takesItems(
  schema: z.ZodType,
  document: unknown,
  path: readonly (string | number)[],
): boolean {
  const plain = schemaAt(schema, byPosition(document, path), document)
  const element = plain && (plain.def as unknown as { element?: z.ZodType }).element
  return element !== undefined && ['object', 'union'].includes(definitionOf(element).type)
}

/** A place that can grow: a list that takes another item, or entries by any name. */
export interface Growing {
  readonly path: readonly string[]
  readonly takes: 'items' | 'entries'
}

const isFreeRecord = (schema: z.ZodType | undefined): boolean =>
  schema !== undefined && definitionOf(schema).type === 'record' && keysOf(schema).length === 0

/** Every place at or below a path that can grow, in the order of the schema, whether or not it is there yet. */
export function growingBelow(
  schema: z.ZodType,
  document: unknown,
  path: readonly string[] = [],
): readonly Growing[] {
  if (path.length > DEPTH_MAX || fieldAt(schema, document, path)) return []
  const plain = schemaAt(schema, byPosition(document, path), document)
  if (!plain) return []
  const own: readonly Growing[] = takesItems(schema, document, path)
    ? [{ path, takes: 'items' }]
    : isFreeRecord(plain)
      ? [{ path, takes: 'entries' }]
      : []
  const fixed = keysOf(plain)
  const keys =
    fixed.length > 0 ? fixed : [...itemsAt(document, path), ...recordKeys(document, path)]
  return [...own, ...keys.flatMap(key => growingBelow(schema, document, [...path, key]))]
}
