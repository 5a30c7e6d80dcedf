/** What can be said of a requirement. */
export type Verdict = 'holds' | 'breaks' | 'provided' | 'not-shown' | 'experts-differ'

/** Signal words as in ANSI Z535: danger, warning, caution, notice. @source [ANSI-Z535.6] (from memory) */
export type Severity = 'danger' | 'warning' | 'caution' | 'notice'

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
}

const RANK: Readonly<Record<Severity, number>> = { danger: 0, warning: 1, caution: 2, notice: 3 }

/** Danger first. */
export const bySeverity = (a: Finding, b: Finding): number => RANK[a.severity] - RANK[b.severity]
