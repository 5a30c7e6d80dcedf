import { atLeast, atMost } from '../../../base/compare.ts'
import { boundsOf } from '../../../base/known.ts'
import type { Finding } from '../../../base/verdict.ts'
import { isEarth } from '../../../domain/board/board.ts'
import { BOX, findTerminal } from '../../../domain/job.ts'
import { isPowered, isUnearthed } from '../../../domain/load/load.ts'
import { circuitAt, circuitsOf } from '../../../domain/supply/circuits.ts'
import { joinedToAny } from '../../../domain/wiring/copper.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import { boardOfPart } from '../../../domain/wiring/observe.ts'
import { boardNode, leadNode } from '../../../domain/wiring/wire.ts'
import type { NodeId } from '../../../engines/circuit/network.ts'
import type { Evidence, Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf, standing, worst } from '../rule.ts'

interface Metal {
  readonly id: string
  readonly label: string
  readonly node: NodeId
}

/**
 * Metal that a person can touch and an earth lead serves: of loads that are landed at all and not
 * double insulated, of the box, of the devices.
 */
export function metalOf({ job, landing }: Evidence): readonly Metal[] {
  const boards = [...job.devices].map(([id, device]) => ({
    id,
    label: device.label,
    node: boardNode(id, device.board.earth),
  }))
  const isLanded = (end: string) => findTerminal(job, landing.ends[end] ?? '') !== undefined
  const loads = job.loads.flatMap(load => {
    if (isPowered(load) && load.doubleInsulated === true) return []
    const earth = load.leads.find(each => each.function === 'earth')
    return earth && load.leads.some(lead => isLanded(`${load.id}.${lead.id}`))
      ? [{ id: load.id, label: load.label, node: leadNode(load.id, earth.id) }]
      : []
  })
  const box = { id: BOX, label: job.box.label, node: boardNode(BOX, job.box.board.earth) }
  return [...boards, box, ...loads]
}

/** First devices of the circuits, with their descriptions. */
const firstDevices = ({ job }: Evidence) =>
  circuitsOf(job.tub.supply).flatMap(({ device: id }) => {
    const device = job.devices.get(id)
    return device ? [{ id, device }] : []
  })

function earthNet(evidence: Evidence): ReadonlySet<NodeId> | undefined {
  const earths = firstDevices(evidence).flatMap(({ id, device }) =>
    device.fedAt.earth === undefined ? [] : [boardNode(id, device.fedAt.earth)],
  )
  return earths.length > 0 ? joinedToAny(evidence.plant, earths) : undefined
}

function notOnEarth(evidence: Evidence, net: ReadonlySet<NodeId>): readonly Finding[] {
  return metalOf(evidence)
    .filter(({ node }) => !net.has(node))
    .map(({ id, label }) => ({
      rule: metalOnEarth.id,
      message: 'metal-not-on-earth',
      verdict: 'breaks',
      severity: 'danger',
      subjects: [id],
      params: { thing: label },
    }))
}

/**
 * Nodes ahead of the ground-fault device, where neutral and earth may meet at the source.
 *
 * A circuit whose only device is in the box is ahead of it down to the box's feed terminals.
 */
function aheadOfProtection(evidence: Evidence): ReadonlySet<NodeId> {
  const { job, plant, feed } = evidence
  const { supply } = job.tub
  const guarded = new Set(
    plant.parts.flatMap(({ part, board }) =>
      part.kind === 'ground-fault' ? [circuitAt(supply, board)?.device] : [],
    ),
  )
  const isOpen = (device: string): boolean => !guarded.has(circuitAt(supply, device)?.device)
  const feeds = new Set(Object.values(feed?.lands ?? {}).map(id => `${BOX}.${id}`))
  const hasOwn = plant.parts.some(each => each.board === BOX && each.part.kind === 'ground-fault')
  const unguarded = plant.terminals.filter(({ name }) => {
    const board = boardOfPart(name)
    return board === BOX ? hasOwn && feeds.has(name) : isOpen(board)
  })
  return new Set([
    ...firstDevices(evidence).flatMap(({ id, device }) =>
      [...Object.values(device.fedAt), ...device.tails.map(each => each.node)].map(node =>
        boardNode(id, node),
      ),
    ),
    ...unguarded.map(each => each.node),
  ])
}

function tiedToNeutral(evidence: Evidence, net: ReadonlySet<NodeId>): readonly Finding[] {
  const ahead = aheadOfProtection(evidence)
  return evidence.plant.terminals
    .filter(({ terminal, node }) => terminal.class === 'mains' && net.has(node) && !ahead.has(node))
    .slice(0, 1)
    .map(({ name, terminal }) => ({
      rule: metalOnEarth.id,
      message: 'mains-tied-to-earth',
      verdict: 'breaks',
      severity: 'danger',
      subjects: [name],
      params: { terminal: terminal.label ?? terminal.id },
    }))
}

/** A mains load that has neither an earth lead nor double insulation, and is landed. */
const unearthedLoads = ({ job, landing }: Evidence): readonly Finding[] =>
  job.loads
    .filter(isUnearthed)
    .filter(({ id, leads }) =>
      leads.some(lead => findTerminal(job, landing.ends[`${id}.${lead.id}`] ?? '')),
    )
    .map(load => ({
      rule: metalOnEarth.id,
      message: 'no-earth-lead',
      verdict: 'breaks',
      severity: 'danger',
      subjects: [load.id],
      params: { load: load.label },
    }))

/** An earth conductor of the run has to carry a fault for as long as the breaker takes. */
function weakMainEarth({ job, plant }: Evidence): readonly Finding[] {
  const { supply } = job.tub
  return plant.terminals.flatMap(({ name, terminal, ends }) => {
    const breakers = ends
      .filter(end => end.of === 'cable' && isEarth(end.function))
      .flatMap(end => {
        const from = supply.cables.find(each => each.id === end.owner)?.from
        const circuit = from === undefined ? undefined : circuitAt(supply, from)
        return (circuit && boundsOf(circuit.breaker)?.to) ?? []
      })
    const breaker = Math.max(0, ...breakers)
    return atLeast(terminal.rated.si, breaker)
      ? []
      : [
          {
            rule: metalOnEarth.id,
            message: 'main-earth-on-small-terminal',
            verdict: 'breaks' as const,
            severity: 'danger' as const,
            subjects: [name],
            params: { terminal: terminal.label ?? terminal.id, rated: terminal.rated.si, breaker },
          },
        ]
  })
}

/** A load's earth carries what its fuse lets through; less than its plate amps is no earth for it. */
const weakLoadEarths = ({ job, plant }: Evidence): readonly Finding[] =>
  plant.terminals.flatMap(({ name, terminal, ends }) => {
    const owners = ends.filter(end => end.of === 'lead' && isEarth(end.function))
    const amps = plant.circuits
      .filter(({ load }) => owners.some(end => end.owner === load.id))
      .map(({ draw }) => draw.to)
    const most = Math.max(0, ...amps)
    const load = job.loads.find(each => each.id === owners[0]?.owner)
    return atLeast(terminal.rated.si, most)
      ? []
      : [
          {
            rule: metalOnEarth.id,
            message: 'load-earth-on-small-terminal',
            verdict: 'breaks' as const,
            severity: 'danger' as const,
            subjects: [name],
            params: {
              load: load?.label ?? '',
              terminal: terminal.label ?? terminal.id,
              rated: terminal.rated.si,
              amps: most,
            },
          },
        ]
  })

/** Every run that brings a line or a neutral brings an earth, landed at both its ends. */
function runsWithoutEarth({ job, landing }: Evidence): readonly Finding[] {
  const isLanded = (cable: string, conductor: string, boards: readonly string[]): boolean =>
    boards.every(board => findTerminal(job, landing.ends[`${cable}.${conductor}@${board}`] ?? ''))
  const runs = new Map<string, { label: string; line: boolean; earth: boolean }>()
  for (const { id, label, from, to, conductors } of job.tub.supply.cables)
    for (const each of conductors) {
      const seen = runs.get(`${from} ${to}`) ?? { label, line: false, earth: false }
      const landed = isLanded(id, each.id, [from, to])
      runs.set(`${from} ${to}`, {
        ...seen,
        line: seen.line || (landed && !isEarth(each.function)),
        earth: seen.earth || (landed && isEarth(each.function)),
      })
    }
  return [...runs]
    .filter(([, { line, earth }]) => line && !earth)
    .map(([run, { label }]) => ({
      rule: metalOnEarth.id,
      message: 'run-without-earth',
      verdict: 'breaks',
      severity: 'danger',
      subjects: run.split(' '),
      params: { cable: label },
    }))
}

function liveMetal(evidence: Evidence): readonly Finding[] {
  const high = evidence.band.high
  return worst(
    standing(evidence),
    metalOf(evidence),
    ({ node }, at) => at.solved.potential(node) * high,
  )
    .filter(({ value }) => !atMost(value, LIMITS.metalVolts))
    .map(({ thing, value, at }) => ({
      rule: metalOnEarth.id,
      message: 'metal-live',
      verdict: 'breaks',
      severity: 'danger',
      subjects: [thing.id],
      params: { thing: thing.label, volts: value },
      on: commandsOf(at.state),
    }))
}

/** Every metal part a person can touch is on earth by copper, and earth touches no mains conductor. */
export const metalOnEarth: Rule = {
  id: 'VERIFY-4',
  title: 'Metal on earth',
  source: COMMON_PRACTICE,
  check: evidence => {
    const net = earthNet(evidence)
    if (!net) return []
    return [
      ...notOnEarth(evidence, net),
      ...unearthedLoads(evidence),
      ...weakMainEarth(evidence),
      ...weakLoadEarths(evidence),
      ...runsWithoutEarth(evidence),
      ...tiedToNeutral(evidence, net),
      ...liveMetal(evidence),
    ]
  },
}
