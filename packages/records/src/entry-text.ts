import { canonical } from './canonical.ts'
import type { Entry } from './entry.ts'
import type { Json } from './json.ts'

/** An entry as JSON: it came from there, or was made of nothing else. */
export const jsonOf = (entry: Entry): Json => entry as unknown as Json

/** The one text of an entry, every further field in it. */
export const textOf = (entry: Entry): string => canonical(jsonOf(entry))
