import type { Complex } from '../../base/complex.ts'
import { complex } from '../../base/complex.ts'
import type { Element, Network, NodeId, Pair } from '../../engines/circuit/network.ts'
import { pairsOf } from '../../engines/circuit/network.ts'
import type { Board, Jumper, Part } from '../board/board.ts'
import { LINES } from '../board/board.ts'
import { conductorResistance } from '../conductor.ts'
import type { End, Job, Tub } from '../job.ts'
import { BOX, boardOf, findTerminal } from '../job.ts'
import type { Landing } from '../landing/landing.ts'
import { CURVES, isPowered } from '../load/load.ts'
import type { SupplyCircuit } from '../supply/circuits.ts'
import { circuitsOf } from '../supply/circuits.ts'
import type { Supply } from '../supply/supply.ts'
import { drawOf, impedanceOf } from './draw.ts'
import { EMFS, FIGURES, LEG_VOLTS, WITHOUT_NEUTRAL } from './figures.ts'
import { reachedFrom } from './reach.ts'

/** The node of the source's star point: every potential is counted from it. */
export const REFERENCE = 'earth'

export interface WireOptions {
  /** Where uncertain draws lie; at their greatest where this is left out. */
  readonly shares?: Shares
  /** The plug turned round: line where neutral was. */
  readonly turned?: boolean
  /**
   * For what an empty box offers: every jumper as contacts, one a position, so that one compiled
   * network serves all, and no insulation but that of low voltage, which decides no offer.
   */
  readonly forOffers?: boolean
  /** Loose ends that a person touches through 2 kΩ. */
  readonly touch?: readonly string[]
}

/** Where uncertain draws lie between their least (0) and their greatest (1). */
export interface Shares {
  /** Of draws that the survey gives as a range or as one of some. */
  readonly ranged: number
  /** Of draws that nobody knows: the greatest is what their contacts may carry. */
  readonly unknown: number
}

export const GREATEST: Shares = { ranged: 1, unknown: 1 }

/** A landing as a network, and the way back from nodes and elements to names. */
export interface Wiring {
  readonly network: Network
  /** All elements, those that nothing feeds included. */
  readonly all: readonly Element[]
  /** Nodes that no path joins to the reference: they carry nothing. */
  readonly dead: ReadonlySet<NodeId>
}

export const boardNode = (board: string, node: string): NodeId => `${board}:${node}`
export const leadNode = (load: string, lead: string): NodeId => `${load}/${lead}`
const tailNode = (device: string, node: string): NodeId => boardNode(device, node)

/** The node an end is on: its terminal's, or its own where it is off. */
export function endNode(job: Job, landing: Landing, end: End): NodeId {
  const target = landing.ends[end.id]
  const terminal = target === undefined ? undefined : findTerminal(job, target)
  if (terminal && target !== undefined)
    return boardNode(target.slice(0, target.indexOf('.')), terminal.node)
  return `off/${end.id}`
}

const impedance = (id: string, between: Pair, ohms: Complex): Element => ({
  kind: 'impedance',
  id,
  between,
  ohms,
})
const resistance = (id: string, a: NodeId, b: NodeId, ohms: number): Element =>
  impedance(id, [a, b], complex(ohms))
const contact = (
  id: string,
  between: Pair,
  closed: boolean,
  openOhms: number = FIGURES.openOhms,
): Element => ({ kind: 'contact', id, between, closedOhms: FIGURES.closedOhms, openOhms, closed })

/** Impedance of one line from the star point to the first device: surveyed or usual, and the feeder. */
function sourceOhms({ sourceImpedance, feeder }: Supply): Complex {
  const own = sourceImpedance?.si ?? FIGURES.sourceOhms
  return complex(own + (feeder ? conductorResistance(feeder.size, feeder.length.si) : 0))
}

/** The first circuit's elements have the plain names. */
const sourceName = (index: number, device: string, at: string): string =>
  index === 0 ? `source:${at}` : `source:${device}.${at}`

/** Names of the elements that earth each circuit at its source. */
export const sourceEarths = ({ supply }: Tub): readonly string[] =>
  circuitsOf(supply).map(({ device }, index) => sourceName(index, device, 'earth'))

function circuitSources(
  job: Job,
  { device, lines }: SupplyCircuit,
  index: number,
  turned: boolean,
): readonly Element[] {
  const { supply } = job.tub
  const fedAt = job.devices.get(device)?.fedAt ?? {}
  const ohms = sourceOhms(supply)
  const emfs = EMFS[supply.system]
  const name = (at: string) => sourceName(index, device, at)
  const legs = LINES.flatMap((at): readonly Element[] => {
    const node = fedAt[turned && at === 'leg1' ? 'neutral' : at]
    const line = lines[at]
    const volts = line && emfs[line]
    return node === undefined || volts === undefined
      ? []
      : [
          {
            kind: 'source',
            id: name(at),
            between: [boardNode(device, node), REFERENCE],
            volts,
            ohms,
          },
        ]
  })
  const neutral = WITHOUT_NEUTRAL.includes(supply.system)
    ? undefined
    : fedAt[turned ? 'leg1' : 'neutral']
  const tied = [
    ['neutral', neutral],
    ['earth', fedAt.earth],
  ] as const
  return [
    ...legs,
    ...tied.flatMap(([at, node]) =>
      node === undefined ? [] : [impedance(name(at), [REFERENCE, boardNode(device, node)], ohms)],
    ),
  ]
}

const sourceElements = (job: Job, turned: boolean): readonly Element[] =>
  circuitsOf(job.tub.supply).flatMap((each, index) => circuitSources(job, each, index, turned))

/** The name of a part or jumper in the network. */
export const partElement = (board: string, part: string): string => `part:${board}.${part}`
export const jumperElement = (board: string, jumper: string, index: number): string =>
  `jumper:${board}.${jumper}.${index}`

/** Primary volts of a transformer at the tap that its jumper picks [V]. */
export const primaryVolts = (
  part: Extract<Part, { kind: 'transformer' }>,
  jumpers: Landing['jumpers'],
  board: Board,
): number => {
  const { taps, volts } = part
  const jumper = taps && board.jumpers.find(each => each.id === taps.jumper)
  const at = jumper && (jumpers[jumper.id] ?? jumper.factory)
  return (at === undefined ? undefined : taps?.volts[at]?.si) ?? volts.primary.si
}

/** Whether a contact is closed with nothing commanded: a limit contact, or the resting side of a changeover. */
export const isClosedAtRest = ({ role, rest }: Extract<Part, { kind: 'contact' }>): boolean =>
  role === 'limit' || rest === 'closed'

/** What a part's elements hang on besides the part itself. */
interface Surroundings {
  readonly name: string
  readonly board: Board
  readonly jumpers: Landing['jumpers']
  readonly legVolts: number
}

function partElements(
  part: Part,
  { name: board, legVolts, ...own }: Surroundings,
): readonly Element[] {
  const on = ([a, b]: readonly [string, string]): Pair => [boardNode(board, a), boardNode(board, b)]
  const id = partElement(board, part.id)
  switch (part.kind) {
    case 'fuse':
    case 'pole':
    case 'switch':
      return [contact(id, on(part.across), true)]
    case 'contact':
      return [
        contact(
          id,
          on(part.across),
          isClosedAtRest(part),
          part.leakage ? legVolts / part.leakage.si : FIGURES.openOhms,
        ),
      ]
    case 'electronics':
      return [impedance(id, on(part.across), complex(part.volts.si ** 2 / part.power.si))]
    case 'ground-fault':
      return part.poweredFrom
        ? [impedance(id, on(part.poweredFrom), complex(FIGURES.groundFaultElectronicsOhms))]
        : []
    case 'transformer': {
      const { secondary } = part.volts
      const primary = primaryVolts(part, own.jumpers, own.board)
      return [
        {
          kind: 'transformer',
          id,
          primary: on(part.primary),
          secondary: on(part.secondary),
          ratio: primary / secondary.si,
          seriesOhms: complex((FIGURES.transformerSeries * secondary.si ** 2) / part.rated.si),
          magnetisingOhms: complex(
            0,
            primary ** 2 / (FIGURES.transformerMagnetising * part.rated.si),
          ),
        },
      ]
    }
  }
}

/** The name of a join of a jumper that is wired as a contact. */
export const jumperContact = (
  board: string,
  jumper: string,
  position: string,
  index: number,
): string => `jumper:${board}.${jumper}.${position}.${index}`

function openJumperElements(board: string, jumper: Jumper): readonly Element[] {
  return jumper.positions.flatMap(({ id, joins }) =>
    joins.map(
      ([a, b], index): Element => ({
        kind: 'contact',
        id: jumperContact(board, jumper.id, id, index),
        between: [boardNode(board, a), boardNode(board, b)],
        closedOhms: FIGURES.jumperOhms,
        openOhms: FIGURES.openOhms,
        closed: false,
      }),
    ),
  )
}

function jumperElements(board: string, jumper: Jumper, position: string): readonly Element[] {
  const joins = jumper.positions.find(each => each.id === position)?.joins ?? []
  return joins.map(([a, b], index) =>
    resistance(
      jumperElement(board, jumper.id, index),
      boardNode(board, a),
      boardNode(board, b),
      FIGURES.jumperOhms,
    ),
  )
}

const nodesOfPart = (part: Part): readonly string[] => {
  switch (part.kind) {
    case 'ground-fault':
      return part.poweredFrom ?? []
    case 'transformer':
      return part.isolating ? part.primary : [...part.primary, ...part.secondary]
    default:
      return part.across
  }
}

const isIsolating = (part: Part): part is Extract<Part, { kind: 'transformer' }> =>
  part.kind === 'transformer' && part.isolating

/** Nodes of low voltage: isolated secondaries, and what parts join to them. */
function lowVoltageNodes(board: Board): ReadonlySet<string> {
  const low = new Set<string>(
    board.terminals
      .filter(each => each.class === 'low-voltage' || each.class === 'sensor')
      .map(each => each.node),
  )
  for (const part of board.parts)
    if (isIsolating(part)) for (const node of part.secondary) low.add(node)
  for (let grew = true; grew; ) {
    grew = false
    for (const part of board.parts) {
      if (part.kind === 'transformer') continue
      const nodes = nodesOfPart(part)
      if (nodes.some(each => low.has(each)) && nodes.some(each => !low.has(each))) {
        for (const node of nodes) low.add(node)
        grew = true
      }
    }
  }
  return low
}

function boardInsulation(name: string, board: Board, onlyLowVoltage: boolean): readonly Element[] {
  const low = onlyLowVoltage ? new Set<string>() : lowVoltageNodes(board)
  const mains = new Set(
    onlyLowVoltage
      ? []
      : [
          ...board.terminals.filter(each => each.class === 'mains').map(each => each.node),
          ...board.parts.flatMap(nodesOfPart).filter(each => !low.has(each)),
        ],
  )
  mains.delete(board.earth)
  const earth = boardNode(name, board.earth)
  const each = (node: string, ohms: number) =>
    resistance(`insulation:${name}.${node}`, boardNode(name, node), earth, ohms)
  const secondaries = board.parts.flatMap(part => (isIsolating(part) ? [part.secondary[1]] : []))
  return [
    ...[...mains].map(node => each(node, FIGURES.boardInsulationOhms)),
    ...[...new Set(secondaries)].map(node => each(node, FIGURES.lowVoltageInsulationOhms)),
  ]
}

function boardElements(
  job: Job,
  name: string,
  landing: Landing,
  forOffers: boolean,
): readonly Element[] {
  const board = boardOf(job, name)
  if (!board) return []
  const legVolts = LEG_VOLTS[job.tub.supply.system]
  const around: Surroundings = { name, board, jumpers: landing.jumpers, legVolts }
  return [
    ...board.parts.flatMap(part => partElements(part, around)),
    ...board.jumpers.flatMap(jumper =>
      forOffers
        ? openJumperElements(name, jumper)
        : jumperElements(name, jumper, landing.jumpers[jumper.id] ?? jumper.factory),
    ),
    ...boardInsulation(name, board, forOffers),
  ]
}

const conductorElement = (end: End): string => `${end.of}:${end.id}`

/** The name of the element that a conductor end belongs to. */
export const elementOfEnd = (end: End): string =>
  end.of === 'cable' ? `cable:${end.owner}.${end.part}` : conductorElement(end)

function conductorElements(job: Job, landing: Landing): readonly Element[] {
  const elements: Element[] = []
  const byId = new Map(job.ends.map(end => [end.id, end] as const))
  const at = (id: string): NodeId => {
    const end = byId.get(id)
    return end ? endNode(job, landing, end) : `off/${id}`
  }
  for (const cable of job.tub.supply.cables)
    for (const { id, size } of cable.conductors) {
      const name = `${cable.id}.${id}`
      const ohms = conductorResistance(size, cable.length.si)
      elements.push(
        resistance(`cable:${name}`, at(`${name}@${cable.from}`), at(`${name}@${cable.to}`), ohms),
      )
    }
  for (const end of job.ends) {
    if (end.of === 'cable') continue
    const tail = job.devices.get(end.owner)?.tails.find(each => each.id === end.part)
    const inner = tail ? tailNode(end.owner, tail.node) : leadNode(end.owner, end.part)
    const length = tail ? FIGURES.tailLength : FIGURES.leadLength
    const ohms = conductorResistance(end.size, length)
    elements.push(resistance(conductorElement(end), inner, at(end.id), ohms))
  }
  return elements
}

export const circuitElement = (load: string, circuit: string): string =>
  `circuit:${load}.${circuit}`

function loadElements(job: Job, landing: Landing, shares: Shares): readonly Element[] {
  return job.loads.flatMap(load => {
    const at = (lead: string) => leadNode(load.id, lead)
    if (!isPowered(load)) {
      const [a, b] = load.leads
      const ohms = CURVES[load.curve].ohmsAt25
      return a && b ? [resistance(circuitElement(load.id, 'probe'), at(a.id), at(b.id), ohms)] : []
    }
    const earth = load.leads.find(each => each.function === 'earth')
    return [
      ...load.circuits.map(circuit => {
        const draw = drawOf(job, landing, load, circuit)
        const share = draw.assumed ? shares.unknown : shares.ranged
        const amps = draw.from + share * (draw.to - draw.from)
        const between: Pair = [at(circuit.across[0]), at(circuit.across[1])]
        return impedance(circuitElement(load.id, circuit.id), between, impedanceOf(draw, amps))
      }),
      ...(earth
        ? load.leads
            .filter(each => each !== earth)
            .map(each =>
              resistance(
                `insulation:${load.id}.${each.id}`,
                at(each.id),
                at(earth.id),
                FIGURES.loadInsulationOhms,
              ),
            )
        : []),
    ]
  })
}

const isLive = (element: Element, reached: ReadonlySet<NodeId>): boolean =>
  pairsOf(element).every(([a, b]) => reached.has(a) && reached.has(b))

/**
 * The network that a landing makes.
 *
 * Parts of it that nothing joins to the reference, such as an unplugged probe, are left out and
 * named in `dead`: they carry nothing.
 */
export function wire(job: Job, landing: Landing, options: WireOptions = {}): Wiring {
  const touched = (options.touch ?? []).map(id =>
    resistance(`touch:${id}`, `off/${id}`, REFERENCE, FIGURES.touchOhms),
  )
  const elements = [
    ...sourceElements(job, options.turned === true),
    ...[...job.devices.keys(), BOX].flatMap(name =>
      boardElements(job, name, landing, options.forOffers === true),
    ),
    ...conductorElements(job, landing),
    ...loadElements(job, landing, options.shares ?? GREATEST),
    ...touched,
  ]
  // The windings of a transformer join nothing: each is a pair of its own.
  const pairs = elements.flatMap(pairsOf)
  const reached = reachedFrom(REFERENCE, pairs)
  const dead = new Set(pairs.flatMap(pair => pair.filter(node => !reached.has(node))))
  return {
    network: {
      hertz: job.tub.supply.frequency.si,
      reference: REFERENCE,
      elements: elements.filter(element => isLive(element, reached)),
    },
    all: elements,
    dead,
  }
}
