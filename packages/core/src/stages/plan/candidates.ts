import { atMost } from '../../base/compare.ts'
import { boundsOf } from '../../base/known.ts'
import type { FeedFunction } from '../../domain/board/board.ts'
import type { Feed, Place, Profile } from '../../domain/box/control-box.ts'
import type { End, Job } from '../../domain/job.ts'
import { BOX } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import type { Load } from '../../domain/load/load.ts'
import { isPowered } from '../../domain/load/load.ts'
import { ownFunction } from '../../domain/supply/circuits.ts'
import { BANDS } from '../../domain/wiring/figures.ts'
import { givesVolts, plates, suitsSensor, takes, terminalFor } from '../../domain/wiring/fits.ts'
import { LIMITS } from '../../domain/wiring/limits.ts'
import type { Offer } from '../../domain/wiring/offers.ts'
import { fitsPlug } from '../../domain/wiring/plugs.ts'
import { allowedAmps } from '../../domain/wiring/states.ts'

/** Load by load, its place. */
export type Seating = ReadonlyMap<Load, Place>

/** Every way to give each load a place of its own that takes it, in the order of the files. */
export function seatings(job: Job): readonly Seating[] {
  const { box, loads } = job
  return loads.reduce<readonly Seating[]>(
    (partial, load) =>
      partial.flatMap(seated => {
        const taken = new Set(seated.values())
        return box.places
          .filter(place => takes(place, load) && suitsSensor(box, place, load) && !taken.has(place))
          .map(place => new Map([...seated, [load, place] as const]))
      }),
    [new Map()],
  )
}

/** Loads for which no place is left once as many as can be have one; those that come first keep theirs. */
export function unseated({ box, loads }: Job): readonly Load[] {
  const takenBy = new Map<Place, Load>()
  const seat = (load: Load, tried: Set<Place>): boolean =>
    box.places.some(place => {
      if (tried.has(place) || !takes(place, load) || !suitsSensor(box, place, load)) return false
      tried.add(place)
      const other = takenBy.get(place)
      if (other !== undefined && !seat(other, tried)) return false
      takenBy.set(place, load)
      return true
    })
  return loads.filter(load => !seat(load, new Set()))
}

/** Strap positions, load by load, that these volts allow; undefined where some load gets none. */
export function strapsFor(
  job: Job,
  seating: Seating,
  offer: Offer,
): readonly Readonly<Record<string, string>>[] {
  const band = BANDS[job.tub.region]
  let choices: readonly Readonly<Record<string, string>>[] = [{}]
  for (const [load, place] of seating) {
    if (!isPowered(load)) continue
    const fitting = [...plates(load)].filter(([, plate]) =>
      givesVolts(offer, place, load, plate, band),
    )
    if (fitting.length === 0) return []
    if (load.straps)
      choices = choices.flatMap(choice => fitting.map(([id]) => ({ ...choice, [load.id]: id })))
  }
  return choices
}

/** Contacts that a set of commands closes, with those that follow them. */
function contactsWith({ box }: Job, profile: Profile, command: string): ReadonlySet<string> {
  const on = new Set([command])
  for (const leader of on)
    for (const [follower, its] of Object.entries(profile.follows))
      if (its === leader) on.add(follower)
  return new Set(box.commands.filter(each => on.has(each.id)).flatMap(each => each.closes))
}

/**
 * Whether heat may come with moving water in this profile: not where no command that lets it heat
 * closes any contact of a circuit that pushes water through the heater.
 *
 * What is left out so would heat dry, or not at all, in every landing of the seating.
 */
export function mayHeatWet(job: Job, seating: Seating, profile: Profile): boolean {
  const movers = [...seating].flatMap(([load, place]) =>
    'movesWaterThroughHeater' in load && load.movesWaterThroughHeater.length > 0 ? [place] : [],
  )
  if (movers.length === 0) return true
  // A function without a command is always on.
  if (movers.some(place => Object.keys(place.commands).length === 0)) return true
  const commands = new Set(movers.flatMap(place => Object.values(place.commands)))
  const moving = new Set(
    job.box.commands.filter(each => commands.has(each.id)).flatMap(each => each.closes),
  )
  return profile.heatsWith.some(command =>
    [...contactsWith(job, profile, command)].some(contact => moving.has(contact)),
  )
}

/** Loads that need an adapter in their place. */
export const adaptersOf = (job: Job, seating: Seating): readonly Load[] =>
  [...seating].filter(([load, place]) => !fitsPlug(job.box, place, load)).map(([load]) => load)

/**
 * The highest offered setting whose draw is at most 80 % of the breaker, or undefined when none is.
 *
 * Common practice, no source: 15→12, 20→16, 30→24, 40→32, 50→40, 60→48 A.
 */
export function currentLimitFor(job: Job): Landing['settings']['currentLimit'] | undefined {
  const breaker = boundsOf(job.tub.supply.breaker)
  if (!breaker) return undefined
  return job.box.currentLimit.offered
    .filter(each => atMost(allowedAmps(job.box, each.si), LIMITS.continuous * breaker.from))
    .reduce<Landing['settings']['currentLimit'] | undefined>(
      (best, each) => (best && best.si >= each.si ? best : each),
      undefined,
    )
}

function leadEnd(job: Job, seating: Seating, end: End): string {
  const load = job.loads.find(each => each.id === end.owner)
  const place = load && seating.get(load)
  const lead = load?.leads.find(each => each.id === end.part)
  const terminal = place && lead && terminalFor(place, lead)
  return terminal === undefined ? 'insulated' : `${BOX}.${terminal}`
}

/** Where a conductor belongs upstream: where its device says, else where it was found. */
function upstreamEnd(job: Job, end: End): string {
  const lands = end.of === 'cable' ? job.devices.get(end.board)?.lands : undefined
  const isOutgoing = job.tub.supply.cables.some(
    cable => cable.id === end.owner && cable.from === end.board,
  )
  const belongs = isOutgoing ? lands?.[ownFunction(end.function as FeedFunction)] : undefined
  return belongs === undefined ? (end.found ?? 'insulated') : `${end.board}.${belongs}`
}

/** The ends of a candidate landing. */
export function endsFor(job: Job, feed: Feed, seating: Seating): Landing['ends'] {
  const taken = new Set<string>()
  return Object.fromEntries(
    job.ends.map(end => {
      if (end.of === 'lead') return [end.id, leadEnd(job, seating, end)]
      if (end.board !== BOX) return [end.id, upstreamEnd(job, end)]
      const terminal = feed.lands[end.function as FeedFunction]
      if (terminal === undefined || taken.has(terminal)) return [end.id, 'insulated']
      taken.add(terminal)
      return [end.id, `${BOX}.${terminal}`]
    }),
  )
}
