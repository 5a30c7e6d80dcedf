import type { Entered, Unit } from '../../base/entered.ts'
import type { Known } from '../../base/known.ts'
import type { Lead, Load, PoweredLoad, Probe } from '../../domain/load/load.ts'
import { EXTRA_LOW_VOLTS, isPowered } from '../../domain/load/load.ts'
import type { Survey } from '../survey/artifact.ts'
import type { Change, LoadSpec } from './artifact.ts'

const THOUSANDTHS = 1000 // what is bought is told to a mA

const entered = <U extends Unit>(value: number, unit: U): Entered<U> => {
  const si = Math.round(value * THOUSANDTHS) / THOUSANDTHS
  return { si: si as Entered<U>['si'], text: `${si} ${unit}` }
}

/** A surveyed value with each of its figures otherwise; an unknown one stays unknown. */
function mapped<U extends string>(
  value: Known<Entered<U>>,
  otherwise: (figure: Entered<U>) => Entered<U>,
): Known<Entered<U>> {
  switch (value.kind) {
    case 'known':
      return { ...value, value: otherwise(value.value) }
    case 'range':
      return { ...value, from: otherwise(value.from), to: otherwise(value.to) }
    case 'one-of':
      return { ...value, values: value.values.map(otherwise) }
    case 'unknown':
      return value
  }
}

/** The strap position found, of a load with several. */
const foundStrap = ({ straps }: PoweredLoad) => straps?.positions[straps.found]

/** Plate volts as found at the tub [V]; 0 where the survey names none. */
export const foundVolts = (load: PoweredLoad): number =>
  (foundStrap(load)?.volts ?? load.volts)?.si ?? 0

/** Circuits of the same power at these volts, none above `most` [A]. What was measured goes. */
function circuitsAt(load: PoweredLoad, volts: number, most: number): PoweredLoad['circuits'] {
  const share = foundVolts(load) / volts
  const otherwise = (amps: Entered<'A'>): Entered<'A'> =>
    share === 1 && amps.si <= most ? amps : entered(Math.min(amps.si * share, most), 'A')
  return load.circuits.map(({ ohms: _ohms, inrush: _inrush, ...circuit }) => {
    const amps = foundStrap(load)?.amps[circuit.id] ?? circuit.amps
    return amps === undefined ? circuit : { ...circuit, amps: mapped(amps, otherwise) }
  })
}

function earthLead({ region }: Survey, leads: readonly Lead[]): Lead {
  const thickest = leads.reduce((a, b) => (b.size.mm2 > a.size.mm2 ? b : a))
  const isAmerican = region === 'US' || region === 'CA'
  const id = leads.some(each => each.id === 'earth') ? 'earth-lead' : 'earth'
  const colour = isAmerican ? 'green' : 'green-yellow'
  return { id, function: 'earth', size: thickest.size, colour }
}

/** At extra-low volts there is nothing to earth; else what had an earth lead keeps one. */
function leadsAt(survey: Survey, load: PoweredLoad, volts: number, to: LoadSpec): Lead[] {
  const others = load.leads.filter(each => each.function !== 'earth')
  if (volts <= EXTRA_LOW_VOLTS && to.volts !== undefined) return others
  return to.earthed ? [...others, earthLead(survey, others)] : load.leads
}

/**
 * The load that is bought: of the same kind and power, for the supply's frequency, with bare leads.
 *
 * Which plug it comes with is not known before it is there, so none is counted on.
 */
function anotherPowered(survey: Survey, load: PoweredLoad, to: LoadSpec): PoweredLoad {
  const { plug: _plug, condition: _condition, straps: _straps, doubleInsulated, ...kept } = load
  const volts = to.volts ?? foundVolts(load)
  return {
    ...kept,
    volts: to.volts === undefined && load.volts ? load.volts : entered(volts, 'V'),
    leads: leadsAt(survey, load, volts, to),
    circuits: circuitsAt(load, volts, to.amps ?? Number.POSITIVE_INFINITY),
    ...(doubleInsulated === undefined || to.earthed ? {} : { doubleInsulated }),
    ...(load.frequency ? { frequency: survey.supply.frequency } : {}),
    ...(load.kind === 'light' && to.current ? { current: to.current } : {}),
  } as PoweredLoad
}

function anotherProbe(load: Probe, { curve = load.curve }: LoadSpec): Probe {
  const { plug: _plug, condition: _condition, ...kept } = load
  return { ...kept, curve }
}

/** Another load of the same kind, by what it has to be. */
export const anotherLoad = (survey: Survey, load: Load, to: LoadSpec): Load =>
  isPowered(load) ? anotherPowered(survey, load, to) : anotherProbe(load, to)

/** Whether a change makes another tub of it: adapters and plates change no load. */
export const changesLoads = ({ kind }: Change): boolean =>
  kind === 'replace' || kind === 'from-carton' || kind === 'leave-out'

/**
 * The survey of the tub as it is once these changes are made.
 *
 * Adapters and plates change no load; the supply is never touched.
 */
export function withChanges(survey: Survey, changes: readonly Change[]): Survey {
  const loads = survey.loads.flatMap(load => {
    const own = changes.filter(each => each.load === load.id)
    if (own.some(({ kind }) => kind === 'leave-out' || kind === 'from-carton')) return []
    const to = own.find(each => each.kind === 'replace')?.to
    return [to ? anotherLoad(survey, load, to) : load]
  })
  return { ...survey, loads }
}
