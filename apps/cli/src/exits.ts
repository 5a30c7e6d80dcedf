import type { LocatedDiagnostic } from '@tubwright/formats'

/** What the program ends with. */
export const EXIT = { fine: 0, found: 1, badInput: 2, ourFault: 3 } as const

/** Bad input: the person can mend it. Everything that is wrong, each with its place. */
export class BadInput extends Error {
  readonly diagnostics: readonly LocatedDiagnostic[]
  constructor(message: string, diagnostics: readonly LocatedDiagnostic[] = []) {
    super(message)
    this.name = 'BadInput'
    this.diagnostics = diagnostics
  }
}
