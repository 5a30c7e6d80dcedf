import type { FeedFunction } from '../../../domain/board/board.ts'
import { FEED_FUNCTIONS } from '../../../domain/board/board.ts'
import type { Job } from '../../../domain/job.ts'
import { BOX } from '../../../domain/job.ts'
import type { Landing } from '../../../domain/landing/landing.ts'
import type { Load } from '../../../domain/load/load.ts'
import { boardNode } from '../../../domain/wiring/wire.ts'
import type { SheetText } from '../messages.ts'
import { text } from '../messages.ts'
import { partKey } from './designations.ts'
import type { Edge, EdgeIs } from './graph.ts'
import { groupsOf } from './graph.ts'
import type { Main, SparePlace } from './mains.ts'
import { leadsInCircuits, loadMain, sparesOf } from './mains.ts'
import type { Rail } from './rails.ts'
import { boxRails, sourceRails } from './rails.ts'

/** One part of the ladder before it is drawn. */
export interface Division {
  readonly id: string
  readonly title: SheetText
  readonly hasRails: boolean
  readonly rails: readonly Rail[]
  readonly edges: readonly Edge[]
  readonly mains: readonly Main[]
  /** Poles of one apparatus, wires of one cable. */
  readonly together: readonly (readonly Edge[])[]
}

/** Everything that a ladder is made of. */
export interface Material {
  readonly job: Job
  readonly landing: Landing
  readonly edges: readonly Edge[]
  readonly names: ReadonlyMap<string, string>
  /** Loads in the order of their places. */
  readonly loads: readonly Load[]
}

type Winding = Extract<EdgeIs, { of: 'winding' }>

const windingOf = ({ is }: Edge): Winding | undefined => (is.of === 'winding' ? is : undefined)

const isConsumer = ({ is }: Edge): boolean =>
  is.of === 'circuit' ||
  is.of === 'probe' ||
  is.of === 'winding' ||
  (is.of === 'part' && is.part.kind === 'electronics')

/** Whether a wire belongs to the supply: everything up to the box. */
const isSupply = ({ is }: Edge): boolean =>
  is.of === 'wire'
    ? is.wire.kind !== 'lead'
    : (is.of === 'part' || is.of === 'jumper' || is.of === 'winding') && is.board !== BOX

/** Earth and data leads: they are in no circuit, so they stand beside their load. */
export function isExtra(edge: Edge, loads: readonly Load[]): boolean {
  const { is } = edge
  if (is.of !== 'wire' || is.wire.kind !== 'lead') return false
  const load = loads.find(each => each.id === is.wire.owner)
  return load !== undefined && !leadsInCircuits(load).has(is.wire.id.slice(load.id.length + 1))
}

/** Lines, then neutral, then earth; the second circuit after the first. */
const wireRank = ({ is }: Edge): number =>
  is.of === 'wire' ? FEED_FUNCTIONS.indexOf(is.wire.function as FeedFunction) : 0

const isWireOf =
  (cable: string) =>
  ({ is }: Edge): boolean =>
    is.of === 'wire' && is.wire.owner === cable

const isPoleOf =
  (device: string) =>
  ({ is }: Edge): boolean =>
    is.of === 'part' &&
    is.board === device &&
    (is.part.kind === 'pole' || is.part.kind === 'switch')

function supplyDivision({ job, landing, edges }: Material): Division {
  const own = edges.filter(isSupply)
  const arrives = (edge: Edge): boolean =>
    edge.is.of === 'wire' && edge.is.wire.ends.some(each => each.panel === BOX)
  return {
    id: 'supply',
    title: text('ladder.supply'),
    hasRails: false,
    rails: [
      ...sourceRails(job),
      ...boxRails(job, landing).map(each => ({ ...each, side: 'right' as const })),
    ],
    edges: own.filter(each => !arrives(each)),
    mains: own
      .filter(arrives)
      .toSorted((a, b) => wireRank(a) - wireRank(b))
      .map(edge => ({ edge, nodes: edge.nodes })),
    together: [
      ...[...job.devices.keys()].map(device => own.filter(isPoleOf(device))),
      ...job.tub.supply.cables.map(cable => own.filter(isWireOf(cable.id))),
    ],
  }
}

const rank = ({ is }: Edge, loads: readonly Load[]): number => {
  switch (is.of) {
    case 'circuit':
    case 'probe':
      return loads.findIndex(each => each.id === is.load.id)
    case 'winding':
      return is.which === 'secondary' ? -2 : loads.length
    default:
      return -1
  }
}

const spareMain = ({ nodes, ...spare }: SparePlace): Main => ({ nodes, spare })

type Heading = Pick<Division, 'id' | 'title' | 'rails'>

/** Loads first, then what is empty, then what feeds other rails. */
function divide(heading: Heading, edges: readonly Edge[], material: Material): Division {
  const { loads, job, landing } = material
  const ordered = edges.filter(isConsumer).toSorted((a, b) => rank(a, loads) - rank(b, loads))
  const isFeeding = (edge: Edge) => windingOf(edge)?.which === 'primary'
  const isHere = ({ nodes: [node] }: SparePlace) =>
    node !== undefined && edges.some(each => each.nodes.includes(node))
  return {
    ...heading,
    hasRails: true,
    edges: edges.filter(each => !isConsumer(each)),
    mains: [
      ...ordered.filter(each => !isFeeding(each)).map(loadMain),
      ...sparesOf(job, landing).filter(isHere).map(spareMain),
      ...ordered.filter(isFeeding).map(loadMain),
    ],
    together: [],
  }
}

/**
 * Rails behind the transformers: its volts at the left, what they are counted from at the right.
 *
 * What an auto-transformer's volts are counted from is a line of the supply or hangs on one: it is
 * named as that, never as 0 V.
 */
function secondaryRails(windings: readonly Edge[], names: Material['names']): readonly Rail[] {
  return windings.flatMap(({ is, nodes }): readonly Rail[] => {
    if (is.of !== 'winding' || is.which !== 'secondary') return []
    const volts = is.part.volts.secondary.text
    if (!is.part.isolating) {
      const from = names.get(partKey(is.board, is.part.id)) ?? is.part.id
      return [{ node: nodes[0], name: text('rail.behind', { volts, from }), side: 'left' }]
    }
    return [
      { node: nodes[0], name: text('rail.volts', { volts }), side: 'left' },
      { node: nodes[1], name: text('rail.zero'), side: 'right' },
    ]
  })
}

const withoutTwice = (rails: readonly Rail[]): readonly Rail[] =>
  rails.filter((each, at) => rails.findIndex(other => other.node === each.node) === at)

const isLeadOf =
  (loads: readonly Load[]) =>
  ({ is }: Edge): boolean =>
    is.of === 'wire' && is.wire.kind === 'lead' && loads.some(each => each.id === is.wire.owner)

function sensorDivision(
  { job, loads, edges: all, names }: Material,
  edges: readonly Edge[],
): Division {
  const nodeOf = (terminal: string) =>
    boardNode(BOX, job.box.board.terminals.find(each => each.id === terminal)?.node ?? '')
  const inputs = job.box.sensors.flatMap(({ label, terminals }): readonly Rail[] => {
    const [signal, common] = terminals.map(nodeOf)
    return [
      { node: signal ?? '', name: text('rail.input', { input: label }), side: 'left' },
      { node: common ?? '', name: text('rail.sensor-zero'), side: 'right' },
    ]
  })
  const probes = edges.filter(each => each.is.of === 'probe')
  return {
    id: 'sensors',
    title: text('ladder.sensors'),
    hasRails: false,
    // A sensor that the box does not name still returns to the low volts.
    rails: withoutTwice([...inputs, ...secondaryRails(all, names)]),
    edges: edges.filter(each => each.is.of !== 'probe'),
    mains: probes.toSorted((a, b) => rank(a, loads) - rank(b, loads)).map(loadMain),
    together: [],
  }
}

/** Takes what hangs together with some nodes, whatever it hangs by, and leaves the rest. */
function takeGroups(
  left: Set<Edge>,
  groupOf: (node: string) => string,
  nodes: readonly string[],
): readonly Edge[] {
  const groups = new Set(nodes.map(groupOf))
  const found = [...left].filter(each => groups.has(groupOf(each.nodes[0])))
  for (const each of found) left.delete(each)
  return found
}

function controlDivision(winding: Edge, edges: readonly Edge[], material: Material): Division {
  const { is } = winding
  const part = is.of === 'winding' ? is.part : undefined
  return divide(
    {
      id: `control ${part?.id}`,
      title: text('ladder.control', {
        transformer: material.names.get(partKey(BOX, part?.id ?? '')) ?? '',
        volts: part?.volts.secondary.text ?? '',
      }),
      rails: withoutTwice(secondaryRails(edges, material.names)),
    },
    edges,
    material,
  )
}

/** The parts of the ladder: supply, loads, what lies behind each transformer, sensors, the rest. */
export function divisionsOf(material: Material): readonly Division[] {
  const { job, landing, edges, names, loads } = material
  const probes = loads.filter(each => each.kind === 'probe')
  const isSensor = (edge: Edge) => edge.is.of === 'probe' || isLeadOf(probes)(edge)
  const own = edges.filter(each => !isSupply(each) && !isExtra(each, loads))
  const copper = own.filter(each => !isSensor(each))
  const groupOf = groupsOf(copper.map(each => each.nodes))
  const left = new Set(copper)
  const rails = boxRails(job, landing)
  const mains = takeGroups(
    left,
    groupOf,
    rails.map(each => each.node),
  )
  const isUsed = ({ node }: Rail) => mains.some(each => each.nodes.includes(node))
  const behind = [...rails, ...secondaryRails(mains, names)].filter(isUsed)
  const heading = { id: 'loads', title: text('ladder.loads'), rails: withoutTwice(behind) }
  const controls = copper.flatMap(each => {
    const winding = windingOf(each)
    if (winding?.which !== 'secondary' || !winding.part.isolating) return []
    const found = takeGroups(left, groupOf, [each.nodes[0]])
    return found.length > 0 ? [controlDivision(each, found, material)] : []
  })
  const apart = divide({ id: 'apart', title: text('ladder.apart'), rails: [] }, [...left], material)
  return [
    supplyDivision(material),
    divide(heading, mains, material),
    ...controls,
    sensorDivision(material, own.filter(isSensor)),
    { ...apart, hasRails: false },
  ].filter(each => each.edges.length + each.mains.length > 0)
}
