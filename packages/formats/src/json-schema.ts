import { controlBox, landing, supplyDevice, survey } from '@tubwright/core'
import * as z from 'zod'
import { keySchemaOf, schemaAt } from './schema-walk.ts'

/** Every kind of file, by the name that `describe --schema` takes. */
const SCHEMAS = {
  'control-box': controlBox,
  survey,
  'supply-device': supplyDevice,
  landing,
} as const

export type SchemaName = keyof typeof SCHEMAS
export const SCHEMA_NAMES = Object.keys(SCHEMAS) as readonly SchemaName[]

/** What is shared between kinds of file has one name, wherever it stands. */
const SHARED: Readonly<Record<string, string>> = {
  'control-box.board': 'board',
  'supply-device.board': 'board',
  'control-box.supplied': 'load',
  'survey.loads': 'load',
}

interface Written {
  description?: string
  properties?: Record<string, Written>
  items?: Written
  prefixItems?: Written[]
  additionalProperties?: Written | boolean
  anyOf?: Written[]
  oneOf?: Written[]
  [other: string]: unknown
}

const PARTLY = ['from', 'to', 'source', 'oneOf', 'unknown']

const isKnown = ({ anyOf = [] }: Written): boolean =>
  anyOf.some(each => each.properties && Object.hasOwn(each.properties, 'unknown'))

const sharedName = (name: string): string => SHARED[name] ?? name

/** Every property with the name of its field, before any name is shared. */
function visitKnown(schema: Written, name: string, found: Set<string>): Set<string> {
  if (isKnown(schema)) found.add(name)
  const { properties = {}, items, prefixItems = [], additionalProperties: more } = schema
  for (const [key, property] of Object.entries(properties))
    visitKnown(property, sharedName(`${name}.${key}`), found)
  const inside = typeof more === 'object' ? [more] : []
  const others = [...(schema.anyOf ?? []), ...(schema.oneOf ?? [])]
  for (const each of [...(items ? [items] : []), ...prefixItems, ...inside, ...others])
    visitKnown(each, name, found)
  return found
}

let known: ReadonlySet<string> | undefined

/** Fields whose value may be known in part: the ways to say so have one name, whatever it is of. */
function knownFields(): ReadonlySet<string> {
  known ??= SCHEMA_NAMES.reduce<Set<string>>(
    (found, name) => visitKnown(written(name), name, found),
    new Set(),
  )
  return known
}

function fieldOf(name: string): string {
  const dot = name.lastIndexOf('.')
  const key = name.slice(dot + 1)
  return PARTLY.includes(key) && knownFields().has(name.slice(0, dot))
    ? `known.${key}`
    : sharedName(name)
}

/** Says what a field is for, by its name such as `board.terminals.rated`. */
export type FieldText = (name: string) => string | undefined

/** Goes through every property with the name of its field; a list's entries have the list's name. */
function walk(schema: Written, name: string, visit: (at: Written, name: string) => void): void {
  for (const [key, property] of Object.entries(schema.properties ?? {})) {
    const own = `${name}.${key}`
    visit(property, own in SHARED ? own : fieldOf(own))
    walk(property, fieldOf(own), visit)
  }
  const { items, prefixItems = [], additionalProperties, anyOf = [], oneOf = [] } = schema
  const inside = typeof additionalProperties === 'object' ? [additionalProperties] : []
  for (const each of [...(items ? [items] : []), ...prefixItems, ...inside, ...anyOf, ...oneOf])
    walk(each, name, visit)
}

const written = (name: SchemaName): Written =>
  z.toJSONSchema(SCHEMAS[name], { io: 'input' }) as unknown as Written

/** The names of all fields of a kind of file, each once. */
export function fieldNames(name: SchemaName): readonly string[] {
  const names = new Set<string>()
  walk(written(name), name, (_, field) => names.add(field))
  return [...names]
}

/** The schema of a kind of file. */
export const schemaOf = (name: SchemaName): z.ZodType => SCHEMAS[name]

/**
 * The name of the field at a path of a document, as its sentence has it: steps into a list or into
 * entries with names of their own add nothing to it.
 */
export function fieldNameAt(
  name: SchemaName,
  document: unknown,
  path: readonly (string | number)[],
): string {
  const keys = path.filter((key, index) => {
    if (typeof key === 'number') return false
    return !keySchemaOf(schemaAt(SCHEMAS[name], path.slice(0, index), document))
  })
  const around = keys.slice(0, -1).reduce<string>((at, key) => fieldOf(`${at}.${key}`), name)
  const own = keys.length === 0 ? name : `${around}.${keys.at(-1)}`
  return own in SHARED ? own : fieldOf(own)
}

const WORTH_SHARING = 120 // [characters]

const bare = ({ description: _, ...rest }: Written): string => JSON.stringify(rest)

const partsOf = (schema: Written): readonly Written[] => [
  ...Object.values(schema.properties ?? {}),
  ...[schema.items ?? [], schema.prefixItems ?? [], schema.anyOf ?? [], schema.oneOf ?? []].flat(),
  ...(typeof schema.additionalProperties === 'object' ? [schema.additionalProperties] : []),
]

/** How often each part stands in a schema, its own description aside. */
function countParts(schema: Written, counts: Map<string, number>): Map<string, number> {
  const key = bare(schema)
  counts.set(key, (counts.get(key) ?? 0) + 1)
  for (const each of partsOf(schema)) countParts(each, counts)
  return counts
}

/** Writes each long part that is repeated once, under `$defs`, and refers to it elsewhere. */
function shared(root: Written): Written {
  const counts = countParts(root, new Map())
  const names = new Map<string, string>()
  const definitions: Record<string, Written> = {}
  const inside = (schema: Written): Written => {
    const { properties, items, prefixItems, anyOf, oneOf, additionalProperties: more } = schema
    const each = (list: Written[]) => list.map(refer)
    return {
      ...schema,
      ...(properties
        ? {
            properties: Object.fromEntries(
              Object.entries(properties).map(([key, property]) => [key, refer(property)]),
            ),
          }
        : {}),
      ...(items ? { items: refer(items) } : {}),
      ...(prefixItems ? { prefixItems: each(prefixItems) } : {}),
      ...(anyOf ? { anyOf: each(anyOf) } : {}),
      ...(oneOf ? { oneOf: each(oneOf) } : {}),
      ...(typeof more === 'object' ? { additionalProperties: refer(more) } : {}),
    }
  }
  const refer = (schema: Written): Written => {
    const { description, ...rest } = schema
    const key = bare(schema)
    if (key.length < WORTH_SHARING || (counts.get(key) ?? 0) < 2) return inside(schema)
    const name = names.get(key) ?? `part-${names.size + 1}`
    if (!names.has(key)) {
      names.set(key, name)
      definitions[name] = {}
      definitions[name] = inside(rest)
    }
    return { ...(description === undefined ? {} : { description }), $ref: `#/$defs/${name}` }
  }
  const whole = inside(root)
  return names.size > 0 ? { ...whole, $defs: definitions } : whole
}

/**
 * The JSON Schema of a kind of file, as a person writes it: quantities are texts with a pattern.
 *
 * It says less than reading does: no name is looked up, no range is checked.
 */
export function jsonSchemaOf(
  name: SchemaName,
  textOf: FieldText,
): Readonly<Record<string, unknown>> {
  const schema = written(name)
  const title = textOf(name)
  walk(schema, name, (at, field) => {
    const description = textOf(field)
    if (description !== undefined) at.description = description
  })
  const { $schema, ...rest } = shared(schema)
  return {
    $schema,
    title: `${name}/1`,
    ...(title === undefined ? {} : { description: title }),
    ...rest,
  }
}
