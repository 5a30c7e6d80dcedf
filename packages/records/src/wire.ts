import { canonical } from './canonical.ts'
import type { Entry } from './entry.ts'
import type { Outcome } from './fault.ts'
import { fail, ok, told, within } from './fault.ts'
import type { Json } from './json.ts'
import { isObject } from './json.ts'
import { AROUND_ENTRY, ENTRY_DEPTH_MAX } from './limits.ts'
import { parseCanonical } from './parse-canonical.ts'
import { readParsed } from './read-entry.ts'
import type { Reader } from './reader.ts'
import { READER } from './reader.ts'

const WIRE = 'wire/1'

/** Entries as they leave: one canonical text. */
export const toWire = (entries: readonly Entry[]): string =>
  canonical({ schema: WIRE, entries: entries as unknown as readonly Json[] })

/** Reads every entry of a parsed list, or says which of them is wrong. */
export function readEntries(list: Json | undefined, reader: Reader): Outcome<readonly Entry[]> {
  if (!Array.isArray(list)) return fail({ path: [], is: told(list), may: 'a list of entries' })
  const entries: Entry[] = []
  for (const each of list) {
    const read = readParsed(each, reader.level)
    if (!read.ok) return fail(within([entries.length], read.failure))
    entries.push(read.value)
  }
  return ok(entries)
}

/** The same entries, all of them, or none and what is wrong. */
export function fromWire(text: unknown, reader: Reader = READER): Outcome<readonly Entry[]> {
  const read = parseCanonical(text, ENTRY_DEPTH_MAX + AROUND_ENTRY)
  if (!read.ok) return read
  const { value } = read
  if (!isObject(value)) return fail({ path: [], is: told(value), may: 'an object' })
  if (value['schema'] !== WIRE)
    return fail({ path: ['schema'], is: told(value['schema']), may: told(WIRE) })
  const extra = Object.keys(value).find(key => key !== 'schema' && key !== 'entries')
  if (extra !== undefined) return fail({ path: [extra], is: 'a key', may: 'schema, entries' })
  const entries = readEntries(value['entries'] as Json | undefined, reader)
  return entries.ok ? entries : fail(within(['entries'], entries.failure))
}
