import type { Complex } from '../../base/complex.ts'
import { complex } from '../../base/complex.ts'
import { boundsOf } from '../../base/known.ts'
import type { ControlBox, Place } from '../box/control-box.ts'
import type { Job } from '../job.ts'
import { placeOf } from '../job.ts'
import type { Landing } from '../landing/landing.ts'
import type { Circuit, PoweredLoad } from '../load/load.ts'
import { isPowered } from '../load/load.ts'

/** What one circuit of a load draws at its plate volts, as far as it is known. */
export interface Draw {
  readonly volts: number
  /** Least and greatest amps; for an unknown draw the greatest is an assumption. */
  readonly from: number
  readonly to: number
  readonly powerFactor: number
  /** Set where `to` is not surveyed but the most that its contacts may carry. */
  readonly assumed: boolean
}

/** The strap position that a landing gives a dual-voltage load, else the one found. */
export const strapOf = (load: PoweredLoad, landing: Landing): string | undefined =>
  load.straps && (landing.straps[load.id] ?? load.straps.found)

/** Plate volts in the strap position that the landing gives [V]. */
export function plateVolts(load: PoweredLoad, landing: Landing): number {
  const strap = strapOf(load, landing)
  const strapped = strap === undefined ? undefined : load.straps?.positions[strap]?.volts.si
  return strapped ?? load.volts?.si ?? 0
}

const LEAST_UNKNOWN_AMPS = 0.1 // [A] a motor that runs at all; common practice, no source

/** The most that the contacts of a place may carry: what an unknown draw is assumed to respect. */
export function placeCeiling(box: ControlBox, place: Place): number {
  const commands = Object.values(place.commands)
  let least = Number.POSITIVE_INFINITY
  for (const { id, closes } of box.commands) {
    if (!commands.includes(id)) continue
    for (const part of box.board.parts)
      if (part.kind === 'contact' && closes.includes(part.id))
        least = Math.min(least, part.rated.resistive.si, part.rated.motor?.si ?? least)
  }
  return Number.isFinite(least) ? least : CEILING_WITHOUT_CONTACT
}

const CEILING_WITHOUT_CONTACT = 10 // [A] always on; common practice, no source

/** What a circuit draws, in the strap position and place that the landing gives its load. */
export function drawOf(job: Job, landing: Landing, load: PoweredLoad, circuit: Circuit): Draw {
  const volts = plateVolts(load, landing)
  const strap = strapOf(load, landing)
  const base = { volts, powerFactor: circuit.powerFactor, assumed: false }
  const strapped = strap === undefined ? undefined : load.straps?.positions[strap]
  const amps = strapped?.amps[circuit.id] ?? circuit.amps
  const bounds = amps && boundsOf(amps)
  if (bounds) return { ...base, from: bounds.from, to: bounds.to }
  const power = circuit.power && boundsOf(circuit.power)
  if (power) {
    const perWatt = 1 / (volts * circuit.powerFactor)
    return { ...base, from: power.from * perWatt, to: power.to * perWatt }
  }
  const place = placeOf(job, landing, load)
  const ceiling = place ? placeCeiling(job.box, place) : 10
  return { ...base, from: LEAST_UNKNOWN_AMPS, to: ceiling, assumed: true }
}

/** Constant impedance that draws so many amps at plate volts, lagging [Ω]. */
export function impedanceOf(
  { volts, powerFactor }: Pick<Draw, 'volts' | 'powerFactor'>,
  amps: number,
): Complex {
  const size = volts / amps
  return complex(size * powerFactor, size * Math.sqrt(1 - powerFactor * powerFactor))
}

/** Circuits of a job whose draw is not one known value. */
export const uncertainDraws = (
  job: Job,
  landing: Landing,
): readonly { readonly load: PoweredLoad; readonly circuit: Circuit; readonly draw: Draw }[] =>
  job.loads
    .filter(isPowered)
    .flatMap(load =>
      load.circuits
        .map(circuit => ({ load, circuit, draw: drawOf(job, landing, load, circuit) }))
        .filter(({ draw }) => draw.from !== draw.to),
    )
