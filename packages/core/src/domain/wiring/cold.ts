import type { Element, NodeId, Pair } from '../../engines/circuit/network.ts'
import type { SensorInput } from '../box/control-box.ts'
import type { End, Job } from '../job.ts'
import { BOX, findTerminal } from '../job.ts'
import type { Landing } from '../landing/landing.ts'
import { COLD } from './cold-figures.ts'
import type { ColdElement, ColdPart } from './cold-ohms.ts'
import { coldElements } from './cold-ohms.ts'
import { boardNode, endNode, leadNode, wire } from './wire.ts'

/** What is connected while somebody measures with the power off. */
export interface ColdState {
  /** Loads that are plugged in, by id, or single ends (`heater.earth`); the others lie apart. */
  readonly plugged: ReadonlySet<string>
  /** The supply cables: off the box; landed behind an open disconnect; landed behind a closed one. */
  readonly supply: 'off' | 'open' | 'closed'
  /** Of the probes [°C]; 20 where it is left out. */
  readonly celsius?: number
}

/** A landing with its supply removed: direct-current resistances between the nodes of `wire`. */
export interface Cold {
  readonly job: Job
  /** The landing with every end that is unplugged off. */
  readonly landing: Landing
  readonly elements: readonly ColdElement[]
  /** One node of each side of every isolating transformer: what isolation alone keeps apart. */
  readonly isolated: readonly Pair[]
}

const isOff = (end: End, { plugged, supply }: ColdState): boolean =>
  end.of === 'lead'
    ? !plugged.has(end.owner) && !plugged.has(end.id)
    : supply === 'off' && end.of === 'cable' && end.board === BOX

function unplugged(job: Job, landing: Landing, state: ColdState): Landing {
  const off = job.ends.filter(each => isOff(each, state)).map(each => [each.id, 'insulated'])
  return { ...landing, ends: { ...landing.ends, ...Object.fromEntries(off) } }
}

/** Everything plugged in as landed. */
export const allPlugged = (job: Job): ReadonlySet<string> => new Set(job.loads.map(each => each.id))

/**
 * What an ohmmeter finds behind a sensor input. The live network has nothing there; cold it must not
 * be called open.
 */
function inputElement(job: Job, { id, label, terminals }: SensorInput): readonly ColdElement[] {
  const [a, b] = terminals.map(each => findTerminal(job, `${BOX}.${each}`))
  if (!a || !b) return []
  const part: ColdPart = { kind: 'input', subject: `${BOX}.${id}`, of: job.box.label, name: label }
  return [
    {
      id: `input:${BOX}.${id}`,
      between: [boardNode(BOX, a.node), boardNode(BOX, b.node)],
      role: 'part',
      part,
    },
  ]
}

const isolatedPairs = (elements: readonly Element[]): readonly Pair[] =>
  elements.flatMap(each =>
    each.kind === 'transformer' ? [[each.primary[0], each.secondary[0]] as const] : [],
  )

/**
 * The cold network of a landing.
 *
 * It is `wire`'s own network: the same nodes and elements, without its sources, each element with
 * what it has at direct current in place of its impedance in running.
 */
export function coldOf(job: Job, landing: Landing, state: ColdState): Cold {
  const off = unplugged(job, landing, state)
  const { all } = wire(job, off)
  return {
    job,
    landing: off,
    elements: [
      ...coldElements(job, landing, all, {
        isDisconnected: state.supply !== 'closed',
        celsius: state.celsius ?? COLD.copperCelsius,
      }),
      ...job.box.sensors.flatMap(each => inputElement(job, each)),
    ],
    isolated: isolatedPairs(all),
  }
}

/** The earth lead of a load: its inner node is the load's metal. */
const metalNode = (job: Job, load: string): NodeId | undefined => {
  const lead = job.loads
    .find(each => each.id === load)
    ?.leads.find(each => each.function === 'earth')
  return lead && leadNode(load, lead.id)
}

/**
 * The node that a name stands for: a terminal (`box.H1`), an end as landings name it (`pump-a.high`,
 * wherever it lies), the metal of a load with an earth lead (`pump-a.metal`).
 */
export function pointNode({ job, landing }: Cold, name: string): NodeId | undefined {
  const terminal = findTerminal(job, name)
  if (terminal) return boardNode(name.slice(0, name.indexOf('.')), terminal.node)
  const end = job.ends.find(each => each.id === name)
  if (end) return endNode(job, landing, end)
  return name.endsWith('.metal') ? metalNode(job, name.slice(0, -'.metal'.length)) : undefined
}

/** Every name that `pointNode` knows. */
export const pointNames = (job: Job): readonly string[] => [
  ...[...job.devices].flatMap(([id, { board }]) => board.terminals.map(each => `${id}.${each.id}`)),
  ...job.box.board.terminals.map(each => `${BOX}.${each.id}`),
  ...job.ends.map(each => each.id),
  ...job.loads.filter(each => metalNode(job, each.id)).map(each => `${each.id}.metal`),
]
