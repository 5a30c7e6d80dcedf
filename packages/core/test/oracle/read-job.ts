import { parse } from 'yaml'
import { conductorLimits } from './conductor-limits.ts'
import { copperOhms, readArea, readQuantity } from './quantities.ts'
import type {
  RawBoard,
  RawBox,
  RawConnector,
  RawDevice,
  RawFeed,
  RawJumper,
  RawLanding,
  RawLoad,
  RawPart,
  RawSurvey,
} from './raw-files.ts'
import { sourceOf } from './source-lines.ts'
import type { SupplyCircuit } from './supply-circuits.ts'
import { circuitByDevice, circuitsOf } from './supply-circuits.ts'

export interface Terminal {
  /** `board.terminal` */
  readonly name: string
  /** `board.node` */
  readonly node: string
  readonly class: 'mains' | 'earth' | 'low-voltage' | 'sensor'
  readonly rated: number
  /** How many ends it takes. */
  readonly takes: number
  /** Least and greatest copper area that it holds [mm²], where that is said. */
  readonly holds?: readonly [from: number, to: number]
}

export interface Board {
  readonly id: string
  readonly earth: string
  readonly terminals: readonly Terminal[]
  readonly connectors: readonly RawConnector[]
  readonly parts: readonly RawPart[]
  readonly jumpers: readonly RawJumper[]
  /** Where the supply arrives; empty for the box. */
  readonly fedAt: Readonly<Record<string, string>>
}

/** A conductor end that somebody lands. */
export interface End {
  readonly name: string
  /** The board it belongs on. */
  readonly board: string
  /** Where its file says that it sits; absent for what only a plan can say. */
  readonly surveyed?: string
  /** Copper [mm²]. */
  readonly area: number
  /** A moulded end stays where it is. */
  readonly fixed: boolean
}

/** A piece of copper with one end on a board node or inside a load, or with two ends. */
export interface Wire {
  readonly id: string
  readonly ohms: number
  /** What its size carries [A]. */
  readonly carries: number
  readonly isEarth: boolean
  /** Of a cable: the known breaker of its circuit [A]. */
  readonly breaker?: number
  readonly ends: readonly string[]
  /** The node at its other side, where that side is no end. */
  readonly inner?: string
}

export interface OracleJob {
  readonly survey: RawSurvey
  readonly box: RawBox
  readonly plan: RawLanding
  /** Devices from the panel to the tub, then the box. */
  readonly boards: readonly Board[]
  readonly loads: readonly RawLoad[]
  readonly ends: ReadonlyMap<string, End>
  readonly wires: readonly Wire[]
  readonly terminals: ReadonlyMap<string, Terminal>
  readonly feed: RawFeed
  readonly band: { readonly high: number; readonly low: number }
  /** Volts of leg 1 to the reference. */
  readonly legVolts: number
  readonly hertz: number
  /** Of one line, neutral or earth of the source, with its feeder [Ω]. */
  readonly sourceOhms: number
  readonly hasNeutral: boolean
  /** Whether line and neutral of the first device may be exchanged by turning a plug. */
  readonly isTurnable: boolean
  readonly circuits: readonly SupplyCircuit[]
  /** Index of the circuit of each device; the box belongs to none. */
  readonly circuitByDevice: ReadonlyMap<string, number>
}

const TAIL = { length: 0.5, size: '8 AWG' }
const LEAD_LENGTH = 1
const SOURCE_OHMS = 0.025

/** Reads survey, box and devices from their YAML texts, and derives ends, copper and feed. */
export function readJob(
  files: {
    readonly survey: string
    readonly box: string
    readonly devices: readonly string[]
  },
  plan: RawLanding,
): OracleJob {
  const survey = parse(files.survey) as RawSurvey
  const box = parse(files.box) as RawBox
  const devices = files.devices.map(text => parse(text) as RawDevice)
  const boards = [...deviceBoards(survey, devices), boardOf('box', box.board, {})]
  const loads = loadsOf(survey, box)
  const fedAt = new Map(boards.map(each => [each.id, each.fedAt]))
  const circuits = circuitsOf(survey, box, id => fedAt.get(id) ?? {})
  const byDevice = circuitByDevice(survey, circuits)
  const breakerAt = (device: string) => circuits[byDevice.get(device) ?? 0]?.knownBreaker
  const cables = cablesOf(survey, plan, breakerAt)
  const tails = tailsOf(survey, devices)
  const ends = [...cables.ends, ...tails.ends, ...loads.flatMap(leadEnds)]
  const { supply } = survey
  const source = sourceOf(supply.system)
  const first = boards[0]?.fedAt ?? {}
  return {
    survey,
    box,
    plan,
    boards,
    loads,
    ends: new Map(ends.map(end => [end.name, end])),
    wires: [...cables.wires, ...tails.wires, ...loads.flatMap(leadWires)],
    terminals: new Map(boards.flatMap(board => board.terminals.map(each => [each.name, each]))),
    feed: feedOf(survey, box),
    band: bandOf(survey.region),
    legVolts: source.lines.leg1?.re ?? 0,
    hertz: readQuantity(supply.frequency),
    sourceOhms: sourceOhms(supply),
    hasNeutral: source.hasNeutral,
    isTurnable:
      supply.turnable === true &&
      source.hasNeutral &&
      first['leg1'] !== undefined &&
      first['neutral'] !== undefined,
    circuits,
    circuitByDevice: byDevice,
  }
}

/** Of one conductor of the source: surveyed or assumed, and the copper of its feeder, one way [Ω]. */
function sourceOhms({ sourceImpedance, feeder }: RawSurvey['supply']): number {
  const own = sourceImpedance === undefined ? SOURCE_OHMS : readQuantity(sourceImpedance)
  if (!feeder) return own
  return own + copperOhms({ length: readQuantity(feeder.length), area: readArea(feeder.size) })
}

/** Whether a conductor or lead of that function is an earth. */
export const isEarth = (name: string): boolean => name === 'earth' || name === 'second-earth'

export const isMotor = (load: RawLoad): boolean =>
  load.kind === 'pump' || load.kind === 'circulation-pump' || load.kind === 'blower'

export const earthLeadOf = (load: RawLoad): string | undefined =>
  load.leads.find(lead => lead.function === 'earth')?.id

/** The node inside a load that a lead starts from. */
export const innerNode = (load: string, lead: string): string => `${load}/${lead}`

/** The terminal an end sits on, or undefined when it is off. */
export function terminalUnder(job: OracleJob, landing: RawLanding, end: string) {
  const at = placeOfEnd(job, landing, end)
  if (at === 'insulated' || at === 'loose') return undefined
  const terminal = job.terminals.get(at)
  if (!terminal) throw new Error(`no terminal "${at}" for ${end}`)
  return terminal
}

/** `board.terminal`, `insulated` or `loose`. */
export function placeOfEnd(job: OracleJob, landing: RawLanding, end: string): string {
  const at = landing.ends[end] ?? job.ends.get(end)?.surveyed
  if (at === undefined) throw new Error(`the landing says nothing of ${end}`)
  return at
}

function bandOf(region: string): { high: number; low: number } {
  if (region === 'US' || region === 'CA') return { high: 126 / 120, low: 110 / 120 }
  if (region === 'NZ') return { high: 1.06, low: 0.94 }
  return { high: 1.1, low: region === 'EU' ? 0.9 : 0.94 }
}

function boardOf(id: string, raw: RawBoard, fedAt: Readonly<Record<string, string>>): Board {
  return {
    id,
    earth: `${id}.${raw.earth}`,
    terminals: raw.terminals.map(each => ({
      name: `${id}.${each.id}`,
      node: `${id}.${each.node}`,
      class: each.class,
      rated: readQuantity(each.rated),
      takes: each.conductors ?? 1,
      ...(each.holds ? { holds: [readArea(each.holds.from), readArea(each.holds.to)] } : {}),
    })),
    connectors: raw.connectors ?? [],
    parts: raw.parts ?? [],
    jumpers: raw.jumpers ?? [],
    fedAt: Object.fromEntries(Object.entries(fedAt).map(([key, node]) => [key, `${id}.${node}`])),
  }
}

function deviceFile(devices: readonly RawDevice[], id: string): RawDevice {
  const found = devices.find(each => each.id === id)
  if (!found) throw new Error(`no device file "${id}"`)
  return found
}

const deviceBoards = (survey: RawSurvey, devices: readonly RawDevice[]): Board[] =>
  survey.supply.devices.map(each => {
    const file = deviceFile(devices, each.device)
    return boardOf(each.id, file.board, file.fedAt)
  })

/** The loads surveyed, and those supplied that the survey does not already have. */
function loadsOf(survey: RawSurvey, box: RawBox): RawLoad[] {
  const isSame = (a: RawLoad, b: RawLoad): boolean =>
    a.id === b.id || (a.kind === b.kind && (a.kind !== 'probe' || a.place === b.place))
  const carton = box.supplied ?? []
  // the keypad of the box is the only one that it understands
  const isOldKeypad = (own: RawLoad): boolean =>
    own.kind === 'keypad' && carton.some(each => each.kind === 'keypad')
  const kept = survey.loads.filter(own => !isOldKeypad(own))
  return [...kept, ...carton.filter(each => !kept.some(own => isSame(own, each)))]
}

/** What a conductor of a size and a length [m] is in the network. */
const copperOf = (size: string, length: number): Pick<Wire, 'ohms' | 'carries'> => ({
  ohms: copperOhms({ length, area: readArea(size) }),
  carries: conductorLimits(size).carries,
})

function cablesOf(
  survey: RawSurvey,
  plan: RawLanding,
  breakerAt: (device: string) => number | undefined,
): { ends: End[]; wires: Wire[] } {
  const ends: End[] = []
  const wires: Wire[] = []
  for (const cable of survey.supply.cables) {
    const breaker = breakerAt(cable.from)
    for (const conductor of cable.conductors) {
      const id = `${cable.id}.${conductor.id}`
      const near = nearName(plan, id, cable.from)
      const far = `${id}@${cable.to}`
      const isFixed = cable.moulded ?? false
      const area = readArea(conductor.size)
      ends.push({
        name: near,
        board: cable.from,
        surveyed: `${cable.from}.${conductor.from}`,
        area,
        fixed: isFixed,
      })
      ends.push({
        name: far,
        board: cable.to,
        ...(conductor.to === undefined ? {} : { surveyed: `${cable.to}.${conductor.to}` }),
        area,
        fixed: false,
      })
      const copper = copperOf(conductor.size, readQuantity(cable.length))
      wires.push({
        id,
        ...copper,
        isEarth: isEarth(conductor.function),
        ...(breaker === undefined ? {} : { breaker }),
        ends: [near, far],
      })
    }
  }
  return { ends, wires }
}

/** The end nearer the panel is named by its device, or plainly `@device`: as the plan does. */
function nearName(plan: RawLanding, conductor: string, device: string): string {
  const plain = `${conductor}@device`
  return Object.hasOwn(plan.ends, plain) ? plain : `${conductor}@${device}`
}

function tailsOf(survey: RawSurvey, devices: readonly RawDevice[]): { ends: End[]; wires: Wire[] } {
  const all = survey.supply.devices.flatMap(each =>
    (deviceFile(devices, each.device).tails ?? []).map(tail => ({ board: each.id, tail })),
  )
  return {
    ends: all.map(({ board, tail }) => ({
      name: `${board}.${tail.id}`,
      board,
      surveyed: `${board}.${tail.lands}`,
      area: readArea(TAIL.size),
      fixed: false,
    })),
    wires: all.map(({ board, tail }) => ({
      id: `${board}.${tail.id}`,
      ...copperOf(TAIL.size, TAIL.length),
      isEarth: false,
      ends: [`${board}.${tail.id}`],
      inner: `${board}.${tail.node}`,
    })),
  }
}

const leadEnds = (load: RawLoad): End[] =>
  load.leads.map(lead => ({
    name: `${load.id}.${lead.id}`,
    board: 'box',
    area: readArea(lead.size),
    fixed: false,
  }))

const leadWires = (load: RawLoad): Wire[] =>
  load.leads.map(lead => ({
    id: `${load.id}.${lead.id}`,
    ...copperOf(lead.size, LEAD_LENGTH),
    isEarth: lead.function === 'earth',
    ends: [`${load.id}.${lead.id}`],
    inner: innerNode(load.id, lead.id),
  }))

/** The feed that uses most of what arrives at the box. */
function feedOf(survey: RawSurvey, box: RawBox): RawFeed {
  const arriving = new Set(
    survey.supply.cables
      .filter(cable => cable.to === 'box')
      .flatMap(cable => cable.conductors.map(each => each.function)),
  )
  const size = (feed: RawFeed): number => Object.keys(feed.lands).length
  const ofSystem = box.feeds.filter(feed => feed.system === survey.supply.system)
  const served = ofSystem.filter(feed => Object.keys(feed.lands).every(key => arriving.has(key)))
  const chosen =
    served.toSorted((a, b) => size(b) - size(a))[0] ??
    ofSystem.toSorted((a, b) => size(a) - size(b))[0]
  if (!chosen) throw new Error(`the box has no feed for ${survey.supply.system}`)
  return chosen
}
