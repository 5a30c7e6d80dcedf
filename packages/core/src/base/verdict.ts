/** What can be said of a requirement. */
export type Verdict = 'holds' | 'breaks' | 'provided' | 'not-shown' | 'experts-differ'

/** Signal words as in ANSI Z535: danger, warning, caution, notice. @source [ANSI-Z535.6] (from memory) */
export type Severity = 'danger' | 'warning' | 'caution' | 'notice'

/** What a draw has to keep to for a finding not to arise: a figure in amps at plate volts. */
export interface DrawBound {
  readonly load: string
  /** The circuit of the load that is measured. */
  readonly circuit: string
  readonly label: string
  /** Greatest draw for which the finding is shown not to arise [A]. */
  readonly atMost?: number
  /** Least draw for which the finding is shown not to arise [A]. */
  readonly atLeast?: number
}

/** An engineering judgement: data, whose sentence the words package makes. */
export interface Finding {
  readonly rule: string
  /** Which of the rule's sentences says it. */
  readonly message: string
  readonly verdict: Verdict
  readonly severity: Severity
  /** Ids of what it is about: loads, ends, terminals, parts, settings. */
  readonly subjects: readonly string[]
  readonly params: Readonly<Record<string, string | number>>
  /** The commands that were on where it is worst; absent when it holds whatever is on. */
  readonly on?: readonly string[]
  /** Draws that decide it, with their bounds; absent where no draw does. */
  readonly provided?: readonly DrawBound[]
}

const RANK: Readonly<Record<Severity, number>> = { danger: 0, warning: 1, caution: 2, notice: 3 }

/** Danger first. */
export const bySeverity = (a: Finding, b: Finding): number => RANK[a.severity] - RANK[b.severity]

/** Whether something holds only with this heeded: it warns, or is not shown outright. */
export const isToHeed = ({ severity, verdict }: Pick<Finding, 'severity' | 'verdict'>): boolean =>
  severity !== 'notice' || verdict === 'provided' || verdict === 'not-shown'
