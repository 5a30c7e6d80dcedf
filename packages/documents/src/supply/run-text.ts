import type { CircuitReport, Known, SegmentReport, Supply, SupplyReport } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import { figure, say } from '@tubwright/words'

type Cable = Supply['cables'][number]
type Conductor = Cable['conductors'][number]

/** From the least to the greatest of something [A]. */
export interface Span {
  readonly from: number
  readonly to: number
}

/** What a person calls a thing of a report. */
export const namesIn =
  ({ names }: SupplyReport) =>
  (id: string): string =>
    names[id] ?? id

/** A figure and its unit stay on one line. */
export const withUnits = (text: string): string =>
  text.replace(/(\d) (?=(?:m?A|V|AWG|mm²|m|ft|%|°C)(?![\p{L}\d]))/gu, '$1\u00a0')

/** One figure, or from the least to the greatest. */
export const spanText = ({ from, to }: Span, { electrician }: Words): string =>
  from === to ? say(electrician.amps, { amps: from }) : say(electrician.span, { from, to })

/** What a circuit is: its number, its breaker, and what the rules take for everything at once. */
export function circuitText({ index, breaker, install }: CircuitReport, words: Words): string {
  const { supplyPage, electrician } = words
  const { load } = install.least
  return [
    say(supplyPage.circuit, { index: index + 1 }),
    breaker
      ? say(supplyPage.breaker, { amps: spanText(breaker, words) })
      : supplyPage['breaker-unknown'],
    load
      ? say(supplyPage.takes, { amps: say(electrician.amps, { amps: load.lenient }) })
      : supplyPage['takes-unknown'],
  ].join(', ')
}

const isEarth = ({ function: does }: Conductor): boolean => does.endsWith('earth')
const isNeutral = ({ function: does }: Conductor): boolean => does.endsWith('neutral')

/** Sizes among some conductors, each with how many there are. */
function counted(conductors: readonly Conductor[]): readonly (readonly [string, number])[] {
  const counts = new Map<string, number>()
  for (const { size } of conductors) counts.set(size.text, (counts.get(size.text) ?? 0) + 1)
  return [...counts]
}

function linesText({ conductors }: Cable, { electrician }: Words): string {
  const lines = conductors.filter(each => !isEarth(each) && !isNeutral(each))
  const [only] = lines
  if (lines.length === 1 && only)
    return say(electrician['conductor-line'], { size: only.size.text })
  return counted(lines)
    .map(([size, count]) => say(electrician['conductor-count'], { count: String(count), size }))
    .join(' + ')
}

export const neutralOf = ({ conductors }: Cable): Conductor | undefined =>
  conductors.find(isNeutral)

export const earthOf = ({ conductors }: Cable): Conductor | undefined => conductors.find(isEarth)

/** Every conductor of a cable by what it does and its size. */
export function conductorsText(cable: Cable, words: Words): string {
  const { electrician } = words
  const [neutral, earth] = [neutralOf(cable), earthOf(cable)]
  return [
    linesText(cable, words),
    ...(neutral ? [say(electrician['conductor-neutral'], { size: neutral.size.text })] : []),
    ...(earth ? [say(electrician['conductor-earth'], { size: earth.size.text })] : []),
  ].join(', ')
}

const wordOf = (words: Words, group: string, value: string): string => {
  const table: Readonly<Record<string, string>> = words.electrician
  return table[`${group}.${value}`] ?? value
}

/** A surveyed choice in words; undefined where nobody knows. */
function choiceText(
  known: Known<string> | undefined,
  group: string,
  words: Words,
): string | undefined {
  if (known?.kind === 'known') return wordOf(words, group, known.value)
  if (known?.kind !== 'one-of') return undefined
  return known.values.map(each => wordOf(words, group, each)).join(` ${words.values['list.or']} `)
}

/** Of what metal a cable is, how it is held and where it lies; what is not known says so, once. */
export function laidText({ material, method, where, moulded }: Cable, words: Words): string {
  const { electrician } = words
  const told = [
    choiceText(material, 'material', words),
    choiceText(method, 'method', words) ?? (moulded ? electrician['method.cord'] : undefined),
    choiceText(where, 'where', words),
  ].flatMap(each => each ?? [])
  const open = [
    ...(choiceText(material, 'material', words) === undefined ? [electrician.metal] : []),
    ...(choiceText(method, 'method', words) === undefined && !moulded ? [electrician.method] : []),
  ]
  return [
    ...told,
    ...(open.length > 0 ? [say(electrician['not-known'], { what: open.join(', ') })] : []),
  ].join(', ')
}

/** What a segment may carry. */
export const carriesText = ({ carries }: Pick<SegmentReport, 'carries'>, words: Words): string =>
  carries
    ? say(words.supplyPage.carries, { amps: spanText(carries, words) })
    : words.supplyPage['carries-unknown']

/** As it was entered; in metres beside it where that was in feet. */
export const lengthText = ({ length }: Cable): string =>
  /m$/u.test(length.text) ? length.text : `${length.text} (${figure(length.si)} m)`
