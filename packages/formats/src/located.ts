import type { Diagnostic } from '@tubwright/core'

/** A diagnostic at its place in a text. Lines and columns count from 1. */
export interface LocatedDiagnostic extends Diagnostic {
  readonly file: string
  readonly line: number
  readonly column: number
}

/** A reading always returns every diagnostic; the value is there unless one of them is an error. */
export interface Read<Value> {
  readonly value?: Value
  readonly diagnostics: readonly LocatedDiagnostic[]
}
