import type {
  SupplyOutcome,
  SupplyReport,
  Survey,
  surveyedCondition,
  Verdict,
} from '@tubwright/core'
import { supplyOutcome } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import { say } from '@tubwright/words'
import type { Html } from '../sheet/markup.ts'
import { html, raw } from '../sheet/markup.ts'
import { electricianStyle } from './electrician-style.ts'
import { installTable } from './install-table.ts'
import type { PointGroup } from './points.ts'
import { headingOf, pointList, pointsIn } from './points.ts'
import { questions } from './questions.ts'
import { drawRun } from './run-drawing.ts'
import { namesIn } from './run-text.ts'
import { sign } from './sign.ts'
import { wayText } from './way-text.ts'
import { drawYard } from './yard-drawing.ts'

/** What else can stand on the page. */
export interface ElectricianPageOptions {
  /** The day on which it is made, as a person writes it: this package has no clock. */
  readonly on?: string
  /** What the readings of the survey come to; absent where it has none. */
  readonly condition?: NonNullable<ReturnType<typeof surveyedCondition>>
}

type Read = ElectricianPageOptions['condition']

/** What the meter said at the tub, before anything that was calculated. */
function readings(report: SupplyReport, words: Words, condition: Read): Html | undefined {
  if (!condition) return undefined
  const { conditionPage } = words
  const lines = condition.ok
    ? [
        ...words.tellDangers(condition.value).map(each => each.line),
        ...words.tellCondition(condition.value, namesIn(report)),
      ]
    : [conditionPage.failed]
  return html`<section><h2>${conditionPage.title}</h2><ul>${lines.map(each => html`<li>${each}</li>`)}</ul></section>`
}

const OUTCOME_SIGNS = {
  holds: 'holds',
  breaks: 'breaks',
  open: 'not-shown',
} as const satisfies Readonly<Record<SupplyOutcome, Verdict>>

/** The editions that the figures of this page were read in. */
function editionsOf({ findings }: SupplyReport): readonly string[] {
  const all = findings.flatMap(({ clause }) =>
    clause ? [`${clause.standard} ${clause.edition}`] : [],
  )
  return [...new Set(all)].sort()
}

function bookText(report: SupplyReport, { codeEdition }: Survey, words: Words): string {
  const { supplyPage, electrician } = words
  const { book } = report
  if (!book) return supplyPage['no-book']
  const editions = editionsOf(report)
  const adopted =
    codeEdition?.kind === 'known'
      ? say(electrician['edition-adopted'], { edition: codeEdition.value })
      : electrician['edition-unknown']
  return [
    `${book.name}.`,
    ...(editions.length > 0 ? [say(electrician.editions, { editions: editions.join(', ') })] : []),
    ...(report.region === 'US' ? [adopted] : []),
  ].join(' ')
}

function header(report: SupplyReport, survey: Survey, words: Words, outcome: SupplyOutcome): Html {
  const { electrician, page, sheet, supplyPage } = words
  const notice = words.hasUnreviewed
    ? html`<p><strong>${words.unreviewedNotice}</strong></p>`
    : undefined
  return html`<header>
<h1>${say(electrician['title-of'], { tub: survey.title })}</h1>${notice}
<div class="head"><span class="outcome">${sign(OUTCOME_SIGNS[outcome])}${supplyPage[outcome]}${outcome === 'open' ? ` ${electrician['breaks-none']}` : ''}</span> <span class="job">${page.job} ${report.survey} · ${page.region} ${report.region}</span></div>
<p>${sheet[`system.${survey.supply.system}`]}, ${survey.supply.frequency.text}. ${bookText(report, survey, words)} ${report.fitted ? `${words.tellFitted(report.fitted)} ` : ''}<strong>${electrician.decides}</strong> <strong>${page.licensed}.</strong> ${sheet[`licence.${survey.region}`]}</p>
</header>`
}

function group(report: SupplyReport, name: PointGroup, words: Words): Html | undefined {
  if (name === 'authority' || pointsIn(report, name).length === 0) return undefined
  return html`<section><h2>${words.electrician[name]}</h2>${pointList(report, name, words)}</section>`
}

/** Of breaker, wire and load alone: whatever else breaks no way mends. */
function ways(report: SupplyReport, words: Words, outcome: SupplyOutcome): Html | undefined {
  const { supplyPage, electrician } = words
  const told = report.circuits.flatMap(circuit =>
    circuit.ways.map(each => {
      const of = say(supplyPage.circuit, { index: circuit.index + 1 })
      return report.circuits.length > 1 ? `${of}: ${wayText(each, words)}` : wayText(each, words)
    }),
  )
  if (told.length === 0) return undefined
  const besides =
    outcome === 'breaks' ? html` <strong>${electrician['ways-besides']}</strong>` : undefined
  const head = html`<strong>${electrician.ways}:</strong>`
  return told.length === 1
    ? html`<p>${head} ${told}${besides}</p>`
    : html`<p>${head}${besides}</p><ol class="ways">${told.map(each => html`<li>${each}</li>`)}</ol>`
}

function authority(report: SupplyReport, words: Words): Html {
  const { electrician, sheet } = words
  const readings = pointsIn(report, 'differ').flatMap(each =>
    each.readings?.decides === 'authority'
      ? [say(electrician['ask-reading'], { title: headingOf(report, each, words) })]
      : [],
  )
  return html`<section class="whole authority"><p>${[sheet['licence.ask'], ...new Set(readings)].join(' ')}</p>${
    pointsIn(report, 'authority').length > 0 ? pointList(report, 'authority', words) : undefined
  }</section>`
}

function signatures({ electrician }: Words, on: string | undefined): Html {
  const made = on === undefined ? '' : `${say(electrician['made-on'], { date: on })} `
  return html`<section class="whole"><div class="signatures"><div>${electrician.electrician}</div><div>${electrician.licence}</div><div>${electrician.date}</div><div>${electrician.signature}</div></div><footer>${made}${electrician.footer}</footer></section>`
}

const figure = (svg: string): Html =>
  html`<figure><div class="scroll" tabindex="0">${raw(svg)}</div></figure>`

/**
 * The electrician's page as one HTML file: no script, nothing fetched, A4 and Letter alike.
 *
 * It lays out a report and computes nothing. Equal reports and words give equal bytes.
 *
 * @param survey - what the report is of
 */
export function electricianPage(
  report: SupplyReport,
  survey: Survey,
  words: Words,
  { on, condition }: ElectricianPageOptions = {},
): string {
  const { electrician } = words
  const title = say(electrician['title-of'], { tub: survey.title })
  const outcome = supplyOutcome(report, condition)
  const style = electricianStyle(`${electrician.title} · ${words.page.job} ${report.survey}`)
  return `<!doctype html>\n${
    html`<html lang="${words.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="Tubwright">
<title>${title}</title>
<style>${raw(style)}</style>
</head>
<body>
<main>
${header(report, survey, words, outcome)}
${readings(report, words, condition)}
${group(report, 'breaks', words)}
${report.circuits.map(each => installTable(report, each, survey, words))}${ways(report, words, outcome)}
<section class="whole"><h2>${electrician.run}</h2>${figure(drawRun(report, survey, words))}</section>
${survey.yard ? html`<section class="whole"><h2>${electrician.yard}</h2>${figure(drawYard(survey, report, words))}</section>` : undefined}
${group(report, 'differ', words)}${group(report, 'provided', words)}${group(report, 'open', words)}
${questions(report, words)}
${authority(report, words)}
${group(report, 'holds', words)}
${signatures(words, on)}
</main>
</body>
</html>
`.html
  }`
}
