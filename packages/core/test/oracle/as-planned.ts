import type { Groups } from './groups.ts'
import { newGroups } from './groups.ts'
import { joinJumpers } from './join-copper.ts'
import { strapOf } from './load-circuits.ts'
import { readQuantity } from './quantities.ts'
import type { Overrides, RawLanding } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'
import { isMotor, placeOfEnd, terminalUnder } from './read-job.ts'
import { hasPlannedTaps } from './transformer-taps.ts'

/** Whether a landing is the plan: same partition, straps, taps, settings, probes, no terminal crowded. */
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
  if (!hasPlannedTaps(job.boards, landing, plan)) return false
  if (hasCrowdedTerminal(job, landing) || hasUnheldEnd(job, landing)) return false
  return isSamePartition(job, exchangedBack(job, landing))
}

/** Whether a terminal has more ends on it than it takes and than the plan puts there. */
function hasCrowdedTerminal(job: OracleJob, landing: RawLanding): boolean {
  const planned = endsByTerminal(job, job.plan)
  return [...endsByTerminal(job, landing)].some(
    ([terminal, count]) =>
      count > Math.max(job.terminals.get(terminal)?.takes ?? 1, planned.get(terminal) ?? 0),
  )
}

/** Whether an end is on a terminal that does not hold its size. */
function hasUnheldEnd(job: OracleJob, landing: RawLanding): boolean {
  return [...job.ends].some(([name, { area }]) => {
    const holds = terminalUnder(job, landing, name)?.holds
    return holds !== undefined && (area < holds[0] || area > holds[1])
  })
}

/** How many ends each terminal has. */
function endsByTerminal(job: OracleJob, landing: RawLanding): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const end of job.ends.keys()) {
    const terminal = terminalUnder(job, landing, end)
    if (terminal) counts.set(terminal.name, (counts.get(terminal.name) ?? 0) + 1)
  }
  return counts
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
