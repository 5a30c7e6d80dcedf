import type { Complex } from '../../base/complex.ts'
import { magnitude, subtract } from '../../base/complex.ts'
import type { FeedFunction, LeadFunction } from '../../domain/board/board.ts'
import { FEED_FUNCTIONS, LINES } from '../../domain/board/board.ts'
import type { Feed, Place } from '../../domain/box/control-box.ts'
import type { Job } from '../../domain/job.ts'
import { findTerminal } from '../../domain/job.ts'
import type { Load, PoweredLoad } from '../../domain/load/load.ts'
import { isPowered } from '../../domain/load/load.ts'
import { circuitsOf, isSecond, ownFunction, secondLines } from '../../domain/supply/circuits.ts'
import { BANDS, EMFS } from '../../domain/wiring/figures.ts'
import { feedLead } from '../../domain/wiring/fits.ts'
import type { Offer } from '../../domain/wiring/offers.ts'
import { offersOf } from '../../domain/wiring/offers.ts'
import { arriving } from '../../domain/wiring/states.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { Reading } from './artifact.ts'
import type { SiteCircuit } from './circuits.ts'
import { isServed } from './circuits.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'
import { commandLabel } from './together.ts'
import { functionText } from './wires.ts'

/** Most volts from neutral to earth under load [V]; common practice, no source. */
const NEUTRAL_VOLTS = 2

/** Every pair of what reaches the tub, in the order in which it is measured. */
export function supplyPairs(job: Job): readonly (readonly [FeedFunction, FeedFunction])[] {
  const here = FEED_FUNCTIONS.filter(each => arriving(job).has(each))
  return here.flatMap((a, at) => here.slice(at + 1).map(b => [a, b] as const))
}

const AT_EARTH: Complex = { re: 0, im: 0 }

/** What arrives by a conductor, to the star point [V]. */
function arrives({ tub: { supply } }: Job, name: FeedFunction): Complex {
  const own = LINES.find(each => each === ownFunction(name))
  const line = own && circuitsOf(supply)[isSecond(name) ? 1 : 0]?.lines[own]
  return (line && EMFS[supply.system][line]) ?? AT_EARTH
}

const nominalVolts = (job: Job, [a, b]: readonly [FeedFunction, FeedFunction]): number =>
  magnitude(subtract(arrives(job, a), arrives(job, b)))

export const bandText = (job: Job, volts: number) => {
  const band = BANDS[job.tub.region]
  return text('expect.volts', { volts, low: volts * band.low, high: volts * band.high })
}

const pairText = (job: Job, feed: Feed, [a, b]: readonly [FeedFunction, FeedFunction]) => {
  const what = text('read.pair', { a: functionText(job, a), b: functionText(job, b) })
  const [from, to] = [feed.lands[a], feed.lands[b]]
  return from === undefined || to === undefined
    ? what
    : text('read.terminals', { what, a: from, b: to })
}

/** The same pairs dead, at the old box: before a hand goes in. */
export const deadReadings = (job: Job): readonly Reading[] =>
  supplyPairs(job).map(([a, b]) => ({
    what: text('read.pair', { a: functionText(job, a), b: functionText(job, b) }),
    expected: text('expect.dead'),
    unit: 'V',
  }))

/** A plug that turns may bring the line on either conductor: to earth one of them stands at its volts. */
function feedText(job: Job, pair: readonly [FeedFunction, FeedFunction]): SheetText {
  const volts = nominalVolts(job, pair)
  if (job.tub.supply.turnable && pair[1] === 'earth') {
    const line = nominalVolts(job, ['leg1', 'earth'])
    return text('expect.turned', { volts: bandText(job, line), limit: NEUTRAL_VOLTS })
  }
  return volts > 0 ? bandText(job, volts) : text('expect.low-volts', { limit: NEUTRAL_VOLTS })
}

/** What stands at the feed terminals at first power, of the circuits that serve. */
export const feedReadings = (
  job: Job,
  feed: Feed,
  circuits: readonly SiteCircuit[],
): readonly Reading[] =>
  supplyPairs(job)
    .filter(pair => pair.every(each => isServed(circuits, each)))
    .map(pair => ({
      what: pairText(job, feed, pair),
      expected: feedText(job, pair),
      unit: 'V',
    }))

const isOffer = (offer: Offer, plan: WiringPlan): boolean =>
  Object.entries(offer.jumpers).every(([id, at]) => plan.landing.jumpers[id] === at)

export const placeFor = (job: Job, plan: WiringPlan, load: Load): Place | undefined => {
  const id = plan.assignments.find(each => each.load === load.id)?.place
  return job.box.places.find(each => each.id === id)
}

/** What stands at one load's output when it is called with nothing on it. */
function outputReadings(
  job: Job,
  plan: WiringPlan,
  offer: Offer,
  load: PoweredLoad,
): readonly Reading[] {
  const place = placeFor(job, plan, load)
  if (!place) return []
  return load.circuits.flatMap(circuit => {
    const lead = feedLead(load, circuit.across)
    const on = lead === 'hot' && place.lands.hot === undefined ? 'high' : lead
    const volts = on && offer.volts.get(place.id)?.get(on)
    const [a, b] = circuit.across.map(id =>
      findTerminal(job, plan.landing.ends[`${load.id}.${id}`] ?? ''),
    )
    if (on === undefined || volts === undefined || !a || !b || a.class !== 'mains') return []
    const called = place.commands[on as LeadFunction]
    const between = { a: a.id, b: b.id }
    return [
      {
        what:
          called === undefined
            ? text('read.always-on', { place: place.label, ...between })
            : text('read.output', { command: commandLabel(job.box, called), ...between }),
        expected: bandText(job, volts),
        unit: 'V' as const,
      },
    ]
  })
}

const outputsOf = (
  job: Job,
  plan: WiringPlan,
  feed: Feed,
  wanted: (load: Load) => boolean,
): readonly Reading[] => {
  const offer = offersOf(job.box, feed, secondLines(job.tub.supply)).find(each =>
    isOffer(each, plan),
  )
  if (!offer) return []
  return job.loads
    .filter(isPowered)
    .filter(wanted)
    .flatMap(load => outputReadings(job, plan, offer, load))
}

/**
 * What stands at each mains output when it is called with nothing plugged in: the empty box, solved.
 *
 * The heater's is not called so: without a pump there is no flow, and nobody bridges the flow proof
 * for a reading.
 */
export const emptyOutputReadings = (job: Job, plan: WiringPlan, feed: Feed): readonly Reading[] =>
  outputsOf(job, plan, feed, load => load.kind !== 'heater')

/** What stands at the heater once water moves and heat is called. */
export const heaterOutputReadings = (job: Job, plan: WiringPlan, feed: Feed): readonly Reading[] =>
  outputsOf(job, plan, feed, load => load.kind === 'heater')
