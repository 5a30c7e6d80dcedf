import type { Complex } from '../../base/complex.ts'
import { add, complex, magnitude, scale, subtract, ZERO } from '../../base/complex.ts'
import { invariant, unreachable } from '../../base/invariant.ts'
import type { Outcome } from '../../base/outcome.ts'
import { fail, ok } from '../../base/outcome.ts'
import type { CompiledNetwork, StructureFailure } from '../../engines/circuit/compile-network.ts'
import { compileNetwork } from '../../engines/circuit/compile-network.ts'
import type { Element, Network, NodeId, Pair } from '../../engines/circuit/network.ts'
import { pairsOf } from '../../engines/circuit/network.ts'
import { scaleImpedances } from '../../engines/circuit/scale-impedances.ts'
import { currentAt, solveInto } from '../../engines/circuit/solve-network.ts'
import type { Workspace } from '../../engines/circuit/workspace.ts'
import { makeWorkspace } from '../../engines/circuit/workspace.ts'
import type { FeedFunction, Part } from '../board/board.ts'
import { FEED_FUNCTIONS } from '../board/board.ts'
import type { Job, Tub } from '../job.ts'
import { BOX, jobOf } from '../job.ts'
import type { Landing } from '../landing/landing.ts'
import type { SupplyDevice } from '../supply/supply.ts'
import { entered } from './bare-source.ts'
import { impedanceOf } from './draw.ts'
import { LIMITS } from './limits.ts'
import { reachedFrom } from './reach.ts'
import { stripNode, terminalStrip } from './terminal-strip.ts'
import { VOLT_METER } from './volt-meter.ts'
import { boardNode, elementOfEnd, partElement, REFERENCE, wire } from './wire.ts'

/** What hangs on the end of the run, between two of the conductors that arrive there. */
export interface LumpedLoad {
  readonly id: string
  readonly between: readonly [FeedFunction, FeedFunction]
  /** Plate volts, and amps there: a constant impedance, lagging [V], [A]. */
  readonly volts: number
  readonly amps: number
  readonly powerFactor: number
}

/** A supply and what hangs on it; no control box. */
export interface SupplySite {
  readonly tub: Pick<Tub, 'region' | 'supply'>
  /** By their ids in the survey. */
  readonly devices: Job['devices']
  readonly loads: readonly LumpedLoad[]
  /** Two conductors whose ends at the tub are exchanged. */
  readonly exchanged?: readonly [FeedFunction, FeedFunction]
  /**
   * Nothing is ever held across its conductors, no meter and no leak, and its source stays as it is:
   * the network is smaller then.
   */
  readonly isUnmetered?: true
}

/** Where on the run something sits. */
export type SupplyPlace =
  | { readonly kind: 'source'; readonly before: string }
  /** At one of its poles, switches, fuses or tails. */
  | { readonly kind: 'device'; readonly device: string; readonly part: string }
  | { readonly kind: 'cable'; readonly cable: string }

/** A place in one word: two places are one where it is the same. */
export function placeName(place: SupplyPlace): string {
  switch (place.kind) {
    case 'source':
      return `source:${place.before}`
    case 'device':
      return `${place.device}.${place.part}`
    case 'cable':
      return `cable:${place.cable}`
    default:
      return unreachable(place)
  }
}

/** One element that a conductor passes through on its way to the tub. */
export interface RunStep {
  readonly element: string
  readonly place: SupplyPlace
}

export interface WatchedDevice {
  readonly device: string
  readonly part: Extract<Part, { kind: 'ground-fault' }>
}

/**
 * What the ohms of a supply are of: the source with its feeder; cables, tails and poles; insulation;
 * and electronics of ground-fault devices.
 */
export const SUPPLY_PARTS = ['source', 'wiring', 'insulation', 'electronics'] as const
export type SupplyPart = (typeof SUPPLY_PARTS)[number]

/** The supply alone as a network, compiled once: its values change, its shape never does. */
export interface SupplyAlone {
  readonly site: SupplySite
  readonly network: Network
  readonly compiled: CompiledNetwork
  /** The node at the tub of each conductor that arrives. */
  readonly ends: ReadonlyMap<FeedFunction, NodeId>
  /** What each of them passes through, from the source to the tub. */
  readonly runs: ReadonlyMap<FeedFunction, readonly RunStep[]>
  /** Cable conductors, by `cable.conductor`: their elements. */
  readonly conductors: ReadonlyMap<string, string>
  readonly groundFaults: readonly WatchedDevice[]
  /** Elements by what their ohms are. */
  readonly elements: Readonly<Record<SupplyPart, readonly string[]>>
  /** Where it is solved, one solve after the other. */
  readonly scratch: Workspace
}

/** Values other than those described; what is left out is as described. */
export interface SupplyValues {
  /** Ohms put in series with elements of a run, by element [Ω]. */
  readonly series?: ReadonlyMap<string, number>
  /** Ohms of each part as a share of its own. */
  readonly parts?: Readonly<Partial<Record<SupplyPart, number>>>
  /** Ohms of loads as a share of their own, by load; `LOAD_OFF` for one that is off. */
  readonly loads?: ReadonlyMap<string, number>
}

/** A load that is off has so many times its ohms. */
export const LOAD_OFF = 1e9

/** Share of a line's source impedance that stays with its EMF; the rest may change. */
const REST = 0.01

export const loadElement = (id: string): string => `lumped:${id}`
const behindSource = (element: string): string => `behind:${element}`

/** What arrives at the tub, in the order in which it is measured. */
function arrivingAt({ tub }: SupplySite): readonly FeedFunction[] {
  const last = tub.supply.cables.filter(each => each.to === BOX)
  const here = new Set(last.flatMap(each => each.conductors.map(one => one.function)))
  return FEED_FUNCTIONS.filter(each => here.has(each))
}

function stripJob(site: SupplySite, names: readonly FeedFunction[]): Job {
  const { region, supply } = site.tub
  const catalogue = new Map(
    supply.devices.map((each): readonly [string, SupplyDevice] => {
      const device = site.devices.get(each.id)
      invariant(device !== undefined, `no supply device ${each.id}: check the survey first`)
      return [each.device, device]
    }),
  )
  const tub: Tub = { id: 'supply', region, supply, loads: [] }
  return jobOf(tub, terminalStrip(names, region), catalogue)
}

/** Every end where it was found, and those at the tub on the terminals of their names. */
function stripLanding(job: Job, exchanged: SupplySite['exchanged']): Landing {
  const [one, other] = exchanged ?? []
  const lands = (name: string): string | undefined =>
    name === one ? other : name === other ? one : name
  const ends = job.ends.map(end => {
    const at = end.board === BOX ? `${BOX}.${lands(end.function)}` : end.found
    return [end.id, at ?? 'insulated'] as const
  })
  return {
    schema: 'landing/1',
    survey: job.tub.id,
    box: job.box.id,
    ends: Object.fromEntries(ends),
    jumpers: {},
    straps: {},
    settings: { profile: '', currentLimit: entered<'A'>(0, '0 A') },
    adapters: {},
  }
}

/** A pole or switch that is closed stays so: its ohms may change, not its state. */
function closedForGood(element: Element): Element {
  if (element.kind !== 'contact' || !element.closed) return element
  const { id, between, closedOhms } = element
  return { kind: 'impedance', id, between, ohms: complex(closedOhms) }
}

/** An element with ohms of its own wherever a value may change. */
function changeable(element: Element): readonly Element[] {
  if (element.kind !== 'source') return [closedForGood(element)]
  const [first, second] = element.between
  const id = behindSource(element.id)
  return [
    { ...element, between: [id, second], ohms: scale(element.ohms, REST) },
    { kind: 'impedance', id, between: [first, id], ohms: scale(element.ohms, 1 - REST) },
  ]
}

/** Without the insulation of nodes that anything else joins to the reference: that draws microamps. */
function withoutInsulation(elements: readonly Element[]): readonly Element[] {
  const others = elements.filter(each => !isInsulation(each))
  const reached = reachedFrom(REFERENCE, others.flatMap(pairsOf))
  const isNeeded = (element: Element): boolean =>
    pairsOf(element).some(([a, b]) => !reached.has(a) || !reached.has(b))
  return elements.filter(each => !isInsulation(each) || isNeeded(each))
}

const isInsulation = ({ id }: Pick<Element, 'id'>): boolean => id.startsWith('insulation:')

function lumped(load: LumpedLoad): Element {
  const [a, b] = load.between
  return {
    kind: 'impedance',
    id: loadElement(load.id),
    between: [boardNode(BOX, stripNode(a)), boardNode(BOX, stripNode(b))],
    ohms: impedanceOf(load, load.amps),
  }
}

export type EndPair = readonly [FeedFunction, FeedFunction]

/** Every two conductors at the tub; of those that are one piece of metal there, the first. */
export function endPairs(ends: SupplyAlone['ends']): readonly EndPair[] {
  const all = [...ends]
  const apart = all.filter(([, node], index) => all.findIndex(each => each[1] === node) === index)
  return apart.flatMap(([a], index) => apart.slice(index + 1).map(([b]): EndPair => [a, b]))
}

const endOf = (ends: SupplyAlone['ends'], name: FeedFunction): NodeId => {
  const node = ends.get(name)
  invariant(node !== undefined, `no ${name} arrives at the tub`)
  return node
}

/** What lies between two conductors of a run at most: 5 nF, or poor insulation. Common practice, no source. */
const LEAK_OHMS = 0.5e6 // [Ω]
const NOTHING_OHMS = 1e15 // [Ω]

/** What may lie across a pair: the input of the meter, or a leak; nothing until a solve names it. */
const ACROSS = { meter: VOLT_METER.inputOhms, leak: LEAK_OHMS } as const
type Across = keyof typeof ACROSS

const acrossContact = (what: Across, [a, b]: EndPair): string => `${what}:${a}|${b}`

const acrossPairs = (ends: SupplyAlone['ends'], what: Across): readonly Element[] =>
  endPairs(ends).map(pair => ({
    kind: 'contact',
    id: acrossContact(what, pair),
    between: [endOf(ends, pair[0]), endOf(ends, pair[1])],
    closedOhms: ACROSS[what],
    openOhms: NOTHING_OHMS,
    closed: false,
  }))

/** Where each element sits that a conductor of a run may pass through. */
function placesOf(job: Job, elements: readonly Element[]): ReadonlyMap<string, SupplyPlace> {
  const places = new Map<string, SupplyPlace>()
  for (const end of job.ends)
    places.set(
      elementOfEnd(end),
      end.of === 'cable'
        ? { kind: 'cable', cable: end.owner }
        : { kind: 'device', device: end.owner, part: end.part },
    )
  for (const [device, { board }] of job.devices)
    for (const { kind, id: part } of board.parts)
      if (kind === 'pole' || kind === 'switch' || kind === 'fuse')
        places.set(partElement(device, part), { kind: 'device', device, part })
  for (const element of elements) {
    if (element.kind !== 'impedance' || !/^(?:behind:)?source:/u.test(element.id)) continue
    const at = element.between.find(each => job.devices.has(each.slice(0, each.indexOf(':'))))
    if (at !== undefined)
      places.set(element.id, { kind: 'source', before: at.slice(0, at.indexOf(':')) })
  }
  return places
}

/** The elements from a node back to the star point, nearest first; undefined where none lead there. */
function wayBack(
  from: NodeId,
  steps: readonly Element[],
  passed: ReadonlySet<NodeId>,
): readonly Element[] | undefined {
  if (from === REFERENCE) return []
  for (const step of steps) {
    if (step.kind === 'transformer' || !step.between.includes(from)) continue
    const next = step.between[0] === from ? step.between[1] : step.between[0]
    if (passed.has(next)) continue
    const rest = wayBack(next, steps, new Set([...passed, next]))
    if (rest) return [step, ...rest]
  }
  return undefined
}

function runOf(
  job: Job,
  elements: readonly Element[],
  places: ReadonlyMap<string, SupplyPlace>,
  name: FeedFunction,
): readonly RunStep[] {
  const steps = elements.filter(each => places.has(each.id) || each.kind === 'source')
  const end = job.ends.find(each => each.board === BOX && each.function === name)
  const last = end && steps.find(each => each.id === elementOfEnd(end))
  if (last?.kind !== 'impedance') return []
  const [start, tub] = last.between
  const way = wayBack(start, steps, new Set([start, tub])) ?? []
  return [...way.toReversed(), last].flatMap(({ id: element }) => {
    const place = places.get(element)
    return place ? [{ element, place }] : []
  })
}

function partsOf(
  wired: readonly Element[],
  places: ReadonlyMap<string, SupplyPlace>,
): SupplyAlone['elements'] {
  const partOf = ({ id }: Element): SupplyPart => {
    const place = places.get(id)
    if (place) return place.kind === 'source' ? 'source' : 'wiring'
    return isInsulation({ id }) ? 'insulation' : 'electronics'
  }
  const parts: Record<SupplyPart, string[]> = {
    source: [],
    wiring: [],
    insulation: [],
    electronics: [],
  }
  for (const each of wired) if (each.kind === 'impedance') parts[partOf(each)].push(each.id)
  return parts
}

const watchedDevices = (devices: Job['devices']): readonly WatchedDevice[] =>
  [...devices].flatMap(([device, { board }]) =>
    board.parts.flatMap(part => (part.kind === 'ground-fault' ? [{ device, part }] : [])),
  )

/**
 * The network of a tub's supply with lumped loads at the end of its run, compiled once.
 *
 * It is wired as a landing is, on a bare terminal strip in the place of the control box. Poles and
 * switches are closed, and every piece of a run is an impedance whose ohms may change.
 *
 * @returns fails with 'structure' only where the network itself has no meaning
 */
export function supplyAlone(site: SupplySite): Outcome<SupplyAlone, StructureFailure> {
  const names = arrivingAt(site)
  const job = stripJob(site, names)
  const { network } = wire(job, stripLanding(job, site.exchanged))
  const ends = new Map(names.map(each => [each, boardNode(BOX, stripNode(each))] as const))
  const loads = site.loads.map(lumped)
  const wired = site.isUnmetered
    ? network.elements.map(closedForGood)
    : network.elements.flatMap(changeable)
  const whole: Network = {
    ...network,
    elements: site.isUnmetered
      ? withoutInsulation([...wired, ...loads])
      : [...wired, ...loads, ...acrossPairs(ends, 'meter'), ...acrossPairs(ends, 'leak')],
  }
  const compiled = compileNetwork(whole)
  if (!compiled.ok) return fail(compiled.failure)
  const places = placesOf(job, wired)
  return ok({
    site,
    network: whole,
    compiled: compiled.value,
    ends,
    runs: new Map(names.map(name => [name, runOf(job, wired, places, name)] as const)),
    conductors: new Map(
      site.tub.supply.cables.flatMap(({ id, conductors }) =>
        conductors.map(each => [`${id}.${each.id}`, `cable:${id}.${each.id}`] as const),
      ),
    ),
    groundFaults: watchedDevices(site.devices),
    elements: partsOf(wired, places),
    scratch: makeWorkspace(compiled.value),
  })
}

/** The factors by which impedances of the described network differ from its values. */
export function factorsOf(alone: SupplyAlone, values: SupplyValues): Map<string, number> {
  const { parts, series, loads } = values
  const factors = new Map<string, number>()
  for (const part of SUPPLY_PARTS) {
    const share = parts?.[part]
    if (share !== undefined) for (const id of alone.elements[part]) factors.set(id, share)
  }
  for (const [id, share] of loads ?? []) factors.set(loadElement(id), share)
  for (const [id, ohms] of series ?? []) {
    const own = ohmsOf(alone, id)
    factors.set(id, ((factors.get(id) ?? 1) * own + ohms) / own)
  }
  return factors
}

/** Ohms of an element as described [Ω]. */
export function ohmsOf({ compiled, network }: SupplyAlone, id: string): number {
  const element = network.elements[compiled.elementIndexes.get(id) ?? -1]
  invariant(element?.kind === 'impedance', `${id} is no impedance of the supply`)
  return magnitude(element.ohms)
}

/**
 * Nodes that at most so many ohms of run or load join, pair by pair; insulation, electronics and
 * the meter join none.
 */
export function pairsWithin(
  { network, elements }: SupplyAlone,
  factors: ReadonlyMap<string, number>,
  ohms: number,
): readonly Pair[] {
  const leaks = new Set([...elements.insulation, ...elements.electronics])
  return network.elements.flatMap(each => {
    if (each.kind === 'source') return [each.between]
    if (each.kind !== 'impedance' || leaks.has(each.id)) return []
    return magnitude(each.ohms) * (factors.get(each.id) ?? 1) <= ohms ? [each.between] : []
  })
}

/** The supply with other ohms (`factorsOf`): of the same shape, solved where the first one is. */
export const supplyWith = (
  alone: SupplyAlone,
  factors: ReadonlyMap<string, number>,
): SupplyAlone => ({ ...alone, compiled: scaleImpedances(alone.compiled, factors) })

/** A solved supply, by its own names. At nominal source, RMS. */
export interface SolvedSupply {
  /** Volts from one conductor to another at the tub [V]. */
  between(a: FeedFunction, b: FeedFunction): Complex
  /** Volts from a conductor at the tub to the star point [V]. */
  at(name: FeedFunction): Complex
  /** Current into the first node of an element [A]. */
  current(element: string): Complex
  amps(load: string): number
  /** The sum of what a ground-fault device watches [A]; whether its electronics have their volts. */
  watched(device: WatchedDevice): { readonly amps: number; readonly isAwake: boolean }
}

/**
 * Solves the supply, with the meter across one pair and a leak across another where they are named.
 *
 * The result reads the workspace of the supply: it holds until the next solve.
 */
export function solveSupply(
  alone: SupplyAlone,
  across: Readonly<Partial<Record<Across, EndPair>>> = {},
): SolvedSupply {
  const { compiled, scratch } = alone
  const states = compiled.initialStates.slice()
  const put = (what: Across, pair: EndPair | undefined): void => {
    const index = pair && compiled.contactIndexes.get(acrossContact(what, pair))
    if (index !== undefined) states[index] = 1
  }
  put('meter', across.meter)
  put('leak', across.leak)
  solveInto(compiled, states, scratch)
  const volts = (node: NodeId): Complex => {
    const index = compiled.nodeIndexes.get(node)
    invariant(index !== undefined, `the supply has no node ${node}`)
    return complex(scratch.re[index] ?? 0, scratch.im[index] ?? 0)
  }
  const current = (element: string): Complex => {
    const index = compiled.elementIndexes.get(element)
    return index === undefined ? ZERO : currentAt(compiled, scratch, index)
  }
  const at = (name: FeedFunction): Complex => volts(endOf(alone.ends, name))
  return {
    at,
    between: (a, b) => subtract(at(a), at(b)),
    current,
    amps: load => magnitude(current(loadElement(load))),
    watched: ({ device, part }) => {
      const [a, b] = part.poweredFrom ?? []
      const sums = part.sums.map(id => current(partElement(device, id)))
      const across =
        a === undefined || b === undefined
          ? Number.POSITIVE_INFINITY
          : magnitude(subtract(volts(boardNode(device, a)), volts(boardNode(device, b))))
      return { amps: magnitude(sums.reduce(add, ZERO)), isAwake: across >= LIMITS.awakeVolts }
    },
  }
}
