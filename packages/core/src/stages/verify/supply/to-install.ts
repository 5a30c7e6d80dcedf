import { atLeast, atMost } from '../../../base/compare.ts'
import { boundsOf } from '../../../base/known.ts'
import { given } from '../../../base/possible.ts'
import { settlePoints } from '../../../base/settle.ts'
import type { FeedFunction } from '../../../domain/board/board.ts'
import type { Cited, Codebook } from '../../../domain/codebook/book.ts'
import { nextRating } from '../../../domain/codebook/book.ts'
import type { Printed } from '../../../domain/codebook/printed.ts'
import type { ConductorSize } from '../../../domain/conductor.ts'
import { AREAS, GAUGES, sizeFrom } from '../../../domain/conductor.ts'
import { isPowered } from '../../../domain/load/load.ts'
import { ownFunction } from '../../../domain/supply/circuits.ts'
import type { SupplyDevice } from '../../../domain/supply/supply.ts'
import { WITHOUT_NEUTRAL } from '../../../domain/wiring/figures.ts'
import type { Span } from '../../../domain/wiring/supply-loads.ts'
import { isOnSupply, placeOfLoad } from '../../../domain/wiring/supply-loads.ts'
import type {
  DeviceNeed,
  FeedWay,
  NeutralNeed,
  SegmentNeed,
  SizeNeed,
  ToInstall,
} from './artifact.ts'
import type { CircuitEvidence, Segment, SupplyEvidence } from './evidence.ts'
import { fixed, isAmerican } from './evidence.ts'
import { laidInputs, laidOf } from './laid.ts'

const plated = (known: Parameters<typeof boundsOf<'A'>>[0] | undefined): Span | undefined =>
  known && boundsOf(known)

/** Where a figure is printed, without the table that it may be part of. */
const placeOf = ({ standard, edition, clause, read }: Printed): Printed => ({
  standard,
  edition,
  clause,
  read,
})

const greatestDraw = ({ draws }: CircuitEvidence): number | undefined =>
  draws.kind === 'unknown' ? undefined : Math.max(...draws.values)

function leastOf({ survey, book }: SupplyEvidence, circuit: CircuitEvidence): ToInstall['least'] {
  const plate = plated(survey.plate?.minimumCircuit)
  const draws = greatestDraw(circuit)
  const load =
    book && draws !== undefined
      ? { strict: book.lasting.value * draws, lenient: draws, by: placeOf(book.lasting.by) }
      : undefined
  const amps = Math.max(plate?.to ?? 0, load?.strict ?? 0)
  return { plate, load, breaker: book && amps > 0 ? nextRating(book, amps) : undefined }
}

/** Over all that is open: the greatest breaker that every piece of the run allows. */
function runAllows({ book }: SupplyEvidence, circuit: CircuitEvidence): Span | undefined {
  const spans = fixed(circuit).map(segment => {
    const [line] = segment.lines.toSorted((a, b) => a.size.mm2 - b.size.mm2)
    const amps = settlePoints(laidInputs(segment), point => {
      const laid = line && laidOf(segment, line.size, point)
      const carries = laid && book?.ampacity(laid)
      return carries && book?.greatestBreaker(carries.amps, laid)?.value
    })
    const known = amps.flatMap(each => each ?? [])
    return known.length > 0 ? { from: Math.min(...known), to: Math.max(...known) } : undefined
  })
  if (spans.length === 0 || spans.includes(undefined)) return undefined
  return {
    from: Math.min(...spans.flatMap(each => each?.from ?? [])),
    to: Math.min(...spans.flatMap(each => each?.to ?? [])),
  }
}

const sizesOf = ({ survey }: SupplyEvidence): readonly ConductorSize[] =>
  (isAmerican(survey.region) ? GAUGES : AREAS).flatMap(text => sizeFrom(text) ?? [])

const bySize = (a: Cited<ConductorSize>, b: Cited<ConductorSize>): number =>
  a.value.mm2 - b.value.mm2

/** From where all is for the best to where it is at its worst. */
function sizeNeed(found: readonly (Cited<ConductorSize> | undefined)[]): SizeNeed | undefined {
  const known = found.flatMap(each => each ?? []).toSorted(bySize)
  const [least, most] = [known[0], known.at(-1)]
  if (!least || !most) return undefined
  const isWhole = known.length === found.length
  return { from: least.value.text, to: isWhole ? most.value.text : undefined, by: placeOf(most.by) }
}

/** The smallest copper that carries the tub at one point, and that this breaker protects. */
function leastLine(
  book: Codebook,
  sizes: readonly ConductorSize[],
  segment: Segment,
  { draws, behind }: { readonly draws: number; readonly behind: number },
): readonly (Cited<ConductorSize> | undefined)[] {
  const asked = { ...laidInputs(segment), material: given('copper' as const) }
  return settlePoints(asked, point => {
    for (const size of sizes) {
      const laid = laidOf(segment, size, point)
      const carries = book.ampacity(laid)
      const may = carries && book.greatestBreaker(carries.amps, laid)
      if (carries && may && atLeast(carries.amps, draws) && atLeast(may.value, behind))
        return { value: size, by: carries.by }
    }
    return undefined
  })
}

function segmentNeed(
  evidence: SupplyEvidence,
  segment: Segment,
  asked: { readonly draws: number; readonly behind: number },
): SegmentNeed {
  const { book } = evidence
  if (!book) return { cable: segment.cable.id, line: undefined, earth: undefined }
  const lines = leastLine(book, sizesOf(evidence), segment, asked)
  const found = segment.lines.toSorted((a, b) => b.size.mm2 - a.size.mm2)[0]?.size
  // Some books size the earth by its line: by the one that is there, unless that is too small.
  const beside = lines.map(each =>
    each && !(found && atMost(each.value.mm2, found.mm2)) ? each.value : found,
  )
  const earths = segment.method.values.flatMap(method =>
    beside.map(
      line => line && book.earth({ breaker: asked.behind, material: 'copper', line, method }),
    ),
  )
  return { cable: segment.cable.id, line: sizeNeed(lines), earth: sizeNeed(earths) }
}

const LINES: readonly FeedFunction[] = ['leg1', 'leg2', 'leg3']

/** By its loads alone: whether the box wants one too its maker says. */
function neutralNeed({ survey, circuits }: SupplyEvidence, circuit: CircuitEvidence): NeutralNeed {
  const arrives = circuit.segments.every(each => each.neutral)
  if (WITHOUT_NEUTRAL.includes(survey.supply.system)) return { needed: 'no', loads: [], arrives }
  if (circuit.lineCount === 1) return { needed: 'yes', loads: [], arrives }
  const arriving: readonly FeedFunction[] = [...LINES.slice(0, circuit.lineCount), 'neutral']
  const loads = survey.loads.filter(isOnSupply).flatMap(load => {
    const strap = load.straps?.positions[load.straps.found]
    const volts = strap?.volts.si ?? load.volts?.si
    const place = volts === undefined ? undefined : placeOfLoad(volts, arriving)
    return place?.includes('neutral') ? [load.label] : []
  })
  // Which of two circuits feeds a load is not known before there is a box.
  const some = circuits.length > 1 ? 'open' : 'yes'
  const isSilent = survey.loads.some(each => isPowered(each) && !each.volts && !each.straps)
  const none = isSilent ? 'open' : 'no'
  return { needed: loads.length > 0 ? some : none, loads, arrives }
}

const terminalOf = ({ board }: SupplyDevice, id: string | undefined): string | undefined => {
  const terminal = board.terminals.find(each => each.id === id)
  return terminal && (terminal.label ?? terminal.id)
}

function deviceNeeds(
  { survey: { supply }, devices }: SupplyEvidence,
  { circuit, segments }: CircuitEvidence,
): readonly DeviceNeed[] {
  const on = new Set([circuit.device, ...segments.map(({ cable }) => cable.to)])
  return supply.devices.flatMap(({ id, label, enclosure, device: kind }) => {
    if (!on.has(id)) return []
    const device = devices.get(id)
    const trips = device?.board.parts.flatMap(part =>
      part.kind === 'ground-fault' ? [part.trip] : [],
    )
    const [trip] = trips ?? []
    const lands = segments
      .filter(({ cable }) => cable.from === id)
      .flatMap(({ cable }) => cable.conductors)
      .map(({ function: does, from }) => ({
        function: ownFunction(does),
        belongs: device && terminalOf(device, device.lands[ownFunction(does)]),
        found: device && terminalOf(device, from),
      }))
    return [
      {
        device: id,
        label: label ?? device?.label ?? kind,
        rated: plated(enclosure),
        trip: trip && { from: trip.from.si, to: trip.to.si },
        lands,
        tails: (device?.tails ?? []).map(tail => ({
          colour: tail.colour,
          belongs: device && terminalOf(device, tail.lands),
        })),
      },
    ]
  })
}

/** The breaker that stays or comes, by the cheapest way that does; else the least that does. */
function breakerThen(
  { breaker }: CircuitEvidence,
  ways: readonly FeedWay[],
  least: number | undefined,
): number | undefined {
  const way = goodOf(ways)
  if (way?.kind === 'change-breaker' || way?.kind === 'change-wire') return way.breaker
  if (breaker.kind === 'unknown') return least
  // Where nothing does, what is there is no measure.
  const found = Math.max(...breaker.values)
  return way ? found : Math.max(found, least ?? found)
}

const goodOf = (ways: readonly FeedWay[]): FeedWay | undefined =>
  ways.find(each => each.outcome !== 'breaks')

/**
 * What an electrician puts in for one circuit: least and greatest of each thing, as far as known.
 *
 * Conductors are of copper and stand behind `breaker`; whatever is open about how they lie makes
 * them a span, never a guess.
 *
 * @param ways - how supply and tub can be made to fit, the cheapest first
 */
export function toInstall(
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  ways: readonly FeedWay[],
): ToInstall {
  const { survey, book } = evidence
  const least = leastOf(evidence, circuit)
  const breaker = breakerThen(circuit, ways, least.breaker)
  const asked =
    breaker === undefined
      ? undefined
      : { draws: goodOf(ways)?.limit ?? greatestDraw(circuit) ?? 0, behind: breaker }
  const stays = circuit.breaker.kind === 'unknown' ? undefined : Math.min(...circuit.breaker.values)
  return {
    least,
    greatest: {
      plate: plated(survey.plate?.maximumProtection),
      run: runAllows(evidence, circuit),
    },
    breaker,
    limit:
      book && stays !== undefined
        ? { value: stays / book.lasting.value, by: placeOf(book.lasting.by) }
        : undefined,
    segments: asked ? fixed(circuit).map(each => segmentNeed(evidence, each, asked)) : [],
    neutral: neutralNeed(evidence, circuit),
    groundFault: book?.groundFault && {
      value: book.groundFault.value,
      by: placeOf(book.groundFault.by),
    },
    devices: deviceNeeds(evidence, circuit),
  }
}
