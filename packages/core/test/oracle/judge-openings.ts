import type { Network } from './build-network.ts'
import { configurations } from './configurations.ts'
import type { Findings, Level } from './findings.ts'
import { above, both, isFull, note } from './findings.ts'
import { SAFE_VOLTS } from './load-circuits.ts'
import type { RawLanding } from './raw-files.ts'
import type { OracleJob, Terminal } from './read-job.ts'
import { terminalUnder } from './read-job.ts'
import type { Numbered } from './solve-dense.ts'
import { solveNetwork, voltsBetween } from './solve-dense.ts'
import type { State } from './states.ts'

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
  landing: RawLanding,
  numbered: Numbered,
  at: { readonly modes: readonly State[]; readonly isReached: Level },
  findings: Findings,
): void {
  const box = mainsOfBox(job, landing, numbered.network)
  const openings = openingsOf(job, numbered.network)
  configurations(job, numbered.network, at.modes, 'closed').forEach((mode, index) => {
    const isReached = index === 0 ? 2 : at.isReached // the first is all-off
    for (const opening of openings) {
      if (isFull(findings)) return
      const closed = mode.closed.slice()
      for (const each of opening.opens) closed[each] = 0
      const solution = solveNetwork(numbered, closed)
      const volts = (each: Terminal): number => voltsBetween(solution, each.node)
      for (const { terminal, isSupplySide } of box)
        for (const kind of opening.kinds) {
          if (kind === BYPASSED && isSupplySide) continue
          const level = both(isReached, above(volts(terminal), SAFE_VOLTS))
          note(
            findings,
            { kind, subject: terminal.name, level },
            () =>
              `${volts(terminal).toFixed(1)} V with ${opening.device} open in mode ${mode.name}`,
          )
        }
    }
  })
}

const BYPASSED = '5a bypassed'
const WIRED_ROUND = '5d disconnect wired round'

/** The box's mains terminals; where only the box has a device, those that its feed lands on lie before it. */
function mainsOfBox(job: OracleJob, landing: RawLanding, { groundFaults }: Network) {
  const isOnlyInBox = groundFaults.every(each => each.board === 'box')
  const landed = new Set(
    Object.values(job.feed.lands).map(id => job.terminals.get(`box.${id}`)?.node),
  )
  const feeding = new Set(
    job.loads.flatMap(load =>
      load.leads.map(lead => terminalUnder(job, landing, `${load.id}.${lead.id}`)?.name),
    ),
  )
  return [...job.terminals.values()]
    .filter(each => each.class === 'mains' && each.name.startsWith('box.'))
    .map(terminal => ({
      terminal,
      isSupplySide: isOnlyInBox && landed.has(terminal.node) && !feeding.has(terminal.name),
    }))
}

/**
 * The sums of all ground-fault devices together, and all poles and switches of each supply device
 * with those of every other circuit; equal ones once.
 */
function openingsOf(job: OracleJob, network: Network): Opening[] {
  const bypassed = {
    kinds: [BYPASSED],
    device: network.groundFaults.map(each => each.name).join(' and '),
    opens: network.groundFaults.flatMap(each => each.sums),
  }
  const wiredRound = [...job.circuitByDevice].flatMap(([id, circuit]) => {
    if (opensOf(network, id).length === 0) return []
    const elsewhere = [...job.circuitByDevice].flatMap(([other, at]) =>
      at === circuit ? [] : [other],
    )
    const opens = [id, ...elsewhere].flatMap(each => opensOf(network, each))
    return [{ kinds: [WIRED_ROUND], device: id, opens }]
  })
  const found = new Map<string, Opening>()
  for (const each of [bypassed, ...wiredRound]) {
    if (each.opens.length === 0) continue
    const key = each.opens.toSorted((a, b) => a - b).join(' ')
    const same = found.get(key)
    found.set(key, same ? { ...same, kinds: [...same.kinds, ...each.kinds] } : each)
  }
  return [...found.values()]
}

/** Indices of the poles and switches of a board. */
const opensOf = (network: Network, board: string): number[] =>
  network.switches.flatMap((each, at) =>
    each.board === board && (each.kind === 'pole' || each.kind === 'switch') ? [at] : [],
  )
