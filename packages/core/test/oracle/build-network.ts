import type { LoadCircuit } from './load-circuits.ts'
import { loadCircuits } from './load-circuits.ts'
import type { CurveName } from './quantities.ts'
import { CURVES, readQuantity } from './quantities.ts'
import type { Overrides, RawLanding, RawPart } from './raw-files.ts'
import type { Board, OracleJob } from './read-job.ts'
import { earthLeadOf, innerNode, placeOfEnd, terminalUnder } from './read-job.ts'
import type { Phasor } from './source-lines.ts'
import { NO_VOLTS } from './source-lines.ts'
import { tapVolts } from './transformer-taps.ts'

/** Both an impedance between two nodes; `''` is the reference. */
export interface Branch {
  readonly a: string
  readonly b: string
  readonly r: number
  readonly x: number
  /** Volts in series, positive towards `a`. */
  readonly emf: Phasor
  readonly what: 'source' | 'copper' | 'jumper' | 'load' | 'probe' | 'part' | 'insulation'
  readonly board?: string
  /** A branch that opens: its other resistance. Infinite: nothing there. */
  readonly open?: number
}

/** Two pairs of nodes coupled by an ideal ratio, its series resistance on the secondary. */
export interface Winding {
  readonly name: string
  readonly primary: readonly [string, string]
  readonly secondary: readonly [string, string]
  readonly ratio: number
  readonly r: number
  readonly plate: number
  readonly rated: { readonly primary: number; readonly secondary: number }
  /** The branch of its magnetising current. */
  readonly magnetising: number
}

export interface Switch {
  /** `board.part`, or `touch end`. */
  readonly name: string
  readonly kind: 'fuse' | 'contact' | 'pole' | 'switch' | 'touch'
  readonly isLimit: boolean
  /** A contact that is closed while nothing is commanded. */
  readonly restsClosed: boolean
  readonly board: string
  /** Amps; of a contact the lower of those given. */
  readonly rated: number
  readonly branch: number
}

export interface GroundFault {
  readonly name: string
  readonly board: string
  readonly sums: readonly number[]
  readonly trip: { readonly from: number; readonly to: number }
  readonly poweredFrom?: readonly [string, string]
}

/** What a landing makes: branches by name, and what to look at in them. */
export interface Network {
  readonly branches: readonly Branch[]
  readonly windings: readonly Winding[]
  readonly switches: readonly Switch[]
  readonly groundFaults: readonly GroundFault[]
  readonly circuits: readonly LoadCircuit[]
  readonly probes: readonly {
    readonly id: string
    readonly curve: CurveName
    readonly place: string
    readonly branch: number
  }[]
  readonly jumpers: readonly {
    readonly name: string
    readonly rated: number
    readonly branch: number
  }[]
  /** Branch of each load circuit, in the order of `circuits`. */
  readonly circuitBranches: readonly number[]
  /** Conductors, leads and tails that have both sides on something. */
  readonly conductors: readonly {
    readonly name: string
    readonly rated: number
    readonly branch: number
  }[]
  /** Per terminal with ends on it, the branches of those ends. */
  readonly landed: ReadonlyMap<string, readonly LandedEnd[]>
  /** Branches of the earth conductors, by name. */
  readonly earths: readonly { readonly name: string; readonly branch: number }[]
  readonly metal: readonly { readonly name: string; readonly node: string }[]
  /** What the box needs its volts for: without them no command acts. */
  readonly electronics: readonly {
    readonly across: readonly [string, string]
    readonly volts: number
  }[]
}

/** A branch with one side on a terminal. */
export interface LandedEnd {
  readonly branch: number
  /** 1 where amps that the branch counts positive leave the terminal, −1 where they arrive. */
  readonly sign: 1 | -1
}

type Draft = { -readonly [Key in keyof Network]: Mutable<Network[Key]> }
type Mutable<T> =
  T extends ReadonlyMap<string, readonly (infer Each)[]>
    ? Map<string, Each[]>
    : T extends readonly (infer Each)[]
      ? Each[]
      : T

const CLOSED_OHMS = 2e-3
const OPEN_OHMS = 1e9
const JUMPER_OHMS = 1e-3
const TOUCH_OHMS = 2000
const METAL_OHMS = 20e6
const BOARD_OHMS = 50e6
const LOW_VOLTAGE_OHMS = 5e6
const GROUND_FAULT_OHMS = 14_400

/** Builds the network of a landing from the surveyed files; `isTurned`: with the plug the other way. */
export function buildNetwork(
  job: OracleJob,
  landing: RawLanding,
  overrides: Overrides,
  isTurned = false,
): Network {
  const draft: Draft = {
    branches: [],
    windings: [],
    switches: [],
    groundFaults: [],
    circuits: loadCircuits(job, landing),
    probes: [],
    jumpers: [],
    circuitBranches: [],
    conductors: [],
    landed: new Map(),
    earths: [],
    metal: [],
    electronics: [],
  }
  addSources(job, draft, isTurned)
  for (const board of job.boards) addBoard(job, draft, board, landing)
  addWires(job, draft, landing)
  addLoads(job, draft, overrides)
  return draft
}

const add = (draft: Draft, branch: Partial<Branch> & Pick<Branch, 'a' | 'b' | 'r' | 'what'>) =>
  draft.branches.push({ x: 0, emf: NO_VOLTS, ...branch }) - 1

/** The lines, neutral and earth of the source, each circuit its own. */
function addSources(job: OracleJob, draft: Draft, isTurned: boolean): void {
  job.circuits.forEach(({ first, lines }, at) => {
    const fed = job.boards.find(each => each.id === first)?.fedAt ?? {}
    const arrives = [...lines, ...(job.hasNeutral ? [NEUTRAL] : []), EARTH]
    for (const [name, emf] of arrives) {
      const node = fed[isTurned && at === 0 ? (TURNED[name] ?? name) : name]
      if (node === undefined) continue
      const branch = add(draft, { a: node, b: '', r: job.sourceOhms, emf, what: 'source' })
      if (name === 'earth')
        draft.earths.push({ name: at === 0 ? 'source' : `source of ${first}`, branch })
    }
  })
}

const NEUTRAL: readonly [string, Phasor] = ['neutral', NO_VOLTS]
const EARTH: readonly [string, Phasor] = ['earth', NO_VOLTS]
const TURNED: Readonly<Record<string, string>> = { leg1: 'neutral', neutral: 'leg1' }

function addBoard(job: OracleJob, draft: Draft, board: Board, landing: RawLanding): void {
  for (const part of board.parts) addPart(job, draft, board, part, landing)
  for (const part of board.parts)
    if (part.kind === 'ground-fault') addGroundFault(draft, board, part)
  for (const jumper of board.jumpers) {
    const set = landing.jumpers[jumper.id] ?? jumper.factory
    const position = jumper.positions.find(each => each.id === set)
    if (!position) throw new Error(`jumper ${jumper.id} has no position "${set}"`)
    for (const [a, b] of position.joins) {
      const ends = { a: `${board.id}.${a}`, b: `${board.id}.${b}` }
      const branch = add(draft, { ...ends, r: JUMPER_OHMS, what: 'jumper', board: board.id })
      draft.jumpers.push({ name: jumper.id, rated: readQuantity(jumper.rated), branch })
    }
  }
  for (const node of mainsNodes(board))
    if (node !== board.earth) addInsulation(draft, BOARD_OHMS, node, board.earth, board.id)
  draft.metal.push({ name: board.id, node: board.earth })
}

function addInsulation(draft: Draft, r: number, a: string, b: string, board?: string): void {
  add(draft, { a, b, r, what: 'insulation', ...(board === undefined ? {} : { board }) })
}

const nodesOf = (board: Board, pair: readonly [string, string]): [string, string] => [
  `${board.id}.${pair[0]}`,
  `${board.id}.${pair[1]}`,
]

const needed = <T>(value: T | undefined, what: string): T => {
  if (value === undefined) throw new Error(`${what} is not given`)
  return value
}

function addPart(
  job: OracleJob,
  draft: Draft,
  board: Board,
  part: RawPart,
  landing: RawLanding,
): void {
  switch (part.kind) {
    case 'ground-fault':
      return
    case 'transformer':
      addTransformer(draft, board, part, landing)
      return
    case 'electronics': {
      const [a, b] = nodesOf(board, needed(part.across, part.id))
      const volts = readQuantity(part.volts as string)
      const r = (volts * volts) / readQuantity(needed(part.power, part.id))
      add(draft, { a, b, r, what: 'part', board: board.id })
      if (board.id === 'box') draft.electronics.push({ across: [a, b], volts })
      return
    }
    default:
      addSwitch(job, draft, board, part as RawPart & { kind: Switch['kind'] })
  }
}

function addSwitch(
  job: OracleJob,
  draft: Draft,
  board: Board,
  part: RawPart & { readonly kind: Switch['kind'] },
): void {
  const [a, b] = nodesOf(board, needed(part.across, part.id))
  const branch = add(draft, {
    a,
    b,
    r: CLOSED_OHMS,
    open: part.leakage === undefined ? OPEN_OHMS : job.legVolts / readQuantity(part.leakage),
    what: 'part',
    board: board.id,
  })
  draft.switches.push({
    name: `${board.id}.${part.id}`,
    kind: part.kind,
    isLimit: part.role === 'limit',
    restsClosed: part.rest === 'closed',
    board: board.id,
    rated: ratedAmps(job, board, part.rated),
    branch,
  })
}

function ratedAmps(job: OracleJob, board: Board, rated: RawPart['rated']): number {
  // a pole of the box names no circuit: the first
  if (rated === undefined)
    return needed(job.circuits[job.circuitByDevice.get(board.id) ?? 0], board.id).breaker
  if (typeof rated === 'string') return readQuantity(rated)
  const motor = rated.motor === undefined ? Infinity : readQuantity(rated.motor)
  return Math.min(readQuantity(rated.resistive), motor)
}

function addTransformer(draft: Draft, board: Board, part: RawPart, landing: RawLanding): void {
  const volts = part.volts as { readonly primary: string; readonly secondary: string }
  const [plate, low] = [tapVolts(board, part, landing), readQuantity(volts.secondary)]
  const rating = readQuantity(part.rated as string)
  const primary = nodesOf(board, needed(part.primary, part.id))
  const secondary = nodesOf(board, needed(part.secondary, part.id))
  const magnetising = add(draft, {
    a: primary[0],
    b: primary[1],
    r: 0,
    x: (plate * plate) / (0.2 * rating),
    what: 'part',
    board: board.id,
  })
  draft.windings.push({
    name: `${board.id}.${part.id}`,
    primary,
    secondary,
    ratio: low / plate,
    r: (0.1 * low * low) / rating,
    plate,
    rated: { primary: rating / plate, secondary: rating / low },
    magnetising,
  })
  if (part.isolating !== false)
    addInsulation(draft, LOW_VOLTAGE_OHMS, secondary[1], board.earth, board.id)
}

function addGroundFault(draft: Draft, board: Board, part: RawPart): void {
  const sums = needed(part.sums, part.id).map(id => {
    const found = draft.switches.findIndex(each => each.name === `${board.id}.${id}`)
    if (found < 0) throw new Error(`${part.id} sums "${id}", which is no pole or switch`)
    return found
  })
  const trip = needed(part.trip, part.id)
  const poweredFrom = part.poweredFrom ? nodesOf(board, part.poweredFrom) : undefined
  if (poweredFrom) {
    const [a, b] = poweredFrom
    add(draft, { a, b, r: GROUND_FAULT_OHMS, what: 'part', board: board.id })
  }
  draft.groundFaults.push({
    name: `${board.id}.${part.id}`,
    board: board.id,
    sums,
    trip: { from: readQuantity(trip.from), to: readQuantity(trip.to) },
    ...(poweredFrom ? { poweredFrom } : {}),
  })
}

/** The nodes with a mains terminal or a mains part, without what hangs on a secondary. */
function mainsNodes(board: Board): ReadonlySet<string> {
  const marked = new Set(
    board.terminals.filter(each => each.class === 'mains').map(each => each.node),
  )
  const low = lowVoltageNodes(board, marked)
  const touched = board.parts.flatMap(part =>
    [part.across, part.primary, part.poweredFrom, ownSecondary(part, false)].flatMap(pair =>
      pair ? nodesOf(board, pair) : [],
    ),
  )
  return new Set([...marked, ...touched.filter(node => !low.has(node))])
}

/** The secondary of a transformer that isolates, or of one that does not. */
const ownSecondary = (part: RawPart, isIsolating: boolean): RawPart['secondary'] =>
  (part.isolating !== false) === isIsolating ? part.secondary : undefined

/** Isolated secondaries and what parts hang on them, up to any node with a mains terminal. */
function lowVoltageNodes(board: Board, mains: ReadonlySet<string>): ReadonlySet<string> {
  const low = new Set(
    board.parts.flatMap(part => {
      const secondary = ownSecondary(part, true)
      return secondary ? nodesOf(board, secondary) : []
    }),
  )
  const pairs = board.parts.flatMap(part => (part.across ? [nodesOf(board, part.across)] : []))
  for (let before = -1; before !== low.size; ) {
    before = low.size
    for (const pair of pairs)
      if (pair.some(node => low.has(node)))
        for (const node of pair) if (!mains.has(node)) low.add(node)
  }
  return low
}

/** Cables, leads and tails; a wire with an end off carries nothing, but its tip may be touched. */
function addWires(job: OracleJob, draft: Draft, landing: RawLanding): void {
  for (const wire of job.wires) {
    const terminals = wire.ends.map(end => terminalUnder(job, landing, end))
    const nodes = [
      ...(wire.inner === undefined ? [] : [wire.inner]),
      ...terminals.flatMap(terminal => (terminal ? [terminal.node] : [])),
    ]
    const [a, b] = nodes
    if (a !== undefined && b !== undefined) {
      const branch = add(draft, { a, b, r: wire.ohms, what: 'copper' })
      if (wire.isEarth) draft.earths.push({ name: wire.id, branch })
      draft.conductors.push({ name: wire.id, rated: wire.carries, branch })
      terminals.forEach((terminal, at) => {
        // the first end of a cable is the first side of its branch; the end of a lead is the second
        const sign = wire.inner === undefined && at === 0 ? 1 : -1
        if (terminal) pushLanded(draft, terminal.name, { branch, sign })
      })
    } else if (a !== undefined) {
      for (const end of wire.ends)
        if (placeOfEnd(job, landing, end) === 'loose') addTouch(draft, end, a, wire.ohms)
    }
  }
}

function pushLanded(draft: Draft, terminal: string, end: LandedEnd): void {
  const own = draft.landed.get(terminal)
  if (own) own.push(end)
  else draft.landed.set(terminal, [end])
}

function addTouch(draft: Draft, end: string, node: string, ohms: number): void {
  const r = ohms + TOUCH_OHMS
  const branch = add(draft, { a: node, b: '', r, open: Infinity, what: 'insulation' })
  const rest = {
    kind: 'touch',
    isLimit: false,
    restsClosed: false,
    board: '',
    rated: Infinity,
  } as const
  draft.switches.push({ name: end, branch, ...rest })
}

function addLoads(job: OracleJob, draft: Draft, overrides: Overrides): void {
  for (const { a, b, r, x } of draft.circuits)
    draft.circuitBranches.push(add(draft, { a, b, r, x, what: 'load' }))
  for (const load of job.loads) {
    const earth = earthLeadOf(load)
    if (earth !== undefined) addMetal(draft, load, earth)
    if (load.kind !== 'probe') continue
    const curve = overrides.probeCurves?.[load.id] ?? needed(load.curve, load.id)
    const [first, second] = load.leads.filter(lead => lead.function !== 'earth')
    const branch = add(draft, {
      a: innerNode(load.id, needed(first, load.id).id),
      b: innerNode(load.id, needed(second, load.id).id),
      r: CURVES[curve].ohmsAt25,
      what: 'probe',
    })
    draft.probes.push({ id: load.id, curve, place: needed(load.place, load.id), branch })
  }
}

function addMetal(
  draft: Draft,
  load: { readonly id: string; readonly leads: readonly { readonly id: string }[] },
  earth: string,
): void {
  const metal = innerNode(load.id, earth)
  for (const lead of load.leads)
    if (lead.id !== earth) addInsulation(draft, METAL_OHMS, innerNode(load.id, lead.id), metal)
  draft.metal.push({ name: load.id, node: metal })
}
