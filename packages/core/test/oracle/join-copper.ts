import type { Groups } from './groups.ts'
import { newGroups } from './groups.ts'
import { plateVolts, SAFE_VOLTS } from './load-circuits.ts'
import type { RawLanding, RawLoad } from './raw-files.ts'
import type { Board, OracleJob } from './read-job.ts'
import { earthLeadOf, innerNode, terminalUnder } from './read-job.ts'

/** Metal that copper does not join to the supply's earth, by its owner. */
export function unearthedMetal(job: OracleJob, landing: RawLanding, copper: Groups): string[] {
  const earth = earthOf(job, copper)
  const boards = job.boards.filter(board => copper.of(board.earth) !== earth)
  const loads = job.loads.filter(load => {
    const isLanded = load.leads.some(each => isOnTerminal(job, landing, `${load.id}.${each.id}`))
    if (!isLanded || load.doubleInsulated === true) return false
    const lead = earthLeadOf(load)
    return lead === undefined
      ? isMainsLoad(landing, load)
      : copper.of(innerNode(load.id, lead)) !== earth
  })
  return [...boards, ...loads].map(each => each.id)
}

const earthOf = (job: OracleJob, copper: Groups): string =>
  copper.of(job.boards[0]?.fedAt['earth'] ?? '')

const isMainsLoad = (landing: RawLanding, load: RawLoad): boolean =>
  (plateVolts(landing, load) ?? 0) > SAFE_VOLTS

const isOnTerminal = (job: OracleJob, landing: RawLanding, end: string): boolean =>
  terminalUnder(job, landing, end) !== undefined

/** Mains terminals beyond the ground-fault device that copper joins to the supply's earth. */
export function earthedMains(job: OracleJob, copper: Groups): string[] {
  const earth = earthOf(job, copper)
  const first = job.boards.findIndex(board =>
    board.parts.some(each => each.kind === 'ground-fault'),
  )
  return job.boards.flatMap((board, at) => {
    if (at < first) return []
    const before = at === first ? supplySide(board) : new Set<string>()
    return board.terminals
      .filter(each => each.class === 'mains' && !before.has(each.node))
      .filter(each => copper.of(each.node) === earth)
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

/** Low-voltage terminals that copper joins to mains, and loads with leads on both. */
export function mixedVolts(job: OracleJob, copper: Groups): string[] {
  const terminals = [...job.terminals.values()]
  const low = terminals.filter(each => each.class === 'low-voltage' || each.class === 'sensor')
  const lows = new Set(low.map(each => copper.of(each.node)))
  const mains = new Set(
    terminals.flatMap(each => (each.class === 'mains' ? [copper.of(each.node)] : [])),
  )
  const loads = job.loads.filter(load => {
    const leads = load.leads.map(lead => copper.of(innerNode(load.id, lead.id)))
    return leads.some(each => lows.has(each)) && leads.some(each => mains.has(each))
  })
  return [
    ...low.filter(each => mains.has(copper.of(each.node))).map(each => each.name),
    ...loads.map(each => each.id),
  ]
}

/** What conductors, board nodes and jumpers join. */
export function copperOf(job: OracleJob, landing: RawLanding): Groups {
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

/** What the jumpers of all boards join, as a landing sets them. */
export function joinJumpers(job: OracleJob, landing: RawLanding, groups: Groups): void {
  for (const board of job.boards)
    for (const jumper of board.jumpers) {
      const set = landing.jumpers[jumper.id] ?? jumper.factory
      const joins = jumper.positions.find(each => each.id === set)?.joins ?? []
      for (const [a, b] of joins) groups.join(`${board.id}.${a}`, `${board.id}.${b}`)
    }
}
