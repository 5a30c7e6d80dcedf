import type { Network } from './build-network.ts'
import { configurations } from './configurations.ts'
import type { Findings } from './findings.ts'
import { above, isFull, note } from './findings.ts'
import { SAFE_VOLTS } from './load-circuits.ts'
import type { OracleJob, Terminal } from './read-job.ts'
import type { Numbered } from './solve-dense.ts'
import { solveNetwork, voltsBetween } from './solve-dense.ts'
import type { States } from './states.ts'

/** What is opened by a hand or a trip, and has to leave the box dead. */
interface Opening {
  readonly kinds: readonly string[]
  readonly device: string
  /** Indices of the switches. */
  readonly opens: readonly number[]
}

/** Kinds 5a and 5d: with a device open, nothing may be live at the box in any mode. */
export function judgeOpenings(
  job: OracleJob,
  numbered: Numbered,
  states: States,
  findings: Findings,
): void {
  const box = [...job.terminals.values()].filter(
    each => each.class === 'mains' && each.name.startsWith('box.'),
  )
  const openings = openingsOf(job, numbered.network)
  for (const mode of configurations(job, numbered.network, states.modes, 'closed'))
    for (const opening of openings) {
      if (isFull(findings)) return
      const closed = mode.closed.slice()
      for (const each of opening.opens) closed[each] = 0
      const solution = solveNetwork(numbered, closed)
      const volts = (each: Terminal): number => voltsBetween(solution, each.node)
      for (const terminal of box)
        for (const kind of opening.kinds)
          note(
            findings,
            { kind, subject: terminal.name, level: above(volts(terminal), SAFE_VOLTS) },
            () =>
              `${volts(terminal).toFixed(1)} V with ${opening.device} open in mode ${mode.name}`,
          )
    }
}

/** The sums of each ground-fault device, and all poles and switches of each device; equal ones once. */
function openingsOf(job: OracleJob, network: Network): Opening[] {
  const bypassed = network.groundFaults.map(({ name, sums }) => ({
    kinds: ['5a bypassed'],
    device: name,
    opens: sums,
  }))
  const devices = job.boards.filter(board => board.id !== 'box')
  const wiredRound = devices.map(({ id }) => ({
    kinds: ['5d disconnect wired round'],
    device: id,
    opens: network.switches.flatMap((each, at) =>
      each.board === id && (each.kind === 'pole' || each.kind === 'switch') ? [at] : [],
    ),
  }))
  const found = new Map<string, Opening>()
  for (const each of [...bypassed, ...wiredRound]) {
    if (each.opens.length === 0) continue
    const key = each.opens.toSorted((a, b) => a - b).join(' ')
    const same = found.get(key)
    found.set(key, same ? { ...same, kinds: [...same.kinds, ...each.kinds] } : each)
  }
  return [...found.values()]
}
