import type * as z from 'zod'

type Path = readonly PropertyKey[]

interface Definition {
  readonly type: string
  readonly shape?: Readonly<Record<string, z.ZodType>>
  readonly element?: z.ZodType
  readonly items?: readonly z.ZodType[]
  readonly keyType?: z.ZodType
  readonly valueType?: z.ZodType
  readonly innerType?: z.ZodType
  readonly in?: z.ZodType
  readonly options?: readonly z.ZodType[]
  readonly discriminator?: string
  readonly values?: readonly unknown[]
  readonly entries?: Readonly<Record<string, string>>
}

const definitionOf = (schema: z.ZodType): Definition => schema.def as unknown as Definition

/** Looks through optional, default and transform to what a person writes. */
function written(schema: z.ZodType): z.ZodType {
  const { innerType, in: input } = definitionOf(schema)
  const inside = innerType ?? input
  return inside ? written(inside) : schema
}

const choicesAt = (schema: z.ZodType, key: string): readonly string[] => {
  const at = definitionOf(written(schema)).shape?.[key]
  return at ? literalsOf(at) : []
}

const literalsOf = (schema: z.ZodType): readonly string[] => {
  const { values, entries } = definitionOf(written(schema))
  return (values ?? Object.values(entries ?? {})).map(String)
}

const shapeOf = (schema: z.ZodType): readonly string[] =>
  Object.keys(definitionOf(written(schema)).shape ?? {})

/**
 * Of the ways in which something may be said, the one whose keys a value has; for a list, the list.
 *
 * @returns its index, or undefined where the value has no key of any
 */
export function bestOption(union: z.ZodType | undefined, value: object): number | undefined {
  if (!union) return undefined
  const { options = [] } = definitionOf(written(union))
  if (Array.isArray(value)) {
    const list = options.findIndex(each => {
      const { items, element } = definitionOf(written(each))
      return items !== undefined || element !== undefined
    })
    return list < 0 ? undefined : list
  }
  const shared = options.map(each => shapeOf(each).filter(key => Object.hasOwn(value, key)).length)
  const most = Math.max(0, ...shared)
  return most > 0 ? shared.indexOf(most) : undefined
}

/** What the keys of a record have to be; undefined where its keys are fixed. */
export const keySchemaOf = (schema: z.ZodType | undefined): z.ZodType | undefined =>
  schema && definitionOf(written(schema)).keyType

/** The keys of each way in which something may be said. */
export const optionKeys = (union: z.ZodType | undefined): readonly (readonly string[])[] =>
  (union ? (definitionOf(written(union)).options ?? []) : [])
    .map(shapeOf)
    .filter(each => each.length > 0)

function optionFor(schema: z.ZodType, value: unknown): z.ZodType | undefined {
  const { options = [], discriminator } = definitionOf(schema)
  if (discriminator !== undefined) {
    const tag = (value as Record<string, unknown> | null)?.[discriminator]
    return options.find(each => choicesAt(each, discriminator).includes(String(tag)))
  }
  const best = typeof value === 'object' && value ? bestOption(schema, value) : undefined
  return best === undefined ? undefined : options[best]
}

function step(schema: z.ZodType, key: PropertyKey, value: unknown): z.ZodType | undefined {
  const here = written(schema)
  const { type, shape, element, items, valueType } = definitionOf(here)
  if (type === 'union') {
    const option = optionFor(here, value)
    return option && step(option, key, value)
  }
  if (shape) return Object.hasOwn(shape, key) ? shape[String(key)] : undefined
  return element ?? items?.[Number(key)] ?? valueType
}

const inside = (value: unknown, key: PropertyKey): unknown =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? (value as Record<PropertyKey, unknown>)[key]
    : undefined

/** The schema at a path as it was declared, with what it makes of a text. */
export function rawSchemaAt(schema: z.ZodType, path: Path, value: unknown): z.ZodType | undefined {
  const [key, ...rest] = path
  if (key === undefined) return schema
  const next = step(schema, key, value)
  return next && rawSchemaAt(next, rest, inside(value, key))
}

/** The schema at a path, choosing among alternatives by what the value says; undefined past it. */
export function schemaAt(schema: z.ZodType, path: Path, value: unknown): z.ZodType | undefined {
  const raw = rawSchemaAt(schema, path, value)
  if (!raw) return undefined
  const here = written(raw)
  const found = path.reduce<unknown>(inside, value)
  return definitionOf(here).type === 'union' ? (optionFor(here, found) ?? here) : here
}

/** The keys that may stand in an object, or in a record of named keys, of this schema. */
export function keysOf(schema: z.ZodType | undefined): readonly string[] {
  if (!schema) return []
  const { shape, keyType } = definitionOf(schema)
  return shape ? Object.keys(shape) : keyType ? literalsOf(keyType) : []
}

/** The words that may stand where a schema wants one of some; for a union, its tags. */
export function wordsOf(schema: z.ZodType | undefined, tag?: string): readonly string[] {
  if (!schema) return []
  const { options, keyType } = definitionOf(written(schema))
  if (options && tag !== undefined) return options.flatMap(each => choicesAt(each, tag))
  return literalsOf(keyType && tag !== undefined ? keyType : schema)
}
