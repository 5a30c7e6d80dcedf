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

function optionFor(schema: z.ZodType, value: unknown): z.ZodType | undefined {
  const { options = [], discriminator } = definitionOf(schema)
  if (discriminator === undefined) return options.find(each => definitionOf(each).shape)
  const tag = (value as Record<string, unknown> | null)?.[discriminator]
  return options.find(each => choicesAt(each, discriminator).includes(String(tag)))
}

function step(schema: z.ZodType, key: PropertyKey, value: unknown): z.ZodType | undefined {
  const here = written(schema)
  const { type, shape, element, items, valueType } = definitionOf(here)
  if (type === 'union') {
    const option = optionFor(here, value)
    return option && step(option, key, value)
  }
  return shape?.[String(key)] ?? element ?? items?.[Number(key)] ?? valueType
}

const inside = (value: unknown, key: PropertyKey): unknown =>
  typeof value === 'object' && value !== null
    ? (value as Record<PropertyKey, unknown>)[key]
    : undefined

/** The schema at a path, choosing among alternatives by what the value says; undefined past it. */
export function schemaAt(schema: z.ZodType, path: Path, value: unknown): z.ZodType | undefined {
  const [key, ...rest] = path
  if (key === undefined) {
    const here = written(schema)
    return definitionOf(here).type === 'union' ? (optionFor(here, value) ?? here) : here
  }
  const next = step(schema, key, value)
  return next && schemaAt(next, rest, inside(value, key))
}

/** The keys that may stand in an object of this schema. */
export const keysOf = (schema: z.ZodType | undefined): readonly string[] =>
  schema ? Object.keys(definitionOf(schema).shape ?? {}) : []

/** The words that may stand where a schema wants one of some; for a union, its tags. */
export function wordsOf(schema: z.ZodType | undefined, tag?: string): readonly string[] {
  if (!schema) return []
  const { options } = definitionOf(schema)
  if (options && tag !== undefined) return options.flatMap(each => choicesAt(each, tag))
  return literalsOf(schema)
}
