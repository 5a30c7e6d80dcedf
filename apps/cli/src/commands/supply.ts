import type { CircuitReport, CodeFinding, SupplyReport, Survey } from '@tubwright/core'
import { checkSupply, surveyedCondition } from '@tubwright/core'
import { electricianPage, wayText } from '@tubwright/documents'
import { wireSupply } from '@tubwright/formats'
import { ENGLISH, figure, say } from '@tubwright/words'
import type { Shelf } from '../catalogue.ts'
import { findSurvey, writeOutput } from '../catalogue.ts'
import { EXIT } from '../exits.ts'
import type { Talk } from '../talk.ts'
import { showWire } from '../wire.ts'

export interface SupplyOptions {
  readonly json?: boolean
  readonly page?: string
}

const { supplyPage, verdicts, severities } = ENGLISH

const between = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? `${figure(from)} A` : `${figure(from)} to ${figure(to)} A`

/** What breaks is red, what is open yellow. */
function coloured({ verdict }: CodeFinding, text: string, talk: Talk): string {
  if (verdict === 'breaks') return talk.red(text)
  return verdict === 'holds' ? talk.green(text) : talk.yellow(text)
}

type NameOf = (id: string) => string

function showFinding(finding: CodeFinding, nameOf: NameOf, talk: Talk): void {
  const { verdict, severity, clause } = finding
  const head =
    verdict === 'holds' ? verdicts[verdict] : `${severities[severity]}: ${verdicts[verdict]}`
  const printed = clause ? ` [${ENGLISH.tellClause(clause)}]` : ''
  talk.data(`    ${coloured(finding, head, talk)}. ${ENGLISH.tellCode(finding, nameOf)}${printed}`)
}

function showCircuit(circuit: CircuitReport, nameOf: NameOf, talk: Talk): void {
  const { breaker, demand } = circuit
  const parts = [
    say(supplyPage.circuit, { index: circuit.index + 1 }),
    breaker ? say(supplyPage.breaker, { amps: between(breaker) }) : supplyPage['breaker-unknown'],
    demand.isKnown
      ? say(supplyPage.takes, { amps: between(demand.everything) })
      : supplyPage['takes-unknown'],
  ]
  talk.data(`\n${talk.bold(parts.join(', '))}`)
  for (const finding of circuit.findings) showFinding(finding, nameOf, talk)
  for (const { label, metres, carries, findings } of circuit.segments) {
    const amps = carries
      ? say(supplyPage.carries, { amps: between(carries) })
      : supplyPage['carries-unknown']
    talk.data(`  ${label}, ${figure(metres)} m: ${amps}`)
    for (const finding of findings) showFinding(finding, nameOf, talk)
  }
  talk.data(`  ${supplyPage.ways}:`)
  for (const way of circuit.ways) talk.data(`    ${wayText(way, ENGLISH)}`)
}

const outcomeOf = ({ findings }: SupplyReport): 'breaks' | 'open' | 'holds' => {
  if (findings.some(each => each.verdict === 'breaks')) return 'breaks'
  return findings.some(each => each.verdict !== 'holds') ? 'open' : 'holds'
}

/** What the readings of the survey say, where it has any. */
function showCondition(shelf: Shelf, survey: Survey, nameOf: NameOf, talk: Talk): void {
  const found = surveyedCondition(survey, shelf.devices)
  if (!found) return
  talk.data(`\n${talk.bold(ENGLISH.conditionPage.title)}`)
  if (!found.ok) {
    talk.data(`  ${found.failure.reason}`)
    return
  }
  for (const line of ENGLISH.tellCondition(found.value, nameOf)) talk.data(`  ${line}`)
}

/** Judges what feeds a tub, by the code book of its region; no box is needed. */
export function runSupply(shelf: Shelf, name: string, options: SupplyOptions, talk: Talk): number {
  const survey = findSurvey(shelf, name)
  const report = checkSupply(survey, shelf.devices)
  const outcome = outcomeOf(report)
  if (options.page !== undefined) {
    writeOutput(shelf, options.page, electricianPage(report, survey, ENGLISH), [name])
    talk.note(`page written to ${options.page}`)
  }
  if (options.json) {
    showWire(wireSupply(report), shelf, talk)
    return outcome === 'holds' ? EXIT.fine : EXIT.found
  }
  const title = say(supplyPage.title, { tub: survey.title })
  talk.data(`${title}: ${supplyPage[outcome]}`)
  talk.data(report.book ? say(supplyPage.book, { book: report.book.name }) : supplyPage['no-book'])
  const nameOf = (id: string): string => report.names[id] ?? id
  for (const circuit of report.circuits) showCircuit(circuit, nameOf, talk)
  for (const finding of [...report.yard, ...report.service]) showFinding(finding, nameOf, talk)
  showCondition(shelf, survey, nameOf, talk)
  talk.data('')
  if (report.asks.length === 0) talk.data(supplyPage['nothing-to-ask'])
  else talk.data(`${supplyPage.ask}:`)
  for (const at of report.asks) talk.data(`  ${ENGLISH.tellAsk(at, nameOf)}`)
  return outcome === 'holds' ? EXIT.fine : EXIT.found
}
