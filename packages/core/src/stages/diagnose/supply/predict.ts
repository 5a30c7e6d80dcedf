import type { Complex } from '../../../base/complex.ts'
import { magnitude, scale, subtract, ZERO } from '../../../base/complex.ts'
import { invariant } from '../../../base/invariant.ts'
import type { Outcome } from '../../../base/outcome.ts'
import { fail, ok } from '../../../base/outcome.ts'
import type { FeedFunction } from '../../../domain/board/board.ts'
import type { Situation } from '../../../domain/supply/readings.ts'
import { SITUATIONS } from '../../../domain/supply/readings.ts'
import { BANDS, FIGURES } from '../../../domain/wiring/figures.ts'
import { reachedFrom } from '../../../domain/wiring/reach.ts'
import type {
  EndPair,
  SupplyAlone,
  SupplyPlace,
  SupplyValues,
} from '../../../domain/wiring/supply-alone.ts'
import {
  endPairs,
  factorsOf,
  LOAD_OFF,
  loadElement,
  pairsWithin,
  solveSupply,
  supplyAlone,
  supplyWith,
} from '../../../domain/wiring/supply-alone.ts'
import type { PlacedFault, SupplyFault } from '../../../domain/wiring/supply-faults.ts'
import {
  isPlaced,
  isPoor,
  openedBy,
  possibleFaults,
  seriesOf,
  siteWith,
} from '../../../domain/wiring/supply-faults.ts'
import { VOLT_METER } from '../../../domain/wiring/volt-meter.ts'
import { REFERENCE } from '../../../domain/wiring/wire.ts'
import type { ConditionFailure, Interval, Measurable, SupplyCircumstances } from './artifact.ts'
import type { Leaks, PhasorBox } from './phasor-box.ts'
import { around, boxOf, magnitudes } from './phasor-box.ts'
import { LOADS_MAX, POOR_OHMS, TOLERANCES } from './tolerances.ts'

/** A fault, and the places where it would read the same. */
export interface Candidate {
  readonly fault: SupplyFault
  readonly places: readonly SupplyPlace[]
}

/** What every candidate would make a meter show: worked out when asked for, and kept. */
export interface Predictor {
  readonly circumstances: SupplyCircumstances
  readonly alone: SupplyAlone
  readonly candidates: readonly Candidate[]
  readonly measurables: readonly Measurable[]
  /** The source as a share of its nominal volts. */
  readonly band: Interval
  /** The most that a conductor carries with the loads in any situation, as described [A]. */
  ampsIn(conductor: FeedFunction): number
  /** Which measurable it is, or undefined where there is none such. */
  indexOf(of: Measurable): number | undefined
  /**
   * Least and greatest that it may be at nominal source, meter and source left out [V], [A].
   *
   * @param ohms - of a poor joint or neutral; of any other fault it means nothing
   */
  predicted(candidate: Candidate, ohms: Interval, measurable: number): Interval
}

/** Says whether every load hangs between conductors that arrive. */
function checkLoads(
  { loads }: SupplyCircumstances,
  { ends }: SupplyAlone,
): ConditionFailure | undefined {
  if (loads.length > LOADS_MAX) return { reason: 'limit-reached', of: 'loads', limit: LOADS_MAX }
  const conductor = loads.flatMap(each => each.between).find(each => !ends.has(each))
  return conductor && { reason: 'not-arriving', conductor }
}

const measurablesOf = (
  { loads }: SupplyCircumstances,
  { ends }: SupplyAlone,
): readonly Measurable[] =>
  SITUATIONS.flatMap(situation => [
    ...endPairs(ends).map(between => ({ kind: 'volts' as const, situation, between })),
    ...loads
      .filter(each => each.on.includes(situation))
      .map(({ id: load }) => ({ kind: 'amps' as const, situation, load })),
  ])

/** Ohms of the loads in a situation: each as its plate says, or off. */
const nominalLoads = (
  { loads }: SupplyCircumstances,
  situation: Situation,
): ReadonlyMap<string, number> =>
  new Map(loads.map(({ id, on }) => [id, on.includes(situation) ? 1 : LOAD_OFF] as const))

/** With nothing that leaks. */
const TIGHT = { insulation: LOAD_OFF, electronics: LOAD_OFF } as const

const LOAD_SHARES = [1 / (1 + TOLERANCES.load), 1 / (1 - TOLERANCES.load)] as const

/** Every corner of what is not known for sure: each load and the wiring at their least and greatest. */
function cornersOf(
  circumstances: SupplyCircumstances,
  situation: Situation,
): readonly SupplyValues[] {
  const { wiring, source } = TOLERANCES
  const own = circumstances.tub.supply.sourceImpedance === undefined ? source : wiring
  const loads = circumstances.loads
    .filter(each => each.on.includes(situation))
    .reduce<readonly ReadonlyMap<string, number>[]>(
      (all, { id }) => all.flatMap(each => LOAD_SHARES.map(to => new Map([...each, [id, to]]))),
      [nominalLoads(circumstances, situation)],
    )
  return loads.flatMap(each => [
    { loads: each, parts: { wiring: wiring.least, source: own.least, ...TIGHT } },
    { loads: each, parts: { wiring: wiring.greatest, source: own.greatest, ...TIGHT } },
  ])
}

/** What a meter at the tub may show of a conductor that hangs on nothing; 0 where both are tied. */
type Ghosts = (pair: EndPair) => number

/**
 * Finds what hangs on insulation and electronics alone.
 *
 * How much of its neighbours' volts it shows is left open, so that the exact ohms decide nothing.
 */
function ghostsOf(alone: SupplyAlone, factors: ReadonlyMap<string, number>): Ghosts {
  const pairs = pairsWithin(alone, factors, TOLERANCES.tieOhms)
  const tied = reachedFrom(REFERENCE, pairs)
  const isTied = (name: FeedFunction): boolean => tied.has(alone.ends.get(name) ?? '')
  const names = [...alone.ends.keys()]
  if (names.every(isTied)) return () => 0
  const solved = solveSupply(supplyWith(alone, factors))
  const own = names.filter(isTied).map(solved.at)
  // Beside its neighbours lies the ground, at the volts of the star point.
  const takes = [ZERO, ...own.map(each => scale(each, TOLERANCES.ghostShare))]
  const islandOf = (name: FeedFunction) => reachedFrom(alone.ends.get(name) ?? '', pairs)
  return ([a, b]) => {
    if (isTied(a) && isTied(b)) return 0
    if (islandOf(a).has(alone.ends.get(b) ?? '')) return 0
    const from = isTied(a) ? [solved.at(a)] : isTied(b) ? [solved.at(b)] : takes
    const apart = from.flatMap(one => takes.map(other => magnitude(subtract(one, other))))
    return Math.max(TOLERANCES.strayVolts, ...apart)
  }
}

type Series = ReadonlyMap<string, number>

/**
 * The ohms in series once the ground-fault devices have done what they do: one case where that is
 * certain, two where a device may trip or not.
 */
function afterTrips(
  alone: SupplyAlone,
  series: Series,
  loads: ReadonlyMap<string, number>,
  band: Interval,
): readonly Series[] {
  const solved = solveSupply(supplyWith(alone, factorsOf(alone, { series, loads })))
  const trips = alone.groundFaults.map(each => {
    const { amps, isAwake } = solved.watched(each)
    const { from, to } = each.part.trip
    const least = amps * band.from * (1 - TOLERANCES.load)
    const most = amps * band.to * (1 + TOLERANCES.load)
    return { device: each.device, may: isAwake && most >= from.si, will: isAwake && least >= to.si }
  })
  const opened = (which: 'may' | 'will'): Series =>
    new Map([
      ...series,
      ...trips
        .filter(each => each[which])
        .flatMap(({ device }) => openedBy(alone, device))
        .map(each => [each, FIGURES.openOhms] as const),
    ])
  if (trips.some(each => each.will)) return [opened('will')]
  return trips.some(each => each.may) ? [series, opened('may')] : [series]
}

/** What is read in one situation, as boxes in the order of its measurables. */
interface Scene {
  readonly situation: Situation
  readonly measurables: readonly Measurable[]
  readonly corners: readonly SupplyValues[]
  readonly loads: ReadonlyMap<string, number>
}

function read(alone: SupplyAlone, of: Measurable, leak?: EndPair): Complex {
  const leaking = leak ? { leak } : {}
  if (of.kind === 'amps') return solveSupply(alone, leaking).current(loadElement(of.load))
  return solveSupply(alone, { meter: of.between, ...leaking }).between(...of.between)
}

/**
 * How far electronics and leaks between conductors may move what is read, the leaks each by itself
 * and added up.
 *
 * Of a ghost they decide nothing more, though electronics may tie it all the same.
 */
function leaksOf(
  alone: SupplyAlone,
  series: Series,
  { measurables, loads }: Scene,
): readonly Leaks[] {
  const ghosts = ghostsOf(alone, factorsOf(alone, { series, loads }))
  const tight = supplyWith(alone, factorsOf(alone, { series, loads, parts: TIGHT }))
  const parts = { ...TIGHT, electronics: TOLERANCES.electronics }
  const awake = supplyWith(alone, factorsOf(alone, { series, loads, parts }))
  const pairs = endPairs(alone.ends)
  return measurables.map(of => {
    const ghost = of.kind === 'volts' ? ghosts(of.between) : 0
    const tied = read(awake, of)
    if (ghost > 0) return hanging(TOLERANCES.ghostGrows * Math.max(ghost, magnitude(tied)))
    const without = read(tight, of)
    const leak = pairs.reduce(
      (sum, pair) => sum + magnitude(subtract(read(tight, of, pair), without)),
      0,
    )
    return { aside: subtract(tied, without), leak, ghost: 0 }
  })
}

const hanging = (ghost: number): Leaks => ({ aside: ZERO, leak: 0, ghost })

function boxesIn(
  alone: SupplyAlone,
  fault: SupplyFault,
  scene: Scene,
  band: Interval,
): readonly PhasorBox[] {
  const { measurables, corners, loads } = scene
  let boxes: readonly PhasorBox[] | undefined
  for (const series of afterTrips(alone, seriesOf(alone, fault), loads, band)) {
    const leaks = leaksOf(alone, series, scene)
    for (const corner of corners) {
      const there = supplyWith(alone, factorsOf(alone, { ...corner, series }))
      const seen = measurables.map((of, at) => boxOf(read(there, of), leaks[at] ?? hanging(0)))
      const before = boxes
      boxes = before ? seen.map((box, at) => around(box, before[at] ?? box)) : seen
    }
  }
  return boxes ?? []
}

const withOhms = (fault: SupplyFault, ohms: number): SupplyFault =>
  isPoor(fault) ? { ...fault, ohms } : fault

/** Probes that tell places apart, if anything does [Ω]. */
const PROBES = [0.1, 10, 1000] as const

/** What a fault would show at plate values and with nothing that leaks: to tell places apart. */
function signatureOf(
  alone: SupplyAlone,
  fault: SupplyFault,
  scenes: readonly Scene[],
): readonly number[] {
  const faults = isPoor(fault) ? PROBES.map(ohms => withOhms(fault, ohms)) : [fault]
  return faults.flatMap(each =>
    scenes.flatMap(({ measurables, loads }) => {
      const factors = factorsOf(alone, { series: seriesOf(alone, each), loads, parts: TIGHT })
      const [there, ghosts] = [supplyWith(alone, factors), ghostsOf(alone, factors)]
      return measurables.map(of =>
        of.kind === 'volts' && ghosts(of.between) > 0 ? GHOST : magnitude(read(there, of)),
      )
    }),
  )
}

const GHOST = -1000 // far from any reading

const isAlike = (a: readonly number[], b: readonly number[]): boolean =>
  a.every((value, index) => Math.abs(value - (b[index] ?? GHOST)) <= VOLT_METER.volts)

const sameConductor = (a: PlacedFault, b: SupplyFault): boolean =>
  isPlaced(b) && a.kind === b.kind && a.conductor === b.conductor

/** Faults of one conductor whose places no meter at the tub tells apart are one candidate. */
function grouped(
  alone: SupplyAlone,
  faults: readonly SupplyFault[],
  scenes: readonly Scene[],
): readonly Candidate[] {
  const groups: { fault: SupplyFault; places: SupplyPlace[]; shows: readonly number[] }[] = []
  for (const fault of faults) {
    if (!isPlaced(fault)) {
      groups.push({ fault, places: [], shows: [] })
      continue
    }
    const shows = signatureOf(alone, fault, scenes)
    const own = groups.find(each => sameConductor(fault, each.fault) && isAlike(each.shows, shows))
    if (own) own.places.push(fault.step.place)
    else groups.push({ fault, places: [fault.step.place], shows })
  }
  return groups.map(({ fault, places }) => ({ fault, places }))
}

function mostAmps(alone: SupplyAlone, conductor: FeedFunction, scenes: readonly Scene[]): number {
  const last = alone.runs.get(conductor)?.at(-1)?.element ?? ''
  const amps = scenes.map(({ loads }) =>
    magnitude(solveSupply(supplyWith(alone, factorsOf(alone, { loads }))).current(last)),
  )
  return Math.max(0, ...amps)
}

const isSame = (a: Measurable, b: Measurable, { ends }: SupplyAlone): boolean => {
  if (a.situation !== b.situation) return false
  if (a.kind === 'amps') return b.kind === 'amps' && a.load === b.load
  if (b.kind === 'amps') return false
  const [from, to] = a.between.map(each => ends.get(each))
  const [other, last] = b.between.map(each => ends.get(each))
  return (from === other && to === last) || (from === last && to === other)
}

/** The supply as each fault makes it, compiled when it is first asked for. */
function networks(circumstances: SupplyCircumstances, sound: SupplyAlone) {
  const compiled = new Map<SupplyFault, SupplyAlone>()
  return (fault: SupplyFault): SupplyAlone => {
    const site = siteWith(sound.site, fault)
    if (site === sound.site) return sound
    const known = compiled.get(fault)
    if (known) return known
    const made = supplyAlone(site)
    invariant(made.ok, `the supply of ${circumstances.tub.supply.system} has no ${fault.kind}`)
    compiled.set(fault, made.value)
    return made.value
  }
}

type Boxes = readonly PhasorBox[]

/** What a candidate shows in a scene, solved when it is first asked for. */
function boxCache(
  networkOf: (fault: SupplyFault) => SupplyAlone,
  scenes: readonly Scene[],
  band: Interval,
): (candidate: Candidate, ohms: number, scene: number) => Boxes {
  const kept = scenes.map(() => new Map<Candidate, Map<number, Boxes>>())
  return (candidate, ohms, index) => {
    const [scene, own] = [scenes[index], kept[index]]
    invariant(scene !== undefined && own !== undefined, `no situation ${index}`)
    const byOhms = own.get(candidate) ?? new Map<number, Boxes>()
    own.set(candidate, byOhms)
    const fault = withOhms(candidate.fault, ohms)
    const boxes = byOhms.get(ohms) ?? boxesIn(networkOf(candidate.fault), fault, scene, band)
    byOhms.set(ohms, boxes)
    return boxes
  }
}

/** Everything that may be wrong with a supply, and what each would show at the tub. */
export function predictorOf(
  circumstances: SupplyCircumstances,
): Outcome<Predictor, ConditionFailure> {
  const { tub, devices, loads } = circumstances
  const bare = supplyAlone({ tub, devices, loads: [] })
  if (!bare.ok) return bare
  const wrong = checkLoads(circumstances, bare.value)
  if (wrong) return fail(wrong)
  const made = supplyAlone({ tub, devices, loads })
  if (!made.ok) return made
  const alone = made.value
  const { low, high } = BANDS[tub.region]
  const band: Interval = { from: low, to: high }
  const measurables = measurablesOf(circumstances, alone)
  const scenes = SITUATIONS.map(
    (situation): Scene => ({
      situation,
      measurables: measurables.filter(each => each.situation === situation),
      corners: cornersOf(circumstances, situation),
      loads: nominalLoads(circumstances, situation),
    }),
  )
  const boxesAt = boxCache(networks(circumstances, alone), scenes, band)
  const placeOf = measurables.map(of => {
    const scene = scenes.findIndex(each => each.situation === of.situation)
    return { scene, at: scenes[scene]?.measurables.indexOf(of) ?? -1 }
  })
  const boxAt = (candidate: Candidate, ohms: number, measurable: number): PhasorBox => {
    const { scene, at } = placeOf[measurable] ?? { scene: -1, at: -1 }
    const box = boxesAt(candidate, ohms, scene)[at]
    invariant(box !== undefined, `no measurable ${measurable}`)
    return box
  }
  const candidates = grouped(alone, possibleFaults(alone, POOR_OHMS.least), scenes)
  return ok({
    circumstances,
    alone,
    candidates,
    measurables,
    band,
    ampsIn: conductor => mostAmps(alone, conductor, scenes),
    indexOf: of => {
      const index = measurables.findIndex(each => isSame(each, of, alone))
      return index < 0 ? undefined : index
    },
    predicted: (candidate, { from, to }, measurable) => {
      const least = boxAt(candidate, from, measurable)
      const most = isPoor(candidate.fault) ? boxAt(candidate, to, measurable) : least
      return magnitudes(around(least, most))
    },
  })
}
