import type { Board, OracleJob } from './read-job.ts'
import { isEarth } from './read-job.ts'

/**
 * Nodes on the supply side of the ground-fault device, circuit by circuit.
 *
 * What lies before the device: earlier devices, and of its own board what it joins to the supply. A
 * circuit without a device of its own has that of the box, where there is one; else all of it counts
 * as the load side.
 */
export function supplySide(job: OracleJob): ReadonlySet<string> {
  const box = job.boards.at(-1)
  return new Set(
    job.circuits.flatMap((_, circuit) => {
      const devices = job.boards.filter(({ id }) => job.circuitByDevice.get(id) === circuit)
      const first = devices.findIndex(hasGroundFault)
      const own = devices[first]
      if (own)
        return [...devices.slice(0, first).flatMap(nodesOf), ...beforeSums(own, fedNodes(own))]
      if (!box || !hasGroundFault(box)) return []
      return [...devices.flatMap(nodesOf), ...beforeSums(box, landedNodes(job, circuit))]
    }),
  )
}

const hasGroundFault = (board: Board): boolean =>
  board.parts.some(each => each.kind === 'ground-fault')

const nodesOf = (board: Board): readonly string[] => board.terminals.map(each => each.node)

const fedNodes = (board: Board): readonly string[] =>
  Object.entries(board.fedAt).flatMap(([key, node]) => (isEarth(key) ? [] : [node]))

/** Where a circuit arrives at the box, by its feed. */
const landedNodes = (job: OracleJob, circuit: number): readonly string[] =>
  Object.entries(job.feed.lands).flatMap(([key, id]) =>
    isEarth(key) || key.startsWith('second-') !== circuit > 0
      ? []
      : (job.terminals.get(`box.${id}`)?.node ?? []),
  )

/** Nodes of a board that its own parts join to the supply, other than the parts its device sums. */
function beforeSums(board: Board, from: readonly string[]): ReadonlySet<string> {
  const summed = new Set(board.parts.flatMap(part => part.sums ?? []))
  const pairs = board.parts
    .filter(part => part.across && !summed.has(part.id) && part.kind !== 'electronics')
    .map(part => (part.across ?? []).map(node => `${board.id}.${node}`))
  const reached = new Set(from)
  for (const node of reached)
    for (const pair of pairs) if (pair.includes(node)) for (const each of pair) reached.add(each)
  return reached
}
