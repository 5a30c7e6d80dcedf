import { digestOf } from './digest.ts'
import type { Entry, EntryId } from './entry.ts'
import { textOf } from './entry-text.ts'
import type { Outcome } from './fault.ts'
import { fail, told, within } from './fault.ts'
import { isObject } from './json.ts'
import { ENTRY_DEPTH_MAX } from './limits.ts'
import { parseCanonical } from './parse-canonical.ts'
import { readParsed } from './read-entry.ts'
import type { Reader } from './reader.ts'
import { READER } from './reader.ts'

/**
 * What a local database keeps of an entry. Its key is id and digest: two entries can have one id.
 * The text never changes, whatever version reads it.
 */
export interface StoredEntry {
  readonly id: EntryId
  /** Of the text. */
  readonly digest: string
  /** Canonical JSON. */
  readonly text: string
}

export function toStored(entry: Entry): StoredEntry {
  const text = textOf(entry)
  return { id: entry.id, digest: digestOf(text), text }
}

/** The same entry; refused where the text is not what was stored. */
export function fromStored(stored: unknown, reader: Reader = READER): Outcome<Entry> {
  if (!isObject(stored)) return fail({ path: [], is: told(stored), may: 'a stored entry' })
  const { id, digest, text } = stored
  const read = parseCanonical(text, ENTRY_DEPTH_MAX)
  if (!read.ok) return fail(within(['text'], read.failure))
  const own = digestOf(text as string)
  if (own !== digest) return fail({ path: ['digest'], is: told(digest), may: told(own) })
  const entry = readParsed(read.value, reader.level)
  if (!entry.ok) return fail(within(['text'], entry.failure))
  return entry.value.id === id ? entry : fail({ path: ['id'], is: told(id), may: entry.value.id })
}
