import type {
  Diagnostic,
  DrawBound,
  Finding,
  LintFinding,
  OpenQuestion,
  Requirement,
  Shortfall,
} from '@tubwright/core'
import { invariant } from '@tubwright/core'
import { LINT_EN } from './lint.en.ts'
import { MATCH_EN } from './match.en.ts'
import type { Params } from './say.ts'
import { say } from './say.ts'
import { DIAGNOSTIC_EN, DID_YOU_MEAN_EN, WARNING_EN } from './terms.en.ts'
import {
  AT_LEAST_EN,
  AT_MOST_EN,
  NOTHING_ON_EN,
  PROVIDED_EN,
  VERIFY_EN,
  WHEN_ON_EN,
} from './verify.en.ts'

function sentence(
  table: Readonly<Record<string, string>>,
  message: string,
  params: Params,
): string {
  const template = table[message]
  invariant(template !== undefined, `no sentence for ${message}`)
  return say(template, params)
}

/** Each bound once: two circuits of one load often share it. */
function boundsText(bounds: readonly DrawBound[]): string {
  const told = bounds.flatMap(({ label, atMost, atLeast }) => [
    ...(atMost === undefined ? [] : [say(AT_MOST_EN, { label, amps: atMost })]),
    ...(atLeast === undefined ? [] : [say(AT_LEAST_EN, { label, amps: atLeast })]),
  ])
  return [...new Set(told)].join(', ')
}

/**
 * One finding in English, with what was on where it is worst.
 *
 * @param nameOf - what a person calls a command of the box
 */
export function tellFinding(
  { message, params, on, provided }: Finding,
  nameOf: (command: string) => string = command => command,
): string {
  const plain = sentence(VERIFY_EN, message, params)
  const when = on
    ? say(on.length > 0 ? WHEN_ON_EN : NOTHING_ON_EN, {
        sentence: plain,
        on: on.map(nameOf).join(', '),
      })
    : plain
  return provided && provided.length > 0
    ? say(PROVIDED_EN, { sentence: when, assumed: boundsText(provided) })
    : when
}

/** Why a box cannot serve, what is open, or what a tub asks, in English. */
export const tellMatch = ({ message, params }: Shortfall | OpenQuestion | Requirement): string =>
  sentence(MATCH_EN, message, params)

/** What lint found, in English. */
export const tellLint = ({ id, params }: LintFinding): string => say(LINT_EN[id], params)

/** A diagnostic in English: what is, what may be, what was perhaps meant; a warning says it is one. */
export function tellDiagnostic({ code, path, is, may, didYouMean, severity }: Diagnostic): string {
  const where = path.length > 0 ? path.join('.') : 'it'
  const plain = say(DIAGNOSTIC_EN[code], { path: where, is, may })
  const near = didYouMean === undefined ? '' : ` ${say(DID_YOU_MEAN_EN, { near: didYouMean })}`
  const told = `${plain}${near}`
  return severity === 'warning' ? say(WARNING_EN, { told }) : told
}
