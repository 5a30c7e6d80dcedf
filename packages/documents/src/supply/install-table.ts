import type {
  CircuitReport,
  Printed,
  SegmentReport,
  SizeNeed,
  SupplyReport,
  Survey,
  ToInstall,
} from '@tubwright/core'
import type { Words } from '@tubwright/words'
import { say } from '@tubwright/words'
import type { Html } from '../sheet/markup.ts'
import { html, table } from '../sheet/markup.ts'
import {
  carriesText,
  conductorsText,
  earthOf,
  laidText,
  lengthText,
  neutralOf,
  spanText,
  withUnits,
} from './run-text.ts'

type Line = Html | string
type Device = ToInstall['devices'][number]

interface Row {
  readonly item: string
  readonly needed: readonly Line[]
  readonly found: readonly Line[]
  readonly by: readonly (Printed | undefined)[]
}

const blank = (text: string): Html => html`${text} <span class="blank"></span> A`

const bound = (line: Line): Line => (typeof line === 'string' ? withUnits(line) : line)

const lines = (all: readonly Line[]): readonly Html[] =>
  all.map(each => html`<div>${bound(each)}</div>`)

/** Several things in one line of text. */
const flowing = (all: readonly Line[]): Html =>
  html`${all.map((each, index) => html`${index === 0 ? '' : '; '}${bound(each)}`)}`

const strong = (text: string): Html => html`<strong>${withUnits(text)}</strong>`

function clauses(by: Row['by'], words: Words): Html | undefined {
  const told = [...new Set(by.flatMap(each => (each ? [words.tellClause(each)] : [])))].join('; ')
  return told === '' ? undefined : html` <span class="by">[${told}]</span>`
}

/** The clauses stand behind the last line that they are for. */
function withClauses(needed: Row['needed'], by: Row['by'], words: Words): readonly Line[] {
  const told = clauses(by, words)
  const last = needed.at(-1)
  return told && last !== undefined ? [...needed.slice(0, -1), html`${last}${told}`] : needed
}

function leastRow({ install, breaker }: CircuitReport, words: Words): Row {
  const { electrician } = words
  const { plate, load, breaker: least } = install.least
  const isDisputed = load !== undefined && load.strict !== load.lenient
  const { breaker: behind, limit } = install
  const stays =
    behind !== undefined && least !== undefined && limit && behind < least
      ? [say(electrician['or-set-lower'], { breaker: behind, limit: limit.value })]
      : []
  const byLoad = load
    ? say(electrician[isDisputed ? 'by-loads-lasting' : 'by-loads'], { ...figuresOf(load) })
    : electrician['draw-unknown']
  return {
    item: electrician['least-circuit'],
    needed: [
      flowing([
        ...(least === undefined
          ? []
          : [strong(say(electrician['breaker-least'], { breaker: least }))]),
        ...stays.map(strong),
        html`${withUnits(byLoad)}${clauses([load?.by], words)}`,
        plate
          ? say(electrician['plate-least'], { amps: spanText(plate, words) })
          : blank(electrician['plate-blank']),
      ]),
    ],
    found: [
      breaker
        ? say(electrician['breaker-found'], { amps: spanText(breaker, words) })
        : blank(electrician['breaker-unknown']),
    ],
    by: [],
  }
}

const figuresOf = ({ strict, lenient }: NonNullable<ToInstall['least']['load']>) => ({
  strict,
  lenient,
  amps: strict,
})

function greatestRow({ install }: CircuitReport, words: Words): Row {
  const { electrician } = words
  const { plate, run } = install.greatest
  return {
    item: electrician['greatest-protection'],
    needed: [
      plate
        ? strong(say(electrician['plate-greatest'], { amps: spanText(plate, words) }))
        : blank(electrician['plate-blank']),
    ],
    found: [
      run
        ? say(electrician['run-allows'], { amps: spanText(run, words) })
        : electrician['run-open'],
    ],
    by: [],
  }
}

function sizeText(need: SizeNeed | undefined, { electrician }: Words): string {
  if (!need) return electrician['size-open']
  const { from, to } = need
  if (to === undefined) return say(electrician['of-copper-open'], { size: from })
  return from === to
    ? say(electrician['of-copper'], { size: from })
    : say(electrician['of-copper-span'], { from, to })
}

function segmentRow(
  segment: SegmentReport,
  { install, breaker }: CircuitReport,
  survey: Survey,
  words: Words,
): Row | undefined {
  const { electrician } = words
  const cable = survey.supply.cables.find(each => each.id === segment.cable)
  if (!cable) return undefined
  const need = install.segments.find(each => each.cable === segment.cable)
  const isFound = breaker?.from === install.breaker && breaker?.to === install.breaker
  const isPlain = isFound && install.breaker === install.least.breaker
  const behind =
    install.breaker === undefined || isPlain
      ? ''
      : `, ${say(electrician['behind-breaker'], { breaker: install.breaker })}`
  const needed = cable.moulded
    ? [electrician.moulded]
    : [
        html`${electrician.line}: ${strong(sizeText(need?.line, words))}${behind}`,
        html`${electrician.earth}: ${strong(sizeText(need?.earth, words))}`,
      ]
  const none = earthOf(cable)
    ? []
    : [html`${electrician.earth}: ${strong(electrician['no-earth'])}`]
  return {
    item: `${segment.label}, ${lengthText(cable)}`,
    needed,
    found: [
      conductorsText(cable, words),
      ...none,
      `${laidText(cable, words)}; ${carriesText(segment, words)}`,
    ],
    by: [need?.line?.by, need?.earth?.by],
  }
}

function neutralText({ neutral, segments }: ToInstall, words: Words): string {
  const { electrician } = words
  const loads = neutral.loads.join(', ')
  if (neutral.needed === 'no') return electrician['neutral-no']
  if (neutral.needed === 'yes')
    return loads === '' ? electrician['neutral-line'] : say(electrician['neutral-yes'], { loads })
  return loads === ''
    ? electrician['neutral-unknown']
    : say(electrician['neutral-open'], { loads, count: segments.length })
}

function neutralRow({ install, segments }: CircuitReport, survey: Survey, words: Words): Row {
  const { electrician, colours } = words
  const { arrives } = install.neutral
  const own = survey.supply.cables.filter(({ id }) => segments.some(each => each.cable === id))
  const told = own.flatMap(cable => {
    const neutral = neutralOf(cable)
    return neutral ? [`${neutral.size.text} ${colours[neutral.colour]}`] : []
  })
  const isMissing = install.neutral.needed === 'yes' && !arrives
  const found = electrician[arrives ? 'arrives' : 'arrives-not']
  return {
    item: electrician.neutral,
    needed: [strong(neutralText(install, words))],
    found: [isMissing ? strong(found) : [found, ...new Set(told)].join(', ')],
    by: [],
  }
}

function landText(
  { function: does, belongs, found }: Device['lands'][number],
  hasLegs: boolean,
  words: Words,
): string | undefined {
  const { electrician, sheet } = words
  const terminal = belongs ?? found
  if (terminal === undefined) return undefined
  // One leg alone is no leg: it is the line.
  const name = does === 'leg1' && !hasLegs ? 'line' : does
  const params = { function: sheet[`function.${name}`], terminal }
  return belongs !== undefined && found !== undefined && belongs !== found
    ? say(electrician['lands-wrong'], { ...params, found })
    : say(electrician['lands-on'], params)
}

function tailText({ colour, belongs }: Device['tails'][number], words: Words): string | undefined {
  const colours: Readonly<Record<string, string>> = words.colours
  return belongs === undefined
    ? undefined
    : say(words.electrician['tail-on'], { colour: colours[colour] ?? colour, terminal: belongs })
}

function groundFaultRow({ install }: CircuitReport, words: Words): Row {
  const { electrician } = words
  const { groundFault, devices } = install
  const watching = devices.flatMap(({ trip, ...each }) => (trip ? [{ ...each, trip }] : []))
  const landed = watching.map(({ lands, tails }) =>
    [
      ...lands.map(each =>
        landText(
          each,
          lands.some(({ function: does }) => does === 'leg2'),
          words,
        ),
      ),
      ...tails.map(each => tailText(each, words)),
    ]
      .flatMap(each => each ?? [])
      .join('; '),
  )
  return {
    item: electrician['ground-fault'],
    needed: [
      flowing([
        strong(
          groundFault
            ? say(electrician['trips-by'], { amps: groundFault.value })
            : electrician['trip-ask'],
        ),
        ...landed,
      ]),
    ],
    found:
      watching.length > 0
        ? watching.map(({ label, trip }) =>
            say(electrician['trip-found'], { device: label, from: trip.from, to: trip.to }),
          )
        : [strong(electrician['trip-none'])],
    by: [groundFault?.by],
  }
}

/** What the circuit starts in is not its disconnect, unless there is no other or somebody read it. */
function disconnectsOf({ devices }: ToInstall): readonly Device[] {
  const own = devices.filter(({ rated }, index) => index > 0 || rated)
  return own.length > 0 ? own : devices
}

function disconnectRow({ install }: CircuitReport, words: Words): Row {
  const { electrician } = words
  return {
    item: electrician.disconnect,
    needed: [
      strong(
        install.breaker === undefined
          ? electrician['rated-open']
          : say(electrician['rated-least'], { amps: install.breaker }),
      ),
    ],
    found: disconnectsOf(install).map(({ label, rated }) =>
      rated
        ? say(electrician['rated-found'], { device: label, amps: spanText(rated, words) })
        : blank(say(electrician['rated-blank'], { device: label })),
    ),
    by: [],
  }
}

const limitRow = ({ install: { limit, least } }: CircuitReport, words: Words): readonly Row[] =>
  limit
    ? [
        {
          item: words.electrician.limit,
          needed: [strong(say(words.electrician['limit-most'], { amps: limit.value }))],
          found: [],
          // The same clause stands beside the least circuit.
          by: least.load ? [] : [limit.by],
        },
      ]
    : []

function rowsOf(circuit: CircuitReport, survey: Survey, words: Words): readonly Row[] {
  return [
    leastRow(circuit, words),
    greatestRow(circuit, words),
    ...circuit.segments.flatMap(each => segmentRow(each, circuit, survey, words) ?? []),
    neutralRow(circuit, survey, words),
    groundFaultRow(circuit, words),
    disconnectRow(circuit, words),
    ...limitRow(circuit, words),
  ]
}

/** The one table that an electrician wants: least and greatest of everything, beside what was found. */
export function installTable(
  report: SupplyReport,
  circuit: CircuitReport,
  survey: Survey,
  words: Words,
): Html {
  const { electrician } = words
  const title =
    report.circuits.length > 1
      ? say(electrician['install-circuit'], { index: circuit.index + 1 })
      : electrician.install
  const heads = [electrician.item, electrician.needed, electrician.found]
  const rows = rowsOf(circuit, survey, words).map(
    ({ item, needed, found, by }) =>
      html`<tr><th scope="row">${withUnits(item)}</th><td>${lines(withClauses(needed, by, words))}</td><td>${lines(found)}</td></tr>`,
  )
  return html`<section><h2>${title}</h2><div class="scroll">${table('install', heads, [html`<tbody>${rows}</tbody>`])}</div></section>`
}
