import { atMost } from '../../base/compare.ts'
import { boundsOf } from '../../base/known.ts'
import type { ControlBox, Feed, Place } from '../../domain/box/control-box.ts'
import type { Tub } from '../../domain/job.ts'
import { BOX, loadsOf } from '../../domain/job.ts'
import type { Load, PoweredLoad } from '../../domain/load/load.ts'
import { isPowered, isUnearthed } from '../../domain/load/load.ts'
import { placeCeiling } from '../../domain/wiring/draw.ts'
import { BANDS } from '../../domain/wiring/figures.ts'
import { givesVolts, plates, suitsSensor, takes } from '../../domain/wiring/fits.ts'
import { LIMITS } from '../../domain/wiring/limits.ts'
import type { Offer } from '../../domain/wiring/offers.ts'
import { allowedAmps } from '../../domain/wiring/states.ts'
import { undersized } from '../../domain/wiring/undersized.ts'
import type { Survey } from '../survey/artifact.ts'
import type { Requirement, Shortfall } from './artifact.ts'

/** A box on one of its feeds, with what it then offers. */
export interface Candidate {
  readonly box: ControlBox
  readonly feed: Feed
  readonly offers: readonly Offer[]
}

/** A requirement with its test. */
export interface Demand extends Requirement {
  /** What the candidate lacks, or undefined where it meets the requirement. */
  readonly lacks: (candidate: Candidate) => Omit<Shortfall, 'requirement' | 'subjects'> | undefined
}

const feedFunctions = (tub: Tub): readonly string[] => [
  ...new Set(
    tub.supply.cables
      .filter(each => each.to === BOX)
      .flatMap(each => each.conductors.map(conductor => conductor.function)),
  ),
]

function supplyDemands(survey: Survey): readonly Demand[] {
  const { supply, region } = survey
  const here = feedFunctions(survey)
  const missing = (feed: Feed) => Object.keys(feed.lands).filter(each => !here.includes(each))
  return [
    {
      id: 'region',
      message: 'needs-region',
      subjects: [survey.id],
      params: { region },
      lacks: ({ box }) =>
        box.regions.includes(region)
          ? undefined
          : { message: 'not-for-region', params: { region, offers: box.regions.join(', ') } },
    },
    {
      id: 'frequency',
      message: 'needs-frequency',
      subjects: [survey.id],
      params: { hertz: supply.frequency.si },
      lacks: ({ box }) =>
        box.frequencies.some(each => each.si === supply.frequency.si)
          ? undefined
          : {
              message: 'not-for-frequency',
              params: {
                hertz: supply.frequency.si,
                offers: box.frequencies.map(each => each.text).join(', '),
              },
            },
    },
    {
      id: 'system',
      message: 'needs-system',
      subjects: ['supply'],
      params: { system: supply.system },
      lacks: ({ feed }) =>
        feed.system === supply.system
          ? undefined
          : { message: 'not-for-system', params: { system: supply.system, offers: feed.system } },
    },
    {
      id: 'conductors',
      message: 'brings-conductors',
      subjects: ['supply'],
      params: { here: here.join(', ') },
      lacks: ({ feed }) =>
        missing(feed).length === 0
          ? undefined
          : {
              message: 'conductor-missing',
              params: { missing: missing(feed).join(', '), here: here.join(', ') },
            },
    },
  ]
}

/** What no box can mend: one leg of this delta stands near 208 V to neutral. */
const highLegDemand = ({ supply }: Survey): readonly Demand[] =>
  supply.system === 'high-leg-delta'
    ? [
        {
          id: 'high-leg',
          message: 'brings-high-leg',
          subjects: ['supply'],
          params: {},
          lacks: () => ({ message: 'high-leg', params: {} }),
        },
      ]
    : []

/** What no box can mend: a run too small for its breaker. */
const runDemands = (survey: Survey): readonly Demand[] =>
  undersized(survey)
    .filter(({ why }) => why.kind !== 'earth-not-shown')
    .map(({ cable, conductor, breaker }) => {
      const params = {
        cable: cable.label,
        conductor: conductor.id,
        size: conductor.size.text,
        breaker,
      }
      return {
        id: `size ${cable.id}.${conductor.id}`,
        message: 'brings-small-conductor',
        subjects: [`${cable.id}.${conductor.id}`],
        params,
        lacks: () => ({ message: 'conductor-too-small', params }),
      }
    })

/** The conductors that reach the box go under its feed terminals. */
const terminalDemands = ({ supply }: Survey): readonly Demand[] =>
  supply.cables
    .filter(each => each.to === BOX)
    .flatMap(cable => cable.conductors)
    .map(({ id, size, function: does }) => ({
      id: `terminal ${id}`,
      message: 'brings-size',
      subjects: [id],
      params: { conductor: id, size: size.text },
      lacks: ({ box, feed }) => {
        const at = box.board.terminals.find(each => each.id === feed.lands[does])
        const holds = at?.holds
        return !at || !holds || (size.mm2 >= holds.from.mm2 && size.mm2 <= holds.to.mm2)
          ? undefined
          : {
              message: 'terminal-does-not-hold',
              params: {
                conductor: id,
                size: size.text,
                terminal: at.label ?? at.id,
                from: holds.from.text,
                to: holds.to.text,
              },
            }
      },
    }))

/** What no box can mend: metal that a fault would make live. */
const earthDemands = ({ loads }: Survey): readonly Demand[] =>
  loads.filter(isUnearthed).map(({ id, label }) => ({
    id: `earth ${id}`,
    message: 'needs-no-earth',
    subjects: [id],
    params: { load: label },
    lacks: () => ({ message: 'no-earth-lead', params: { load: label } }),
  }))

function breakerDemands(survey: Survey): readonly Demand[] {
  const breaker = boundsOf(survey.supply.breaker)
  if (!breaker) return []
  const share = LIMITS.continuous * breaker.from
  return [
    {
      id: 'breaker',
      message: 'has-breaker',
      subjects: ['supply'],
      params: { breaker: breaker.to },
      lacks: ({ box }) =>
        atMost(breaker.to, box.largestBreaker.si)
          ? undefined
          : {
              message: 'breaker-too-large',
              params: { breaker: breaker.to, largest: box.largestBreaker.si },
            },
    },
    {
      id: 'current-limit',
      message: 'needs-current-limit',
      subjects: ['supply'],
      params: { share },
      lacks: ({ box }) => {
        const least = Math.min(...box.currentLimit.offered.map(each => allowedAmps(box, each.si)))
        return atMost(least, share)
          ? undefined
          : { message: 'no-setting-low-enough', params: { share, least } }
      },
    },
  ]
}

function bayDemand({ bay, id }: Survey): readonly Demand[] {
  if (!bay) return []
  const room = [bay.width.si, bay.height.si].sort((a, b) => a - b)
  return [
    {
      id: 'room',
      message: 'has-room',
      subjects: [id],
      params: { width: bay.width.si, height: bay.height.si, depth: bay.depth.si },
      lacks: ({ box }) => {
        const size = [box.size.width.si, box.size.height.si].sort((a, b) => a - b)
        const fits =
          (size[0] ?? 0) <= (room[0] ?? 0) &&
          (size[1] ?? 0) <= (room[1] ?? 0) &&
          box.size.depth.si <= bay.depth.si
        const { width, height, depth } = box.size
        return fits
          ? undefined
          : {
              message: 'too-big',
              params: { width: width.si, height: height.si, depth: depth.si },
            }
      },
    },
  ]
}

/** What the most loaded circuit draws for certain [A]; 0 where nobody knows. */
export const leastAmps = (load: PoweredLoad): number =>
  Math.max(
    0,
    ...load.circuits.map(circuit => (circuit.amps ? (boundsOf(circuit.amps)?.from ?? 0) : 0)),
  )

/** The places of a candidate that could take a load, ignoring other loads. */
export function placesFor(survey: Survey, candidate: Candidate, load: Load): readonly Place[] {
  const { box, offers } = candidate
  const band = BANDS[survey.region]
  return box.places.filter(
    place =>
      takes(place, load) &&
      suitsSensor(box, place, load) &&
      (!isPowered(load) ||
        (offers.some(offer =>
          [...plates(load).values()].some(plate => givesVolts(offer, place, load, plate, band)),
        ) &&
          (load.straps !== undefined || atMost(leastAmps(load), placeCeiling(box, place))))),
  )
}

function offeredVolts(candidate: Candidate, load: Load): string {
  const places = candidate.box.places.filter(place => takes(place, load))
  const volts = candidate.offers.flatMap(offer =>
    places.flatMap(place => [...(offer.volts.get(place.id)?.values() ?? [])]),
  )
  return [...new Set(volts.map(each => Math.round(each)))].sort((a, b) => a - b).join(' or ')
}

/** An old keypad goes where the box brings its own. */
const isReplaced = (load: Load, box: ControlBox): boolean =>
  load.kind === 'keypad' && box.supplied.some(each => each.kind === 'keypad')

function loadLacks(survey: Survey, candidate: Candidate, load: Load): ReturnType<Demand['lacks']> {
  if (placesFor(survey, candidate, load).length > 0 || isReplaced(load, candidate.box))
    return undefined
  const taking = candidate.box.places.filter(place => takes(place, load))
  if (taking.length === 0)
    return { message: 'no-place', params: { load: load.label, kind: load.kind } }
  if (!isPowered(load))
    return { message: 'probe-does-not-suit', params: { load: load.label, curve: load.curve } }
  const band = BANDS[survey.region]
  const hasVolts = taking.some(place =>
    candidate.offers.some(offer =>
      [...plates(load).values()].some(plate => givesVolts(offer, place, load, plate, band)),
    ),
  )
  return hasVolts
    ? {
        message: 'too-many-amps',
        params: {
          load: load.label,
          amps: leastAmps(load),
          rated: Math.max(...taking.map(place => placeCeiling(candidate.box, place))),
        },
      }
    : {
        message: 'wrong-volts',
        params: {
          load: load.label,
          plate: [...plates(load).values()].join(' or '),
          offers: offeredVolts(candidate, load),
        },
      }
}

const loadDemands = (survey: Survey): readonly Demand[] =>
  survey.loads.map(load => ({
    id: `load ${load.id}`,
    message: isPowered(load) ? 'needs-load-served' : 'needs-probe-read',
    subjects: [load.id],
    params: {
      load: load.label,
      plate: isPowered(load) ? [...plates(load).values()].join(' or ') : '',
    },
    lacks: candidate => loadLacks(survey, candidate, load),
  }))

/** Whether every load can have a place of its own: augmenting paths, one load at a time. */
export function haveOwnPlaces(choices: readonly (readonly string[])[]): boolean {
  const takenBy = new Map<string, number>()
  const seat = (load: number, tried: Set<string>): boolean =>
    (choices[load] ?? []).some(place => {
      if (tried.has(place)) return false
      tried.add(place)
      const other = takenBy.get(place)
      if (other !== undefined && !seat(other, tried)) return false
      takenBy.set(place, load)
      return true
    })
  return choices.every((_, load) => seat(load, new Set()))
}

function placesDemand(survey: Survey): Demand {
  return {
    id: 'places',
    message: 'needs-own-places',
    subjects: survey.loads.map(each => each.id),
    params: { count: survey.loads.length },
    lacks: candidate => {
      const served = loadsOf(survey, candidate.box)
        .map(load => placesFor(survey, candidate, load).map(place => place.id))
        .filter(each => each.length > 0)
      return haveOwnPlaces(served)
        ? undefined
        : { message: 'too-few-places', params: { loads: served.length } }
    },
  }
}

/** Commands that could run a circuit which pushes water through the heater. */
function waterCommands(survey: Survey, candidate: Candidate): ReadonlySet<string> {
  const movers = survey.loads.filter(
    load => 'movesWaterThroughHeater' in load && load.movesWaterThroughHeater.length > 0,
  )
  return new Set(
    movers.flatMap(load =>
      placesFor(survey, candidate, load).flatMap(place => Object.values(place.commands)),
    ),
  )
}

function waterDemand(survey: Survey): Demand {
  return {
    id: 'water',
    message: 'needs-moving-water',
    subjects: ['heater'],
    params: {},
    lacks: candidate => {
      const moving = waterCommands(survey, candidate)
      const heats = candidate.box.profiles.some(profile =>
        profile.heatsWith.some(command => moving.has(command)),
      )
      return heats ? undefined : { message: 'no-profile-moves-water', params: {} }
    },
  }
}

/** Everything this tub asks of a box. */
export const demandsOf = (survey: Survey): readonly Demand[] => [
  ...supplyDemands(survey),
  ...highLegDemand(survey),
  ...runDemands(survey),
  ...terminalDemands(survey),
  ...breakerDemands(survey),
  ...bayDemand(survey),
  ...loadDemands(survey),
  ...earthDemands(survey),
  placesDemand(survey),
  waterDemand(survey),
]
