import type { Act, Entry } from './entry.ts'
import type { By } from './field.ts'
import type { Json } from './json.ts'
import type { Path } from './path.ts'
import type { Reader } from './reader.ts'
import { actFor, READER } from './reader.ts'

/** One act on a path, as it is read now. */
export interface Word extends By {
  readonly did: Exclude<Act['do'], 'settle'>
  /** Of a set. */
  readonly value?: Json
}

const isSamePath = (a: Path, b: Path): boolean =>
  a.length === b.length && a.every((step, index) => step === b[index])

function wordOf(entry: Entry, path: Path, reader: Reader): readonly Word[] {
  const act = actFor(reader, entry)
  if (act === undefined || act.do === 'settle' || !isSamePath(act.path, path)) return []
  const by = { by: entry.author, at: entry.at, entry: entry.id }
  return act.do === 'set' ? [{ did: 'set', value: act.value, ...by }] : [{ did: act.do, ...by }]
}

/**
 * Everything ever said at a path, by whom and when: the audit trail.
 *
 * @param entries - of a log: in its order
 */
export const historyOf = (
  entries: readonly Entry[],
  path: Path,
  reader: Reader = READER,
): readonly Word[] => entries.flatMap(entry => wordOf(entry, path, reader))

/** The last word in that order; of concurrent ones it is one of several: `fieldAt` says so. */
export const newestOf = (
  entries: readonly Entry[],
  path: Path,
  reader: Reader = READER,
): Word | undefined => historyOf(entries, path, reader).at(-1)
