import type * as z from 'zod'
import { board } from '../../src/domain/board/board.ts'
import { controlBox } from '../../src/domain/box/control-box.ts'
import { load } from '../../src/domain/load/load.ts'
import { supply, supplyDevice } from '../../src/domain/supply/supply.ts'
import { survey } from '../../src/stages/survey/artifact.ts'

/** What can be described has one row: a key that may be written, or a word that may stand there. */
export interface Row {
  /** `supply.system = split-phase`, `box.feeds.assumesOn`. */
  readonly name: string
  /** What a test has to say: the last key, or the word. */
  readonly word: string
}

interface Definition {
  readonly type: string
  readonly shape?: Readonly<Record<string, z.ZodType>>
  readonly element?: z.ZodType
  readonly keyType?: z.ZodType
  readonly valueType?: z.ZodType
  readonly innerType?: z.ZodType
  readonly in?: z.ZodType
  readonly options?: readonly z.ZodType[]
  readonly entries?: Readonly<Record<string, string>>
  readonly values?: readonly unknown[]
  readonly defaultValue?: unknown
}

const definitionOf = (schema: z.ZodType): Definition => schema.def as unknown as Definition

/** Parts of a file that stand in several kinds of file are told once, under a name of their own. */
const NAMED: ReadonlyMap<z.ZodType, string> = new Map<z.ZodType, string>([
  [board, 'board'],
  [load, 'load'],
  [supply, 'supply'],
])

/** The files of the catalogue by folder: the schema of each, and the name of its rows. */
export const FILES = {
  tubs: { schema: survey, name: 'tub' },
  boxes: { schema: controlBox, name: 'box' },
  devices: { schema: supplyDevice, name: 'device' },
} as const satisfies Readonly<Record<string, { schema: z.ZodType; name: string }>>

/** Looks through optional, default and transform to what a person writes. */
function written(schema: z.ZodType): z.ZodType {
  const { innerType, in: input } = definitionOf(schema)
  const inside = innerType ?? input
  return inside ? written(inside) : schema
}

/** The name that a schema has of its own, at whatever depth of optional and transform. */
function ownName(schema: z.ZodType): string | undefined {
  const { innerType, in: input } = definitionOf(schema)
  const inside = innerType ?? input
  return NAMED.get(schema) ?? (inside && ownName(inside))
}

const shapeOf = (schema: z.ZodType) => definitionOf(written(schema)).shape

/** A surveyed value: each way of not knowing it is told once, not once a quantity. */
const isKnown = (options: readonly z.ZodType[]): boolean =>
  options.some(each => shapeOf(each)?.['unknown'] !== undefined)

const optionsOf = ({ options = [] }: Definition): readonly z.ZodType[] => options

/** Words that may stand here; the one that is meant where nothing stands needs no file that says it. */
function wordsOf(schema: z.ZodType): readonly string[] {
  const { entries } = definitionOf(written(schema))
  const { defaultValue } = definitionOf(schema)
  return Object.values(entries ?? {}).filter(each => each !== defaultValue)
}

/** Colours are told once, wherever they stand. */
const pathOf = (schema: z.ZodType, at: string): string =>
  ownName(schema) ?? (/\.(?:colour|taped)$/u.test(at) ? 'colour' : at)

/**
 * The ways of not knowing a value are told once; the words of a choice are told of the choice, and need
 * not stand again among those of which it is one.
 */
const insideOf = (options: readonly z.ZodType[], option: z.ZodType, path: string): string =>
  isKnown(options) && wordsOf(option).length === 0 ? 'known' : path

type Told = (row: Row) => void

const tell = (told: Told, path: string, word?: string): void =>
  told(
    word === undefined
      ? { name: path, word: path.slice(path.lastIndexOf('.') + 1) }
      : { name: `${path} = ${word}`, word },
  )

/** Tells every row that a schema makes possible. */
function walk(schema: z.ZodType, at: string, told: Told): void {
  const path = pathOf(schema, at)
  const here = definitionOf(written(schema))
  const { shape, element, keyType, valueType } = here
  if (path !== 'known.oneOf') for (const word of wordsOf(schema)) tell(told, path, word)
  for (const [key, inside] of Object.entries(shape ?? {})) {
    tell(told, `${path}.${key}`)
    walk(inside, `${path}.${key}`, told)
  }
  if (element) walk(element, path, told)
  if (keyType) walk(keyType, path, told)
  if (valueType) walk(valueType, path, told)
  const options = optionsOf(here)
  for (const option of options) {
    const inside = insideOf(options, option, path)
    for (const value of definitionOf(shapeOf(option)?.['kind'] ?? option).values ?? [])
      tell(told, `${inside}.kind`, String(value))
    walk(option, inside, told)
  }
}

/** Tells every row that a value, as it is written, exercises. */
function visit(schema: z.ZodType, at: string, value: unknown, told: Told): void {
  const path = pathOf(schema, at)
  const here = definitionOf(written(schema))
  const { shape, element, keyType, valueType } = here
  if (typeof value === 'string' && path !== 'known.oneOf' && wordsOf(schema).includes(value))
    tell(told, path, value)
  if (element && Array.isArray(value)) for (const each of value) visit(element, path, each, told)
  for (const option of optionsOf(here))
    if (typeof value === 'string' && wordsOf(option).includes(value)) tell(told, path, value)
  if (typeof value !== 'object' || value === null) return
  for (const [key, each] of Object.entries(value)) {
    const inside = shape?.[key]
    if (inside) {
      tell(told, `${path}.${key}`)
      visit(inside, `${path}.${key}`, each, told)
    }
    if (keyType) visit(keyType, path, key, told)
    if (valueType) visit(valueType, path, each, told)
  }
  const options = optionsOf(here)
  const option = options.find(each => each.safeParse(value).success)
  if (!option) return
  const inside = insideOf(options, option, path)
  const kind = (value as { readonly kind?: unknown }).kind
  if (typeof kind === 'string') tell(told, `${inside}.kind`, kind)
  visit(option, inside, value, told)
}

/** Every row, in the order of the schemas. */
export function describable(): readonly Row[] {
  const rows = new Map<string, Row>()
  for (const { schema, name } of Object.values(FILES))
    walk(schema, name, row => rows.set(row.name, row))
  return [...rows.values()]
}

/** The names of the rows that a file of the catalogue exercises. */
export function exercisedBy(
  { schema, name }: (typeof FILES)[keyof typeof FILES],
  value: unknown,
): ReadonlySet<string> {
  const names = new Set<string>()
  visit(schema, name, value, row => names.add(row.name))
  return names
}
