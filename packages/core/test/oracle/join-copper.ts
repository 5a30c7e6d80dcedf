import type { Groups } from './groups.ts'
import { newGroups } from './groups.ts'
import { plateVolts, SAFE_VOLTS } from './load-circuits.ts'
import { readQuantity } from './quantities.ts'
import type { RawLanding, RawLoad } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'
import { earthLeadOf, innerNode, terminalUnder } from './read-job.ts'
import { supplySide } from './supply-side.ts'

/** Metal that copper does not join to the supply's earth, by its owner. */
export function unearthedMetal(job: OracleJob, landing: RawLanding, copper: Groups): string[] {
  const earths = earthsOf(job, copper)
  const boards = job.boards.filter(board => !earths.has(copper.of(board.earth)))
  const loads = job.loads.filter(load => {
    const isLanded = load.leads.some(each => isOnTerminal(job, landing, `${load.id}.${each.id}`))
    if (!isLanded || load.doubleInsulated === true) return false
    const lead = earthLeadOf(load)
    return lead === undefined
      ? isMainsLoad(landing, load)
      : !earths.has(copper.of(innerNode(load.id, lead)))
  })
  return [...boards, ...loads].map(each => each.id)
}

/** What copper joins to the earth of any circuit. */
function earthsOf(job: OracleJob, copper: Groups): ReadonlySet<string> {
  const firsts = new Set(job.circuits.map(each => each.first))
  const nodes = job.boards.flatMap(({ id, fedAt }) =>
    firsts.has(id) ? (fedAt['earth'] ?? []) : [],
  )
  return new Set(nodes.map(node => copper.of(node)))
}

const isMainsLoad = (landing: RawLanding, load: RawLoad): boolean =>
  (plateVolts(landing, load) ?? 0) > SAFE_VOLTS

const isOnTerminal = (job: OracleJob, landing: RawLanding, end: string): boolean =>
  terminalUnder(job, landing, end) !== undefined

/** Mains terminals beyond the ground-fault device that copper joins to the supply's earth. */
export function earthedMains(job: OracleJob, copper: Groups): string[] {
  const earths = earthsOf(job, copper)
  const before = supplySide(job)
  return job.boards
    .flatMap(board => board.terminals)
    .filter(each => each.class === 'mains' && !before.has(each.node))
    .filter(each => earths.has(copper.of(each.node)))
    .map(each => each.name)
}

/** Two leads on both, or any lead of what is insulated for low volts only, is mixed. */
export function mixedVolts(job: OracleJob, copper: Groups): string[] {
  const terminals = [...job.terminals.values()]
  const low = terminals.filter(each => each.class === 'low-voltage' || each.class === 'sensor')
  const lows = new Set(low.map(each => copper.of(each.node)))
  const mains = new Set(
    terminals.flatMap(each => (each.class === 'mains' ? [copper.of(each.node)] : [])),
  )
  const loads = job.loads.filter(load => {
    const groupOf = (lead: RawLoad['leads'][number]): string =>
      copper.of(innerNode(load.id, lead.id))
    const data = load.leads.filter(each => each.function === 'data').map(groupOf)
    const leads = load.leads.filter(each => each.function !== 'data').map(groupOf)
    const isOnLow = isLowVoltage(load) || leads.some(each => lows.has(each))
    return data.some(each => mains.has(each)) || (isOnLow && leads.some(each => mains.has(each)))
  })
  return [
    ...low.filter(each => mains.has(copper.of(each.node))).map(each => each.name),
    ...loads.map(each => each.id),
  ]
}

/** A probe, or a load whose plates are all extra-low voltage: not insulated for mains. */
function isLowVoltage(load: RawLoad): boolean {
  const plates = Object.values(load.straps?.positions ?? {}).map(each => each.volts)
  return [...plates, ...(load.volts === undefined ? [] : [load.volts])].every(
    volts => readQuantity(volts) <= SAFE_VOLTS,
  )
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
