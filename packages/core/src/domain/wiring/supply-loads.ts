import { boundsOf } from '../../base/known.ts'
import type { FeedFunction } from '../board/board.ts'
import type { Load, PoweredLoad } from '../load/load.ts'
import { isMotor, isPowered } from '../load/load.ts'
import type { EndPair, LumpedLoad } from './supply-alone.ts'

/** From the least to the greatest that is known [A]. */
export interface Span {
  readonly from: number
  readonly to: number
}

export const NONE: Span = { from: 0, to: 0 }
export const plus = (a: Span, b: Span): Span => ({ from: a.from + b.from, to: a.to + b.to })

const spanOf = (load: PoweredLoad, circuit: PoweredLoad['circuits'][number]): Span | undefined => {
  const strap = load.straps?.positions[load.straps.found]
  const amps = strap?.amps[circuit.id] ?? circuit.amps
  const bounds = amps && boundsOf(amps)
  if (bounds) return bounds
  const power = circuit.power && boundsOf(circuit.power)
  const volts = strap?.volts.si ?? load.volts?.si
  if (!power || volts === undefined) return undefined
  const perWatt = 1 / (volts * circuit.powerFactor)
  return { from: power.from * perWatt, to: power.to * perWatt }
}

/** What a load takes at most: of a pump, the speed that takes most; of others, all of it. */
export function loadSpan(load: PoweredLoad): Span | undefined {
  const spans = load.circuits.map(circuit => spanOf(load, circuit))
  if (spans.includes(undefined)) return undefined
  const known = spans.flatMap(each => each ?? [])
  if (load.kind !== 'pump') return known.reduce(plus, NONE)
  return known.reduce(
    (a, b) => ({ from: Math.max(a.from, b.from), to: Math.max(a.to, b.to) }),
    NONE,
  )
}

/** Amps of loads on extra-low voltage are the control transformer's affair. */
export const isOnSupply = (load: Load): load is PoweredLoad =>
  isPowered(load) && (load.volts?.si ?? 240) > 50

export const ONE_LEG_MOST = 160 // [V] up to here a plate is for one leg and neutral; common practice, no source

/** Between which conductors a load of so many volts hangs, of those that arrive. */
export function placeOfLoad(volts: number, arriving: readonly FeedFunction[]): EndPair | undefined {
  const has = (name: FeedFunction): boolean => arriving.includes(name)
  const isBetweenLegs = has('leg2') && !has('leg3') && volts > ONE_LEG_MOST
  if (isBetweenLegs) return ['leg1', 'leg2']
  return has('leg1') && has('neutral') ? ['leg1', 'neutral'] : undefined
}

const MOTOR_POWER_FACTOR = 0.85 // [1] of a motor whose plate does not say; common practice, no source

/** A load as it hangs on the end of the run, at the most it may take. */
export function lumped(
  load: PoweredLoad,
  arriving: readonly FeedFunction[],
): readonly LumpedLoad[] {
  const strap = load.straps?.positions[load.straps.found]
  const volts = strap?.volts.si ?? load.volts?.si
  const span = loadSpan(load)
  const between = volts === undefined ? undefined : placeOfLoad(volts, arriving)
  if (volts === undefined || !span || !between || span.to <= 0) return []
  const given = load.circuits[0]?.powerFactor ?? 1
  const powerFactor = isMotor(load) && given === 1 ? MOTOR_POWER_FACTOR : given
  return [{ id: load.id, between, volts, amps: span.to, powerFactor }]
}
