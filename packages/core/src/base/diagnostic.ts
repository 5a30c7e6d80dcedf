/** Something malformed in a text or a record: data, never a sentence. */
export interface Diagnostic {
  readonly code:
    | 'not-readable'
    | 'too-large'
    | 'yaml-syntax'
    | 'too-many-aliases'
    | 'unknown-key'
    | 'missing-key'
    | 'wrong-type'
    | 'wrong-value'
    | 'wrong-quantity'
    | 'unknown-name'
    | 'duplicate-name'
    | 'contradiction'
  /** Where in the value, from the top. */
  readonly path: readonly (string | number)[]
  readonly is: string
  readonly may: string
  readonly didYouMean?: string
}
