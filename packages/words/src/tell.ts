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
import type { Params } from './say.ts'
import { say } from './say.ts'
import { speak } from './spoken.ts'
import type { Tables } from './words.ts'

function sentence(
  tables: Tables,
  table: 'verify' | 'match',
  message: string,
  params: Params,
): string {
  const templates: Readonly<Record<string, string>> = tables[table]
  const template = templates[message]
  invariant(template !== undefined, `no sentence for ${message}`)
  return speak(tables, template, message, params)
}

/** Each bound once: two circuits of one load often share it. */
function boundsText({ round }: Tables, bounds: readonly DrawBound[]): string {
  const told = bounds.flatMap(({ label, atMost, atLeast }) => [
    ...(atMost === undefined ? [] : [say(round['at-most'], { label, amps: atMost })]),
    ...(atLeast === undefined ? [] : [say(round['at-least'], { label, amps: atLeast })]),
  ])
  return [...new Set(told)].join(', ')
}

export function tellFinding(
  tables: Tables,
  { message, params, on, provided }: Finding,
  nameOf: (command: string) => string,
): string {
  const { round } = tables
  const plain = sentence(tables, 'verify', message, params)
  const when = on
    ? say(round[on.length > 0 ? 'when-on' : 'nothing-on'], {
        sentence: plain,
        on: on.map(nameOf).join(', '),
      })
    : plain
  return provided && provided.length > 0
    ? say(round.provided, { sentence: when, assumed: boundsText(tables, provided) })
    : when
}

export const tellMatch = (
  tables: Tables,
  { message, params }: Shortfall | OpenQuestion | Requirement,
): string => sentence(tables, 'match', message, params)

export const tellLint = (tables: Tables, { id, params }: LintFinding): string =>
  speak(tables, tables.lint[id], id, params)

export function tellDiagnostic(
  { diagnostics, diagnosed }: Tables,
  { code, path, is, may, didYouMean, severity }: Diagnostic,
): string {
  const where = path.length > 0 ? path.join('.') : diagnosed['whole-file']
  const plain = say(diagnostics[code], { path: where, is, may })
  const near =
    didYouMean === undefined ? '' : ` ${say(diagnosed['did-you-mean'], { near: didYouMean })}`
  const told = `${plain}${near}`
  return severity === 'warning' ? say(diagnosed.warning, { told }) : told
}
