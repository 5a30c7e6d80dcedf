import type { Complex } from '../../../base/complex.ts'
import { add, magnitude, scale, subtract, ZERO } from '../../../base/complex.ts'
import { invariant } from '../../../base/invariant.ts'
import { boundsOf } from '../../../base/known.ts'
import type { FeedFunction } from '../../../domain/board/board.ts'
import type { PoweredLoad } from '../../../domain/load/load.ts'
import { isMotor } from '../../../domain/load/load.ts'
import { isSecond } from '../../../domain/supply/circuits.ts'
import type { Material } from '../../../domain/supply/run-words.ts'
import type { SupplyDevice } from '../../../domain/supply/supply.ts'
import type {
  EndPair,
  LumpedLoad,
  SolvedSupply,
  SupplyAlone,
  WatchedDevice,
} from '../../../domain/wiring/supply-alone.ts'
import {
  factorsOf,
  LOAD_OFF,
  ohmsOf,
  solveSupply,
  supplyAlone,
  supplyWith,
} from '../../../domain/wiring/supply-alone.ts'
import { isOnSupply, loadSpan, lumped } from '../../../domain/wiring/supply-loads.ts'
import type { Survey } from '../../survey/artifact.ts'
import type { CircuitEvidence, SupplyEvidence } from './evidence.ts'

/** Amps of a load at the start, as many times what it takes running; where the plate does not say. */
export const START_TIMES = { from: 4, to: 8 } as const // common practice; [IEEE-399] 5 to 8 (from memory)
export const START_POWER_FACTOR = 0.5 // common practice, no source

/** What arrives at the tub by the first circuit. */
export const arrivingOf = ({
  segments,
}: Pick<CircuitEvidence, 'segments'>): readonly FeedFunction[] =>
  segments.flatMap(({ isLast, cable }) =>
    isLast ? cable.conductors.map(each => each.function).filter(each => !isSecond(each)) : [],
  )

/** A motor at its start, beside the same motor running: one of the two is off. */
export const startOf = (load: string): string => `start ${load}`

/** A small load to neutral: without any, a neutral on the wrong bar shows nowhere. */
export const PROBE = 'probe'
const PROBE_VOLTS = 120 // [V]
const PROBE_AMPS = 1 // [A]

/**
 * The supply of a tub as it was found, with its loads at the end of the run; besides, each motor at
 * its start and a probe to neutral, which are off until they are asked for.
 */
export function supplyNetwork(
  survey: Survey,
  devices: ReadonlyMap<string, SupplyDevice>,
  circuits: readonly Pick<CircuitEvidence, 'segments'>[],
): SupplyAlone | undefined {
  const [circuit] = circuits
  // Two circuits meet in the box, and nobody knows yet which feeds what.
  if (!circuit || circuits.length > 1 || devices.size < survey.supply.devices.length)
    return undefined
  const arriving = arrivingOf(circuit)
  const own = survey.loads.filter(isOnSupply)
  const loads = own.flatMap(load => lumped(load, arriving))
  const starts = own.filter(isMotor).flatMap(load =>
    lumped(load, arriving).map(each => ({
      ...each,
      id: startOf(load.id),
      powerFactor: START_POWER_FACTOR,
    })),
  )
  const hasNeutral = arriving.includes('leg1') && arriving.includes('neutral')
  const probe: LumpedLoad = {
    id: PROBE,
    between: ['leg1', 'neutral'],
    volts: PROBE_VOLTS,
    amps: PROBE_AMPS,
    powerFactor: 1,
  }
  const alone = supplyAlone({
    tub: survey,
    devices,
    isUnmetered: true,
    loads: [...loads, ...starts, ...(hasNeutral ? [probe] : [])],
  })
  return alone.ok ? alone.value : undefined
}

const isExtra = (id: string): boolean => id === PROBE || id.startsWith(startOf(''))

/** What is on beside the running loads, as a share of its ohms by load; all else that is extra is off. */
function shares(
  { site }: SupplyAlone,
  on: ReadonlyMap<string, number> = new Map(),
): ReadonlyMap<string, number> {
  const all = new Map(on)
  for (const { id } of site.loads) if (isExtra(id) && !all.has(id)) all.set(id, LOAD_OFF)
  return all
}

/** Resistivity of aluminium by that of copper. @source [NEC-CH9-T8] 0.808 to 0.491 Ω at 6 AWG */
export const ALUMINIUM = 0.808 / 0.491

const NO_FACTORS: ReadonlyMap<string, number> = new Map()

/** Ohms of each cable's conductors by its metal, as a share of copper's. */
function metalFactors(
  { conductors }: SupplyAlone,
  metals: ReadonlyMap<string, Material>,
): ReadonlyMap<string, number> {
  if (![...metals.values()].includes('aluminium')) return NO_FACTORS
  return new Map(
    [...conductors].flatMap(([name, element]): readonly (readonly [string, number])[] =>
      metals.get(name.slice(0, name.indexOf('.'))) === 'aluminium' ? [[element, ALUMINIUM]] : [],
    ),
  )
}

/** Volts between two conductors where the cables begin, and at the tub [V]. */
export interface Spread {
  readonly before: number
  readonly after: number
}

/** Volts along the cables of one conductor, from the panel to the tub. */
function alongCables(
  alone: SupplyAlone,
  solved: SolvedSupply,
  factors: ReadonlyMap<string, number>,
  name: FeedFunction,
): Complex {
  const steps = (alone.runs.get(name) ?? []).filter(({ place }) => place.kind === 'cable')
  return steps.reduce(
    (sum, { element }) =>
      add(
        sum,
        scale(solved.current(element), ohmsOf(alone, element) * (factors.get(element) ?? 1)),
      ),
    ZERO,
  )
}

/** What the cables take between two conductors, out and back, with everything on or as it is given. */
export function spreadOf(
  alone: SupplyAlone,
  pair: EndPair,
  metals: ReadonlyMap<string, Material>,
  on?: ReadonlyMap<string, number>,
): Spread {
  const loads = shares(alone, on)
  const factors = factorsOf(alone, { loads })
  for (const [element, factor] of metalFactors(alone, metals)) factors.set(element, factor)
  const solved = solveSupply(supplyWith(alone, factors))
  const [a, b] = pair
  const after = solved.between(a, b)
  const lost = subtract(
    alongCables(alone, solved, factors, a),
    alongCables(alone, solved, factors, b),
  )
  return { before: magnitude(add(after, lost)), after: magnitude(after) }
}

/** What each ground-fault device sees with the loads on, and whether it is awake. */
export function watchedBy(
  alone: SupplyAlone,
  on?: ReadonlyMap<string, number>,
): readonly { readonly device: WatchedDevice; readonly amps: number; readonly isAwake: boolean }[] {
  const solved = solveSupply(supplyWith(alone, factorsOf(alone, { loads: shares(alone, on) })))
  return alone.groundFaults.map(device => ({ device, ...solved.watched(device) }))
}

/** The parts that watch a circuit for a fault to earth, wherever on its run they sit. */
export function watchersOf(
  { devices }: SupplyEvidence,
  { circuit, segments }: CircuitEvidence,
): readonly WatchedDevice['part'][] {
  const on = new Set([circuit.device, ...segments.map(({ cable }) => cable.to)])
  return [...devices].flatMap(([id, { board }]) =>
    on.has(id) ? board.parts.flatMap(part => (part.kind === 'ground-fault' ? [part] : [])) : [],
  )
}

/** The least trip of a ground-fault part [A]. */
export const tripOf = ({
  part,
}: WatchedDevice): { readonly from: number; readonly to: number } => ({
  from: part.trip.from.si,
  to: part.trip.to.si,
})

/** How many times its running amps a motor takes at the start, by its plate; undefined where it is silent. */
export function startTimesOf(load: PoweredLoad): { from: number; to: number } | undefined {
  const inrush = load.circuits.flatMap(each => (each.inrush && boundsOf(each.inrush)) ?? [])
  const span = loadSpan(load)
  if (inrush.length === 0 || !span || span.to <= 0) return undefined
  const [from, to] = [
    Math.min(...inrush.map(each => each.from)),
    Math.max(...inrush.map(each => each.to)),
  ]
  invariant(from <= to, 'an inrush is from the lesser to the greater')
  return { from: from / span.to, to: to / span.to }
}
