import type { CircuitReport, CodeFinding, FittedBox, SupplyReport, Survey } from '@tubwright/core'
import { checkSupply, supplyOutcome, surveyedCondition } from '@tubwright/core'
import { electricianPage, wayText } from '@tubwright/documents'
import { wireSupply } from '@tubwright/formats'
import { ENGLISH, figure, say } from '@tubwright/words'
import type { Shelf } from '../catalogue.ts'
import { boxNamedBy, findBox, findLanding, findSurvey, jobFor, writeOutput } from '../catalogue.ts'
import { EXIT } from '../exits.ts'
import type { Talk } from '../talk.ts'
import { showWire } from '../wire.ts'

export interface SupplyOptions {
  readonly box?: string
  readonly landing?: string
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

function showCircuit(
  circuit: CircuitReport,
  nameOf: NameOf,
  unit: 'ft' | 'ft-m' | 'm',
  talk: Talk,
): void {
  const { breaker, draws } = circuit
  const parts = [
    say(supplyPage.circuit, { index: circuit.index + 1 }),
    breaker ? say(supplyPage.breaker, { amps: between(breaker) }) : supplyPage['breaker-unknown'],
    draws ? say(supplyPage.takes, { amps: between(draws) }) : supplyPage['takes-unknown'],
  ]
  talk.data(`\n${talk.bold(parts.join(', '))}`)
  for (const finding of circuit.findings) showFinding(finding, nameOf, talk)
  for (const { label, metres, carries, findings } of circuit.segments) {
    const amps = carries
      ? say(supplyPage.carries, { amps: between(carries) })
      : supplyPage['carries-unknown']
    const long = say('{metres:length}', { metres, unit })
    talk.data(`  ${label}, ${long}: ${amps}`)
    for (const finding of findings) showFinding(finding, nameOf, talk)
  }
  talk.data(`  ${supplyPage.ways}:`)
  for (const way of circuit.ways) talk.data(`    ${wayText(way, ENGLISH)}`)
}

type Read = ReturnType<typeof surveyedCondition>

/** What the readings of the survey say, where it has any. */
function showCondition(found: Read, nameOf: NameOf, talk: Talk): void {
  if (!found) return
  const { conditionPage } = ENGLISH
  talk.data(`\n${talk.bold(conditionPage.title)}`)
  const lines = found.ok
    ? [
        ...ENGLISH.tellDangers(found.value).map(each => each.line),
        ...ENGLISH.tellCondition(found.value, nameOf),
      ]
    : [conditionPage.failed]
  for (const line of lines) talk.data(`  ${line}`)
}

/** The place and the house, or that nobody looked at them. */
function showPlace({ yard, service }: SupplyReport, nameOf: NameOf, talk: Talk): void {
  talk.data(`\n${talk.bold(supplyPage.place)}`)
  if (yard.length === 0) talk.data(`  ${supplyPage['place-not-told']}`)
  for (const finding of [...yard, ...service]) showFinding(finding, nameOf, talk)
}

/** The box that is to be fed, where one was named: by itself, or by its landing with what it is set to. */
function fittedBy(
  shelf: Shelf,
  survey: Survey,
  { box, landing }: SupplyOptions,
): FittedBox | undefined {
  if (landing === undefined) return box === undefined ? undefined : { box: findBox(shelf, box) }
  const own = box === undefined ? boxNamedBy(shelf, landing) : findBox(shelf, box)
  const { settings } = findLanding(shelf, jobFor(shelf, survey, own), landing)
  return { box: own, currentLimit: settings.currentLimit.si }
}

/** Judges what feeds a tub, by the code book of its region; no box is needed. */
export function runSupply(shelf: Shelf, name: string, options: SupplyOptions, talk: Talk): number {
  const survey = findSurvey(shelf, name)
  const report = checkSupply(survey, shelf.devices, fittedBy(shelf, survey, options))
  const condition = surveyedCondition(survey, shelf.devices)
  const outcome = supplyOutcome(report, condition)
  if (options.page !== undefined) {
    writeOutput(
      shelf,
      options.page,
      electricianPage(report, survey, ENGLISH, condition ? { condition } : {}),
      [name],
    )
    talk.note(`page written to ${options.page}`)
  }
  if (options.json) {
    showWire(wireSupply(report), shelf, talk)
    return outcome === 'holds' ? EXIT.fine : EXIT.found
  }
  const title = say(supplyPage.title, { tub: survey.title })
  talk.data(`${title}: ${supplyPage[outcome]}`)
  talk.data(report.book ? say(supplyPage.book, { book: report.book.name }) : supplyPage['no-book'])
  if (report.fitted) talk.data(ENGLISH.tellFitted(report.fitted))
  const unit = survey.region === 'US' ? 'ft' : survey.region === 'CA' ? 'ft-m' : 'm'
  const nameOf = (id: string): string => report.names[id] ?? id
  for (const circuit of report.circuits) showCircuit(circuit, nameOf, unit, talk)
  showPlace(report, nameOf, talk)
  showCondition(condition, nameOf, talk)
  talk.data('')
  const hasNext = condition?.ok === true && condition.value.next !== undefined
  if (report.asks.length === 0 && !hasNext) talk.data(supplyPage['nothing-to-ask'])
  if (report.asks.length > 0) talk.data(`${supplyPage.ask}:`)
  for (const at of report.asks) talk.data(`  ${ENGLISH.tellAsk(at, nameOf)}`)
  return outcome === 'holds' ? EXIT.fine : EXIT.found
}
