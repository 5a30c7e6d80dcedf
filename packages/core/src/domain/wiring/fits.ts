import { atLeast, atMost } from '../../base/compare.ts'
import type { LeadFunction } from '../board/board.ts'
import type { ControlBox, Place } from '../box/control-box.ts'
import type { Lead, Load, PoweredLoad } from '../load/load.ts'
import { isMotor, isPowered } from '../load/load.ts'
import { LIMITS } from './limits.ts'
import type { Offer } from './offers.ts'

/** The terminal of a place for a lead; a one-speed motor's hot lead goes on a place's high. */
export const terminalFor = (place: Place, lead: Lead): string | undefined =>
  place.lands[lead.function] ?? (lead.function === 'hot' ? place.lands.high : undefined)

/** Whether a light gets the kind of current that it needs; where either says nothing, yes. */
export const suitsCurrent = (place: Place, load: Load): boolean =>
  load.kind !== 'light' ||
  load.current === 'either' ||
  place.gives === undefined ||
  place.gives === load.current

/** Whether a place takes this kind of load and has a terminal for each of its working leads. */
export const takes = (place: Place, load: Load): boolean =>
  place.takes.includes(load.kind) &&
  suitsCurrent(place, load) &&
  load.leads.every(lead => lead.function === 'earth' || terminalFor(place, lead) !== undefined) &&
  (!load.leads.some(lead => lead.function === 'earth') || place.lands.earth !== undefined)

/** Whether a probe of this curve and place suits the input behind a place. */
export function suitsSensor(box: ControlBox, place: Place, load: Load): boolean {
  if (load.kind !== 'probe') return true
  const input = box.sensors.find(each => each.terminals.includes(place.lands.signal ?? ''))
  return input !== undefined && input.curve === load.curve && input.reads === load.place
}

/** The function of the lead that a circuit is fed through. */
export function feedLead(load: PoweredLoad, across: readonly string[]): LeadFunction | undefined {
  return across
    .map(id => load.leads.find(each => each.id === id)?.function)
    .find(each => each !== undefined && each !== 'common')
}

/** Plate volts by strap position; a load with one voltage has the position `plate`. */
export const plates = (load: PoweredLoad): ReadonlyMap<string, number> =>
  load.straps
    ? new Map(Object.entries(load.straps.positions).map(([id, each]) => [id, each.volts.si]))
    : new Map([['plate', load.volts?.si ?? 0]])

/** Whether these volts suit that plate over the supply band; a heater may be fed less, not more. */
export function suitsPlate(
  load: Load,
  volts: number,
  plate: number,
  band: { readonly low: number; readonly high: number },
): boolean {
  if (!atMost(volts * band.high, LIMITS.most * plate)) return false
  if (isMotor(load)) return atLeast(volts * band.low, LIMITS.leastMotor * plate)
  return load.kind === 'heater' ? volts >= 0.2 * plate : atLeast(volts, LIMITS.weak * plate)
}

/** Whether a place gives every circuit of a load its volts, with this strap. */
export function givesVolts(
  offer: Offer,
  place: Place,
  load: Load,
  plate: number,
  band: { readonly low: number; readonly high: number },
): boolean {
  if (!isPowered(load)) return true
  const volts = offer.volts.get(place.id)
  return load.circuits.every(circuit => {
    const lead = feedLead(load, circuit.across)
    const given = lead && (volts?.get(lead) ?? (lead === 'hot' ? volts?.get('high') : undefined))
    return given !== undefined && suitsPlate(load, given, plate, band)
  })
}
