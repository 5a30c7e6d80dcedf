import type { CodeFinding, InputBound, Printed, SupplyReport } from '@tubwright/core'
import { invariant } from '@tubwright/core'
import { figure, say } from './say.ts'
import { speak } from './spoken.ts'
import type { Tables } from './words.ts'

/** A place of the survey by what is asked there, after the thing it is asked of. */
export function tellAsk(
  { supplyAsks, fields }: Pick<Tables, 'supplyAsks' | 'fields'>,
  at: string,
  nameOf: (id: string) => string,
): string {
  const known: Readonly<Record<string, string>> = fields
  const things: string[] = []
  let name = 'survey'
  for (const step of at.split('.'))
    if (Object.hasOwn(known, `${name}.${step}`)) name = `${name}.${step}`
    else things.push(nameOf(step))
  const short: Readonly<Record<string, string>> = supplyAsks
  const asked = short[name.slice('survey.'.length)] ?? known[name] ?? at
  return [...things, asked].join(': ')
}

/** Where it is printed; what was not read again says so. */
export function tellClause({ supplyPage }: Pick<Tables, 'supplyPage'>, printed: Printed): string {
  const { standard, edition, clause, read } = printed
  const told = say(supplyPage.clause, { standard, edition, clause })
  return read === 'memory' ? say(supplyPage['from-memory'], { clause: told }) : told
}

/** Which box was counted, and what it is set to. */
export const tellFitted = (
  { supplyPage }: Pick<Tables, 'supplyPage'>,
  { box, limit }: NonNullable<SupplyReport['fitted']>,
): string =>
  limit === undefined
    ? say(supplyPage.fitted, { box })
    : say(supplyPage['fitted-limit'], { box, limit })

const valueText = (value: unknown): string =>
  typeof value === 'number' ? figure(value) : String(value)

/** Units of what a bound can be of, by the last step of its path. */
const UNITS: Readonly<Record<string, string>> = {
  breaker: 'A',
  enclosure: 'A',
  draws: 'A',
  minimumCircuit: 'A',
  maximumProtection: 'A',
  earthLoop: 'Ω',
  ambient: '°C',
}

function boundText(
  tables: Tables,
  { at, holdsFor }: InputBound,
  nameOf: (id: string) => string,
): string {
  const numbers = holdsFor.flatMap(each => (typeof each === 'number' ? [each] : []))
  const isNumeric = numbers.length === holdsFor.length && numbers.length > 1
  const unit = UNITS[at.slice(at.lastIndexOf('.') + 1)]
  const written = isNumeric
    ? `${figure(Math.min(...numbers))} … ${figure(Math.max(...numbers))}`
    : holdsFor.map(valueText).join(', ')
  const values = unit === undefined ? written : `${written} ${unit}`
  return say(tables.supplyPage['holds-for'], { values, of: tellAsk(tables, at, nameOf) })
}

/** What nobody can say yet: the rule, and what decides it. Figures of what is not known would mislead. */
function openText(
  tables: Tables,
  { rule, asks }: CodeFinding,
  nameOf: (id: string) => string,
): string {
  const titles: Readonly<Record<string, string>> = tables.supplyRules
  return say(tables.supplyPage['depends-on'], {
    title: titles[rule] ?? rule,
    asks: asks.map(each => tellAsk(tables, each, nameOf)).join('; '),
  })
}

/** Units that a template writes by another name. */
const WRITTEN: Readonly<Record<string, string>> = { '%': 'percent', Ω: 'ohm', VA: 'kVA' }

/** A figure of a reading, in the unit of its finding where that has one. */
function readingText(value: number, unit: string | number | undefined): string {
  if (unit === 'ft' || unit === 'ft-m' || unit === 'm')
    return say('{value:length}', { value, unit })
  const written = unit === undefined ? undefined : WRITTEN[unit]
  if (written) return say(`{value:${written}}`, { value })
  return unit === undefined ? figure(value) : `${figure(value)} ${unit}`
}

/** One finding on the supply: figures on both sides, at worst where it is open, and what would settle it. */
export function tellCode(
  tables: Tables,
  finding: CodeFinding,
  nameOf: (id: string) => string,
): string {
  const { message, params, verdict, isTight, readings, bounds } = finding
  const templates: Readonly<Record<string, string>> = tables.supplySays
  const template = templates[message]
  invariant(template !== undefined, `no sentence for ${message}`)
  const { supplyPage } = tables
  const sentence = speak(tables, template, message, params)
  if (isTight) return say(supplyPage['no-margin'], { sentence })
  if (verdict === 'experts-differ' && readings)
    return say(supplyPage.differ, {
      sentence,
      strict: readingText(readings.strict, params['unit']),
      lenient: readingText(readings.lenient, params['unit']),
      decides: supplyPage[`decides-${readings.decides}`],
    })
  if (verdict === 'not-shown')
    return finding.asks.length > 0 ? openText(tables, finding, nameOf) : sentence
  if (verdict !== 'provided') return sentence
  return [
    say(supplyPage['at-worst'], { sentence }),
    ...bounds.map(each => boundText(tables, each, nameOf)),
  ].join(' ')
}
