import type { Diagnostic, Finding, OpenQuestion, Requirement, Shortfall } from '@tubwright/core'
import { invariant } from '@tubwright/core'
import { MATCH_EN } from './match.en.ts'
import type { Params } from './say.ts'
import { say } from './say.ts'
import { DIAGNOSTIC_EN, DID_YOU_MEAN_EN } from './terms.en.ts'
import { NOTHING_ON_EN, PROVIDED_EN, VERIFY_EN, WHEN_ON_EN } from './verify.en.ts'

function sentence(
  table: Readonly<Record<string, string>>,
  message: string,
  params: Params,
): string {
  const template = table[message]
  invariant(template !== undefined, `no sentence for ${message}`)
  return say(template, params)
}

/**
 * One finding in English, with what was on where it is worst.
 *
 * @param nameOf - what a person calls a command of the box
 */
export function tellFinding(
  { message, params, verdict, on }: Finding,
  nameOf: (command: string) => string = command => command,
): string {
  const plain = sentence(VERIFY_EN, message, params)
  const when = on
    ? say(on.length > 0 ? WHEN_ON_EN : NOTHING_ON_EN, {
        sentence: plain,
        on: on.map(nameOf).join(', '),
      })
    : plain
  return verdict === 'provided' && params['assumed'] !== undefined
    ? say(PROVIDED_EN, { sentence: when, assumed: params['assumed'] })
    : when
}

/** Why a box cannot serve, what is open, or what a tub asks, in English. */
export const tellMatch = ({ message, params }: Shortfall | OpenQuestion | Requirement): string =>
  sentence(MATCH_EN, message, params)

/** A diagnostic in English: what is, what may be, and what was perhaps meant. */
export function tellDiagnostic({ code, path, is, may, didYouMean }: Diagnostic): string {
  const where = path.length > 0 ? path.join('.') : 'it'
  const told = say(DIAGNOSTIC_EN[code], { path: where, is, may })
  return didYouMean === undefined ? told : `${told} ${say(DID_YOU_MEAN_EN, { near: didYouMean })}`
}
