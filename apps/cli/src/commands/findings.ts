import type { Finding, Verification } from '@tubwright/core'
import { SEVERITY_EN, tellFinding } from '@tubwright/words'
import { EXIT } from '../exits.ts'
import type { Talk } from '../talk.ts'

const paintOf = (finding: Finding, talk: Talk): ((text: string) => string) => {
  switch (finding.severity) {
    case 'danger':
      return talk.red
    case 'warning':
    case 'caution':
      return talk.yellow
    case 'notice':
      return talk.dim
  }
}

/** Findings, danger first, each with its rule; what two of them say alike is said once. */
export function showFindings(findings: readonly Finding[], talk: Talk): void {
  if (findings.length === 0) talk.data('None.')
  const lines = findings.map(finding => {
    const word = paintOf(finding, talk)(SEVERITY_EN[finding.severity].padEnd(8))
    return `${word} ${tellFinding(finding)} ${talk.dim(`[${finding.rule}]`)}`
  })
  for (const line of new Set(lines)) talk.data(line)
}

/** 1 where a landing breaks something, or holds only with a danger or warning to heed. */
export const exitFor = ({ holds, findings }: Verification): number =>
  holds && !findings.some(each => each.severity === 'danger' || each.severity === 'warning')
    ? EXIT.fine
    : EXIT.found

/** What was solved, so that a reader can weigh it. */
export const proofLine = ({ proof }: Verification): string =>
  `${proof.modes} modes and ${proof.transitions} transitions, ${proof.solves} circuits solved; ` +
  `current law to ${proof.worstKcl.toExponential(0)}, power balance to ${proof.worstPower.toExponential(0)}`
