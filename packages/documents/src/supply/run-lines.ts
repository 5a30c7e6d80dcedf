import type { CircuitReport, SegmentReport, SupplyReport, Survey, Verdict } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import { say } from '@tubwright/words'
import {
  carriesText,
  circuitText,
  conductorsText,
  laidText,
  lengthText,
  namesIn,
  spanText,
} from './run-text.ts'
import { worstOf } from './sign.ts'

/** What a run is told from. */
export interface RunContext {
  readonly report: SupplyReport
  readonly survey: Survey
  readonly words: Words
}

/** A text on the drawing; a verdict has its sign before it. */
export interface RunLine {
  readonly text: string
  readonly isBold?: true
  readonly verdict?: Verdict
}

/** A piece of the run, as it was judged and as it was found. */
export interface Piece {
  readonly segment: SegmentReport
  readonly cable: Survey['supply']['cables'][number]
}

const bold = (text: string): RunLine => ({ text, isBold: true })

const verdictLines = (verdict: Verdict | undefined, { words }: RunContext): readonly RunLine[] =>
  verdict ? [{ ...bold(words.verdicts[verdict]), verdict }] : []

/** The pieces in the order in which one walks them; what hangs on nothing comes last. */
export function piecesOf(
  { segments, install }: CircuitReport,
  { supply }: Survey,
): readonly Piece[] {
  const all = segments.flatMap(segment => {
    const cable = supply.cables.find(each => each.id === segment.cable)
    return cable ? [{ segment, cable }] : []
  })
  const walked: Piece[] = []
  let at = install.devices[0]?.device
  for (;;) {
    const next = all.find(each => each.cable.from === at && !walked.includes(each))
    if (!next) return [...walked, ...all.filter(each => !walked.includes(each))]
    walked.push(next)
    at = next.cable.to
  }
}

/** What is found on the first device is said of the whole circuit. */
function ofWhole({ findings, install }: CircuitReport): Verdict | undefined {
  const first = install.devices[0]?.device
  return worstOf(findings.filter(each => each.subjects[0] === first))
}

/** The head of a circuit, with the worst that is said of the whole of it. */
export function headLine(circuit: CircuitReport, { words }: RunContext): RunLine {
  const verdict = ofWhole(circuit)
  const told = circuitText(circuit, words)
  return verdict ? { ...bold(`${told}: ${words.verdicts[verdict]}`), verdict } : bold(told)
}

export function panelLines(
  { breaker, index }: CircuitReport,
  { survey, words }: RunContext,
): readonly RunLine[] {
  const { electrician, supplyPage } = words
  const { feeder } = survey.supply
  return [
    bold(electrician.panel),
    {
      text: breaker
        ? say(supplyPage.breaker, { amps: spanText(breaker, words) })
        : supplyPage['breaker-unknown'],
    },
    ...(feeder && index === 0
      ? [
          {
            text: say(electrician.feeder, { length: feeder.length.text, size: feeder.size.text }),
          },
        ]
      : []),
  ]
}

/** A device with what it trips at and may carry; the first one's verdict stands at the head. */
export function deviceLines(
  circuit: CircuitReport,
  device: string,
  context: RunContext,
): readonly RunLine[] {
  const { install, findings } = circuit
  const own = findings.filter(each => each.subjects[0] === device)
  return [
    bold(namesIn(context.report)(device)),
    ...deviceTexts(circuit, device, context).map(text => ({ text })),
    ...(install.devices[0]?.device === device ? [] : verdictLines(worstOf(own), context)),
  ]
}

/** The thing at the end of a piece. */
export const endLines = (
  circuit: CircuitReport,
  { cable }: Piece,
  context: RunContext,
): readonly RunLine[] =>
  cable.to === 'box'
    ? [bold(context.words.electrician.tub), { text: context.survey.title }]
    : deviceLines(circuit, cable.to, context)

/** What a device trips at and may carry. */
function deviceTexts(
  { install }: CircuitReport,
  device: string,
  { words }: RunContext,
): readonly string[] {
  const { electrician } = words
  const found = install.devices.find(each => each.device === device)
  return [
    ...(found?.trip ? [say(electrician['trips-at'], { amps: found.trip.to })] : []),
    ...(found?.rated ? [say(electrician.rated, { amps: spanText(found.rated, words) })] : []),
  ]
}

const pieceText = ({ segment, cable }: Piece, words: Words): string =>
  [
    lengthText(cable),
    conductorsText(cable, words),
    laidText(cable, words),
    carriesText(segment, words),
  ].join('; ')

/** A piece: its worst verdict, what it is called, what it is and carries. */
export function pieceLines(piece: Piece, context: RunContext): readonly RunLine[] {
  const { words } = context
  const verdict = worstOf(piece.segment.findings)
  return [
    ...(verdict ? verdictLines(verdict, context) : [bold(words.electrician['not-judged'])]),
    bold(piece.segment.label),
    { text: pieceText(piece, words) },
  ]
}

/** The whole drawing in sentences, for whoever does not see it. */
export function runSays({ report, survey, words }: RunContext): readonly string[] {
  return report.circuits.flatMap(circuit => [
    `${circuitText(circuit, words)}.`,
    ...piecesOf(circuit, survey).map(piece => {
      const verdict = worstOf(piece.segment.findings)
      const told = verdict ? words.verdicts[verdict] : words.electrician['not-judged']
      return `${piece.segment.label}: ${told}. ${pieceText(piece, words)}.`
    }),
  ])
}

/** What the drawing says of each thing of the run, by its id, for a screen too narrow for it. */
export interface RunTold {
  readonly pieces: Readonly<Record<string, string>>
  readonly devices: Readonly<Record<string, string>>
}

export function tellRun(report: SupplyReport, survey: Survey, words: Words): RunTold {
  const context = { report, survey, words }
  const { circuits } = report
  return {
    pieces: Object.fromEntries(
      circuits.flatMap(each =>
        piecesOf(each, survey).map(piece => [piece.cable.id, pieceText(piece, words)]),
      ),
    ),
    devices: Object.fromEntries(
      circuits.flatMap(each =>
        each.install.devices.map(({ device }) => [
          device,
          deviceTexts(each, device, context).join('; '),
        ]),
      ),
    ),
  }
}
