/**
 * A small reader of JSON Schema, written from the specification's text and sharing nothing with what
 * makes the schemas. A keyword that it does not know is refused rather than passed over.
 */
type Schema = Readonly<Record<string, unknown>> | boolean
type Value = unknown

interface Step {
  readonly root: Readonly<Record<string, unknown>>
  readonly path: string
}

const SAYS_NOTHING = ['$schema', '$defs', 'title', 'description', 'examples', 'default']

const isObject = (value: Value): value is Record<string, Value> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const IS_TYPE: Readonly<Record<string, (value: Value) => boolean>> = {
  string: value => typeof value === 'string',
  number: value => typeof value === 'number',
  integer: value => Number.isInteger(value),
  boolean: value => typeof value === 'boolean',
  array: value => Array.isArray(value),
  object: isObject,
}

const schemas = (value: unknown): readonly Schema[] => value as readonly Schema[]

type Keyword = (value: Value, by: unknown, schema: Record<string, unknown>, step: Step) => string[]

const fault = (isRight: boolean, { path }: Step, what: string): string[] =>
  isRight ? [] : [`${path}: ${what}`]

const KEYWORDS: Readonly<Record<string, Keyword>> = {
  $ref: (value, by, _, step) => {
    const name = String(by).replace('#/$defs/', '')
    const definitions = step.root['$defs'] as Readonly<Record<string, Schema>> | undefined
    const found = definitions?.[name]
    return found === undefined ? [`${step.path}: no ${String(by)}`] : check(value, found, step)
  },
  type: (value, by, _, step) => fault(IS_TYPE[String(by)]?.(value) === true, step, `no ${by}`),
  const: (value, by, _, step) => fault(value === by, step, `not ${by}`),
  enum: (value, by, _, step) => fault((by as Value[]).includes(value), step, 'not one of some'),
  pattern: (value, by, _, step) =>
    fault(typeof value !== 'string' || new RegExp(String(by), 'u').test(value), step, `not ${by}`),
  minLength: (value, by, _, step) =>
    fault(typeof value !== 'string' || [...value].length >= Number(by), step, 'too short'),
  maxLength: (value, by, _, step) =>
    fault(typeof value !== 'string' || [...value].length <= Number(by), step, 'too long'),
  minimum: (value, by, _, step) =>
    fault(typeof value !== 'number' || value >= Number(by), step, 'too small'),
  maximum: (value, by, _, step) =>
    fault(typeof value !== 'number' || value <= Number(by), step, 'too great'),
  minItems: (value, by, _, step) =>
    fault(!Array.isArray(value) || value.length >= Number(by), step, 'too few'),
  maxItems: (value, by, _, step) =>
    fault(!Array.isArray(value) || value.length <= Number(by), step, 'too many'),
  required: (value, by, _, step) =>
    isObject(value)
      ? (by as string[]).flatMap(key => fault(Object.hasOwn(value, key), step, `lacks ${key}`))
      : [],
  properties: (value, by, _, step) =>
    isObject(value)
      ? Object.entries(by as Record<string, Schema>).flatMap(([key, schema]) =>
          Object.hasOwn(value, key)
            ? check(value[key], schema, { ...step, path: `${step.path}.${key}` })
            : [],
        )
      : [],
  additionalProperties: (value, by, schema, step) => {
    const named = Object.keys((schema['properties'] ?? {}) as object)
    return isObject(value)
      ? Object.keys(value)
          .filter(key => !named.includes(key))
          .flatMap(key => check(value[key], by as Schema, { ...step, path: `${step.path}.${key}` }))
      : []
  },
  propertyNames: (value, by, _, step) =>
    isObject(value) ? Object.keys(value).flatMap(key => check(key, by as Schema, step)) : [],
  prefixItems: (value, by, _, step) =>
    Array.isArray(value)
      ? schemas(by).flatMap((each, index) =>
          index < value.length
            ? check(value[index], each, { ...step, path: `${step.path}.${index}` })
            : [],
        )
      : [],
  items: (value, by, schema, step) =>
    Array.isArray(value)
      ? value
          .slice(((schema['prefixItems'] as unknown[] | undefined) ?? []).length)
          .flatMap((each, index) =>
            check(each, by as Schema, { ...step, path: `${step.path}.${index}` }),
          )
      : [],
  anyOf: (value, by, _, step) => {
    const tried = schemas(by).map(each => check(value, each, step))
    return tried.some(each => each.length === 0) ? [] : tried.flat()
  },
  oneOf: (value, by, _, step) => {
    const tried = schemas(by).map(each => check(value, each, step))
    const fits = tried.filter(each => each.length === 0).length
    return fits === 1 ? [] : [`${step.path}: fits ${fits} of them`, ...tried.flat()]
  },
}

function check(value: Value, schema: Schema, step: Step): string[] {
  if (typeof schema === 'boolean') return fault(schema, step, 'may not be here')
  return Object.entries(schema).flatMap(([keyword, by]) => {
    if (SAYS_NOTHING.includes(keyword)) return []
    const reads = KEYWORDS[keyword]
    if (!reads) throw new Error(`a keyword that this does not know: ${keyword}`)
    return reads(value, by, schema as Record<string, unknown>, step)
  })
}

/** What is wrong with a value by a schema; nothing when it fits. */
export const faultsOf = (value: Value, schema: Readonly<Record<string, unknown>>): string[] =>
  check(value, schema, { root: schema, path: '' })
