import { AREAS, DIMENSIONS, GAUGES, writtenAs } from '@tubwright/core'
import type { MarkPlace, SchemaName } from '@tubwright/formats'
import {
  fieldNameAt,
  keySchemaOf,
  keysOf,
  optionKeys,
  placeOfMark,
  rawSchemaAt,
  schemaAt,
  schemaOf,
  wordsOf,
} from '@tubwright/formats'
import type * as z from 'zod'
import { NAMED_IN, NAMED_KEYS, namesIn, ownNames } from './names-in.ts'

/** One thing that may stand at the cursor. */
export interface Offer {
  readonly text: string
  readonly of: 'key' | 'word' | 'name'
  /** The field that a key is of, by its name. */
  readonly field?: string
}

/** Everything that may stand at the cursor, in place of what stands from `from` to the cursor. */
interface Completion {
  readonly from: number
  readonly offers: readonly Offer[]
}

type Path = MarkPlace['path']

const MARK = 'Q0mark0Q' // no word of a description holds it, and it is a name and a word alike
const BEFORE = /[\w+-]*$/u
const AFTER = /^[\w+-]*/u
const COMMENT = /(?:^|\s)#/u
const NOTHING_ELSE = /^(?:[ \t]*(?:\n|$)|[ \t]+#)/u
const ALONE = /^[ \t-]*[\w+-]*$/u

interface Place extends MarkPlace {
  readonly name: SchemaName
  readonly field: string
}

const kindOf = (document: unknown): SchemaName => {
  const said = (document as { readonly schema?: unknown } | null)?.schema
  return said === 'supply-device/1' ? 'supply-device' : 'control-box'
}

/** Where in a description an offset is: its text with a mark there, read as far as it goes. */
function placeAt(text: string, offset: number): Place | undefined {
  const lineStart = text.lastIndexOf('\n', offset - 1) + 1
  if (COMMENT.test(text.slice(lineStart, offset))) return undefined
  const [before = ''] = BEFORE.exec(text.slice(lineStart, offset)) ?? []
  const [after = ''] = AFTER.exec(text.slice(offset)) ?? []
  const marked = `${text.slice(0, offset - before.length)}${MARK}`
  const rest = text.slice(offset + after.length)
  // Alone on its line it is a key in the making: without its colon the next line would join it.
  const isAlone = ALONE.test(text.slice(lineStart, offset)) && NOTHING_ELSE.test(rest)
  const place = placeOfMark(`${marked}${isAlone ? ':' : ''}${rest}`, MARK)
  if (!place) return undefined
  const name = kindOf(place.document)
  return { ...place, name, field: fieldNameAt(name, place.document, place.path) }
}

const isObject = (schema: z.ZodType | undefined): boolean =>
  schema !== undefined && (keysOf(schema).length > 0 || optionKeys(schema).length > 0)

/** Keys of the thing around, those it has already left out. */
function keyOffers({ name, document, path, field }: Place): readonly Offer[] {
  const around = schemaAt(schemaOf(name), path, document)
  const own = path.reduce<unknown>((at, key) => (at as Record<string, unknown>)?.[key], document)
  const has = typeof own === 'object' && own !== null ? Object.keys(own) : []
  const names = NAMED_KEYS[field]
  const keys = [
    ...keysOf(around),
    ...(keysOf(around).length === 0 ? optionKeys(around).flat() : []),
    ...(names ? namesIn(document, names) : []),
  ]
  return [...new Set(keys)]
    .filter(key => !has.includes(key))
    .map(key => {
      const isName = keySchemaOf(around) !== undefined
      return {
        text: key,
        of: 'key',
        ...(isName ? {} : { field: nameOf(name, document, path, key) }),
      }
    })
}

const nameOf = (name: SchemaName, document: unknown, path: Path, key: string): string =>
  fieldNameAt(name, document, [...path, key])

const isBoolean = (schema: z.ZodType | undefined): boolean =>
  (schema?.def as { readonly type?: string } | undefined)?.type === 'boolean'

/** The words that a schema allows at a value: those of a choice, the tags of a union, yes and no. */
function wordsAt({ name, document, path }: Place): readonly string[] {
  const schema = schemaOf(name)
  const plain = schemaAt(schema, path, document)
  if (plain) return isBoolean(plain) ? ['true', 'false'] : wordsOf(plain)
  return wordsOf(schemaAt(schema, path.slice(0, -1), document), String(path.at(-1)))
}

/** An amount whose figure was typed, in each of its units; a conductor's size. */
function amountsAt({ name, document, path }: Place, typed: string): readonly string[] {
  const raw = rawSchemaAt(schemaOf(name), path, document)
  const form = raw && (writtenAs.get(raw) ?? writtenAs.get((raw.def as Wrapping).innerType ?? raw))
  if (form?.kind === 'size') return [...GAUGES, ...AREAS]
  if (form?.kind === 'known-choice') return form.options
  const [figure] = /^[\d.]+/u.exec(typed) ?? []
  if (!form || figure === undefined) return []
  return Object.keys(DIMENSIONS[form.unit].spellings).map(unit => `${figure} ${unit}`)
}

interface Wrapping {
  readonly innerType?: z.ZodType
}

const takesKeys = ({ name, document, path }: Place): boolean => {
  const around = schemaAt(schemaOf(name), path, document)
  return isObject(around) || keySchemaOf(around) !== undefined
}

const KINDS = ['control-box/1', 'supply-device/1']

function valueOffers(place: Place, typed: string): readonly Offer[] {
  const { document, path, field, name } = place
  if (path.length === 1 && path[0] === 'schema') return KINDS.map(text => ({ text, of: 'word' }))
  const plain = schemaAt(schemaOf(name), path, document)
  if (isObject(plain)) return keyOffers(place)
  const named = NAMED_IN[field]
  const own = ownNames(document, field, path)
  const names = own.length > 0 ? own : named ? namesIn(document, named) : []
  const words = [...wordsAt(place), ...amountsAt(place, typed)]
  return [
    ...words.map((text): Offer => ({ text, of: 'word' })),
    ...names.filter(each => !each.includes(MARK)).map((text): Offer => ({ text, of: 'name' })),
  ]
}

/**
 * What may stand at an offset of a description: keys of what is around, words of a choice, units of an
 * amount, and names that the text already has.
 */
export function completeAt(text: string, offset: number): Completion | undefined {
  const place = placeAt(text, offset)
  if (!place) return undefined
  const from = place.from + (/["']/u.test(text.charAt(place.from)) ? 1 : 0)
  if (from > offset) return undefined
  const typed = text.slice(from, offset)
  const isKey = place.at === 'key' && takesKeys(place)
  return { from, offers: isKey ? keyOffers(place) : valueOffers(place, typed) }
}

/** The field that an offset is in, by its name; undefined in a comment and between things. */
export function fieldUnder(text: string, offset: number): string | undefined {
  const place = placeAt(text, offset)
  if (!place) return undefined
  if (place.at === 'value') return place.field
  const [before = ''] = BEFORE.exec(text.slice(0, offset)) ?? []
  const [after = ''] = AFTER.exec(text.slice(offset)) ?? []
  return nameOf(place.name, place.document, place.path, `${before}${after}`)
}
