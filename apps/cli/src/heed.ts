import type { LocatedDiagnostic } from '@tubwright/formats'
import { tellDiagnostic } from '@tubwright/words'
import type { Talk } from './talk.ts'

/** What was read and looks unlikely: told at once, each once, and kept for the wire form. */
export interface Heed {
  readonly warnings: readonly LocatedDiagnostic[]
  readonly take: (found: readonly LocatedDiagnostic[]) => void
}

/** A diagnostic with its place, as one line. */
export const tellLocated = (each: LocatedDiagnostic): string =>
  `${each.file}:${each.line}:${each.column}: ${tellDiagnostic(each)}`

export function heedTo(talk: Talk): Heed {
  const warnings: LocatedDiagnostic[] = []
  const told = new Set<string>()
  return {
    warnings,
    take: found => {
      for (const each of found) {
        // A file may be read twice in one command: a landing once for its box, once for its job.
        const line = tellLocated(each)
        if (told.has(line)) continue
        told.add(line)
        warnings.push(each)
        talk.note(line)
      }
    },
  }
}
