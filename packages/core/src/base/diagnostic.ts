/** Something malformed or unlikely in a text or a record: data, never a sentence. */
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
    | 'other-job'
    | 'implausible'
  /** Where in the value, from the top. */
  readonly path: readonly (string | number)[]
  readonly is: string
  readonly may: string
  readonly didYouMean?: string
  /** Absent: an error. A warning never blocks: what it stands on is taken as it is written. */
  readonly severity?: 'warning'
}

/** Whether no value can be had for it. */
export const blocks = ({ severity }: Diagnostic): boolean => severity !== 'warning'
