import type { CodeFinding } from '@tubwright/core'

/** What the findings come to, as a person heeds them. */
export interface Sorted {
  readonly breaks: readonly CodeFinding[]
  readonly differ: readonly CodeFinding[]
  readonly open: readonly CodeFinding[]
  readonly holds: readonly CodeFinding[]
}

export function sortFindings(findings: readonly CodeFinding[]): Sorted {
  const of = (...verdicts: readonly CodeFinding['verdict'][]) =>
    findings.filter(each => verdicts.includes(each.verdict))
  return {
    breaks: of('breaks'),
    differ: of('experts-differ'),
    open: of('not-shown', 'provided'),
    holds: of('holds'),
  }
}
