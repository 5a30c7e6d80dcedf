import { atMost } from '../../base/compare.ts'
import type { ControlBox, Place } from '../../domain/box/control-box.ts'
import { loadsOf } from '../../domain/job.ts'
import type { Load, LoadKind, PoweredLoad, Probe } from '../../domain/load/load.ts'
import { EXTRA_LOW_VOLTS, isPowered, isUnearthed } from '../../domain/load/load.ts'
import { placeCeiling } from '../../domain/wiring/draw.ts'
import { BANDS } from '../../domain/wiring/figures.ts'
import { feedLead, givesVolts, plates } from '../../domain/wiring/fits.ts'
import type { Offer } from '../../domain/wiring/offers.ts'
import type { Survey } from '../survey/artifact.ts'
import type { Change, FromCarton, LoadSpec, Replacement } from './artifact.ts'
import type { ChangeCosts } from './change-costs.ts'
import type { Candidate } from './requirements.ts'
import { leastAmps, placesFor } from './requirements.ts'
import { anotherLoad, foundVolts } from './with-changes.ts'

/** The volts that every circuit of a load gets there, whole [V]; undefined where they differ. */
function wholeVolts(offer: Offer, place: Place, load: PoweredLoad): number | undefined {
  const volts = offer.volts.get(place.id)
  const given = load.circuits.map(({ across }) => {
    const lead = feedLead(load, across)
    const here = lead && (volts?.get(lead) ?? (lead === 'hot' ? volts?.get('high') : undefined))
    return here === undefined ? 0 : Math.round(here)
  })
  const [first] = given
  return first !== undefined && first > 0 && given.every(each => each === first) ? first : undefined
}

/**
 * The volts that the load has to be made for; none where it has them or can be strapped to them,
 * undefined where no load of its kind will do.
 *
 * Never mains in the place of extra-low volts: those are a protection.
 */
function voltsFor(
  offer: Offer,
  place: Place,
  load: PoweredLoad,
  suiting: number | undefined,
): { readonly volts?: number } | undefined {
  if (suiting !== undefined) return {}
  const volts = wholeVolts(offer, place, load)
  if (volts === undefined) return undefined
  return foundVolts(load) <= EXTRA_LOW_VOLTS && volts > EXTRA_LOW_VOLTS ? undefined : { volts }
}

const currentFor = (place: Place, load: PoweredLoad): LoadSpec =>
  load.kind === 'light' &&
  load.current !== 'either' &&
  place.gives !== undefined &&
  place.gives !== load.current
    ? { current: place.gives }
    : {}

const isEmpty = (spec: LoadSpec): boolean => Object.keys(spec).length === 0

/** What a load has to be for this place; empty where it may stay, undefined where none will do. */
function specFor(
  survey: Survey,
  { box }: Candidate,
  offer: Offer,
  place: Place,
  load: PoweredLoad,
): LoadSpec | undefined {
  const band = BANDS[survey.region]
  const suiting = [...plates(load).values()].find(plate =>
    givesVolts(offer, place, load, plate, band),
  )
  const volts = voltsFor(offer, place, load, suiting)
  if (!volts) return undefined
  const other = { ...volts, ...currentFor(place, load) }
  const bought = anotherLoad(survey, load, other)
  const ceiling = placeCeiling(box, place)
  const isTooMuch = !load.straps && isPowered(bought) && !atMost(leastAmps(bought), ceiling)
  const spec: LoadSpec = {
    ...other,
    ...(isUnearthed(bought) ? { earthed: true } : {}),
    ...(isTooMuch ? { amps: ceiling } : {}),
  }
  // What is bought in the place of a load of several volts is bought for those of this place.
  const isForOne = load.straps && suiting !== undefined && !isEmpty(spec)
  return isForOne ? { volts: suiting, ...spec } : spec
}

const poweredSpecs = (
  survey: Survey,
  candidate: Candidate,
  load: PoweredLoad,
): readonly LoadSpec[] =>
  candidate.box.places
    .filter(place => place.takes.includes(load.kind))
    .flatMap(place =>
      candidate.offers.flatMap(
        offer => specFor(survey, candidate, offer, place, load) ?? ([] as const),
      ),
    )

/** Curves that the inputs want where this probe sits. */
const probeSpecs = ({ box }: Candidate, { curve, place }: Probe): readonly LoadSpec[] =>
  box.sensors
    .filter(input => input.reads === place && input.curve !== curve)
    .map(input => ({ curve: input.curve }))

/** The same points of the load as it was found. */
function foundSpec(load: Load, to: LoadSpec): LoadSpec {
  if (!isPowered(load)) return { curve: load.curve }
  return {
    ...(to.volts === undefined ? {} : { volts: foundVolts(load) }),
    ...(to.amps === undefined ? {} : { amps: leastAmps(load) }),
    ...(to.current === undefined || load.kind !== 'light' || load.current === 'either'
      ? {}
      : { current: load.current }),
    ...(to.earthed === undefined ? {} : { earthed: false }),
  }
}

function replacements(
  survey: Survey,
  candidates: readonly Candidate[],
  load: Load,
  costs: ChangeCosts,
): readonly Replacement[] {
  if (load.kind === 'keypad') return []
  const found = new Map<string, Replacement>()
  for (const candidate of candidates) {
    const specs = isPowered(load)
      ? poweredSpecs(survey, candidate, load)
      : probeSpecs(candidate, load)
    for (const to of specs) {
      const name = JSON.stringify(to)
      if (isEmpty(to) || found.has(name)) continue
      if (placesFor(survey, candidate, anotherLoad(survey, load, to)).length === 0) continue
      const { id, label, kind } = load
      const from = foundSpec(load, to)
      found.set(name, {
        kind: 'replace',
        load: id,
        label,
        of: kind,
        from,
        to,
        cost: costs[kind],
      })
    }
  }
  return [...found.values()]
}

/** What of the carton would be wired in the place of a load, were the load not there. */
export function fromCarton(
  survey: Survey,
  box: ControlBox,
  { id, label, kind }: Load,
  costs: ChangeCosts,
): FromCarton | undefined {
  if (kind !== 'heater' && kind !== 'probe' && kind !== 'keypad') return undefined
  // The box's own keypad counts whatever the tub has.
  const before = new Set(kind === 'keypad' ? survey.loads : loadsOf(survey, box))
  const rest = { ...survey, loads: survey.loads.filter(each => each.id !== id) }
  const to = loadsOf(rest, box).find(each => each.kind === kind && !before.has(each))
  return (
    to && {
      kind: 'from-carton',
      load: id,
      label,
      of: kind,
      to: to.label,
      cost: costs['from-carton'],
    }
  )
}

/** A tub is a tub without these; what moves the heater's water and what protects always stays. */
const MAY_BE_LEFT_OUT: readonly LoadKind[] = [
  'pump',
  'circulation-pump',
  'ozonator',
  'blower',
  'light',
  'audio',
  'sanitiser',
]

const mayBeLeftOut = (load: Load): boolean =>
  MAY_BE_LEFT_OUT.includes(load.kind) &&
  !('movesWaterThroughHeater' in load && load.movesWaterThroughHeater.length > 0)

/**
 * Every change of one load that could help with a box on one of these feeds, each by itself.
 *
 * The keypad has none here: that of another maker is never used again, whatever its volts.
 */
export function possibleChanges(
  survey: Survey,
  candidates: readonly Candidate[],
  load: Load,
  costs: ChangeCosts,
): readonly Change[] {
  const { id, label, kind } = load
  const box = candidates[0]?.box
  const carton = box && kind !== 'keypad' ? fromCarton(survey, box, load, costs) : undefined
  return [
    ...replacements(survey, candidates, load, costs),
    ...(carton ? [carton] : []),
    ...(mayBeLeftOut(load)
      ? [{ kind: 'leave-out', load: id, label, cost: costs['leave-out'] } as const]
      : []),
  ]
}
