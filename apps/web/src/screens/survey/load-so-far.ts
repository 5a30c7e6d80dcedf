/** A lead as far as it was answered. */
export interface Lead {
  readonly id: string
  readonly function?: unknown
  readonly size?: unknown
  readonly colour?: unknown
}

interface DrawingCircuit {
  readonly id: string
  readonly amps?: unknown
  readonly power?: unknown
}

/** A load as the survey has it so far. */
export interface LoadSoFar {
  readonly id: string
  readonly kind?: unknown
  readonly label?: unknown
  readonly leads?: readonly Lead[]
  readonly circuits?: readonly DrawingCircuit[]
}
