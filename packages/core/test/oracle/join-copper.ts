import { strapOf } from './load-circuits.ts'
import { readQuantity } from './quantities.ts'
import type { Overrides, RawLanding } from './raw-files.ts'
import type { Board, OracleJob } from './read-job.ts'
import { earthLeadOf, innerNode, isMotor, placeOfEnd, terminalUnder } from './read-job.ts'

/** Names joined into groups. */
interface Groups {
  readonly join: (a: string, b: string) => void
  readonly of: (name: string) => string
}

/** Metal that copper does not join to the supply's earth, by its owner. */
export function unearthedMetal(job: OracleJob, landing: RawLanding): string[] {
  const groups = copperOf(job, landing)
  const earth = groups.of(job.boards[0]?.fedAt['earth'] ?? '')
  const metal = [
    ...job.boards.map(board => ({ name: board.id, node: board.earth })),
    ...job.loads.flatMap(load => {
      const lead = earthLeadOf(load)
      const isLanded = load.leads.some(each => isOnTerminal(job, landing, `${load.id}.${each.id}`))
      return lead === undefined || !isLanded
        ? []
        : [{ name: load.id, node: innerNode(load.id, lead) }]
    }),
  ]
  return metal.filter(each => groups.of(each.node) !== earth).map(each => each.name)
}

const isOnTerminal = (job: OracleJob, landing: RawLanding, end: string): boolean =>
  terminalUnder(job, landing, end) !== undefined

/** Mains terminals beyond the ground-fault device that copper joins to the supply's earth. */
export function earthedMains(job: OracleJob, landing: RawLanding): string[] {
  const groups = copperOf(job, landing)
  const earth = groups.of(job.boards[0]?.fedAt['earth'] ?? '')
  const first = job.boards.findIndex(board =>
    board.parts.some(each => each.kind === 'ground-fault'),
  )
  return job.boards.flatMap((board, at) => {
    if (at < first) return []
    const before = at === first ? supplySide(board) : new Set<string>()
    return board.terminals
      .filter(each => each.class === 'mains' && !before.has(each.node))
      .filter(each => groups.of(each.node) === earth)
      .map(each => each.name)
  })
}

/** Nodes of a device that its own parts join to the supply, other than the parts it sums. */
function supplySide(board: Board): ReadonlySet<string> {
  const summed = new Set(board.parts.flatMap(part => part.sums ?? []))
  const pairs = board.parts
    .filter(part => part.across && !summed.has(part.id) && part.kind !== 'electronics')
    .map(part => (part.across ?? []).map(node => `${board.id}.${node}`))
  const fed = Object.entries(board.fedAt).flatMap(([key, node]) => (key === 'earth' ? [] : [node]))
  const reached = new Set(fed)
  for (const node of reached)
    for (const pair of pairs) if (pair.includes(node)) for (const each of pair) reached.add(each)
  return reached
}

function newGroups(): Groups {
  const parent = new Map<string, string>()
  const of = (name: string): string => {
    const up = parent.get(name)
    return up === undefined ? name : of(up)
  }
  const join = (a: string, b: string): void => {
    const [x, y] = [of(a), of(b)].sort() as [string, string]
    if (x !== y) parent.set(y, x)
  }
  return { join, of }
}

/** What conductors, board nodes and jumpers join. */
function copperOf(job: OracleJob, landing: RawLanding): Groups {
  const groups = newGroups()
  joinJumpers(job, landing, groups)
  for (const wire of job.wires) {
    const nodes = [
      ...(wire.inner === undefined ? [] : [wire.inner]),
      ...wire.ends.flatMap(end => terminalUnder(job, landing, end)?.node ?? []),
    ]
    for (const node of nodes.slice(1)) groups.join(nodes[0] ?? node, node)
  }
  return groups
}

function joinJumpers(job: OracleJob, landing: RawLanding, groups: Groups): void {
  for (const board of job.boards)
    for (const jumper of board.jumpers) {
      const set = landing.jumpers[jumper.id] ?? jumper.factory
      const joins = jumper.positions.find(each => each.id === set)?.joins ?? []
      for (const [a, b] of joins) groups.join(`${board.id}.${a}`, `${board.id}.${b}`)
    }
}

/** Whether a landing is the plan: same partition, straps, settings, and probes as surveyed. */
export function isAsPlanned(job: OracleJob, landing: RawLanding, overrides: Overrides): boolean {
  const { plan } = job
  const hasOtherProbe = job.loads.some(load => {
    const curve = overrides.probeCurves?.[load.id]
    return curve !== undefined && curve !== load.curve
  })
  const { profile, currentLimit } = landing.settings
  if (hasOtherProbe || profile !== plan.settings.profile) return false
  if (readQuantity(currentLimit) !== readQuantity(plan.settings.currentLimit)) return false
  if (job.loads.some(load => strapOf(landing, load) !== strapOf(plan, load))) return false
  return isSamePartition(job, exchangedBack(job, landing))
}

/** The two leads of a load with one circuit that is no motor, put back where they were planned. */
function exchangedBack(job: OracleJob, landing: RawLanding): RawLanding {
  const planned = partitionOf(job, job.plan)
  const landed = partitionOf(job, landing)
  const ends = { ...landing.ends }
  for (const load of job.loads) {
    const [circuit, ...others] = load.circuits ?? []
    if (!circuit || others.length > 0 || isMotor(load)) continue
    const [a, b] = circuit.across.map(lead => `${load.id}.${lead}`) as [string, string]
    const isCrossed =
      nodeOf(landed, a) === nodeOf(planned, b) && nodeOf(landed, b) === nodeOf(planned, a)
    if (isCrossed && nodeOf(planned, a) !== nodeOf(planned, b)) {
      ends[a] = placeOfEnd(job, landing, b)
      ends[b] = placeOfEnd(job, landing, a)
    }
  }
  return { ...landing, ends }
}

interface Partition {
  readonly groups: Groups
  readonly nodeOfEnd: ReadonlyMap<string, string>
}

/** Ends and board nodes, joined by terminals and jumpers; an end that is off stands alone. */
function partitionOf(job: OracleJob, landing: RawLanding): Partition {
  const groups = newGroups()
  joinJumpers(job, landing, groups)
  const nodeOfEnd = new Map<string, string>()
  for (const end of job.ends.keys())
    nodeOfEnd.set(
      end,
      terminalUnder(job, landing, end)?.node ?? `${placeOfEnd(job, landing, end)} ${end}`,
    )
  return { groups, nodeOfEnd }
}

const nodeOf = (partition: Partition, end: string): string =>
  partition.groups.of(partition.nodeOfEnd.get(end) ?? end)

function isSamePartition(job: OracleJob, landing: RawLanding): boolean {
  const planned = partitionOf(job, job.plan)
  const landed = partitionOf(job, landing)
  const ratedIn = (from: RawLanding, end: string): number =>
    terminalUnder(job, from, end)?.rated ?? 0
  const nodes = job.boards.flatMap(board => [
    ...board.terminals.map(each => each.node),
    ...board.jumpers.flatMap(each =>
      each.positions.flatMap(position => position.joins.flat().map(node => `${board.id}.${node}`)),
    ),
  ])
  return (
    nodes.every(node => planned.groups.of(node) === landed.groups.of(node)) &&
    [...job.ends.keys()].every(
      end =>
        nodeOf(planned, end) === nodeOf(landed, end) &&
        ratedIn(landing, end) >= ratedIn(job.plan, end),
    )
  )
}
