import type { Network } from './build-network.ts'
import { buildNetwork } from './build-network.ts'
import type { Findings, Level } from './findings.ts'
import { above, both, either, isFull, newFindings, note } from './findings.ts'
import { earthedMains, isAsPlanned, unearthedMetal } from './join-copper.ts'
import { judgeSensors } from './judge-sensors.ts'
import type { Seen } from './judge-state.ts'
import {
  isLiveBothSides,
  isRunFromNeutral,
  judgeAllOff,
  judgeLimitOpen,
  judgeState,
  seenState,
} from './judge-state.ts'
import type { Overrides, RawLanding } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'
import { settleState } from './settle-state.ts'
import type { Numbered } from './solve-dense.ts'
import { numberNetwork, solveNetwork, voltsBetween } from './solve-dense.ts'
import type { State, States } from './states.ts'
import { contactsClosed, statesOf } from './states.ts'

export type JudgementClass = 'hazardous' | 'harmless' | 'right' | 'undecided'

export interface Judgement {
  readonly class: JudgementClass
  readonly reasons: readonly string[]
}

const MOST_REASONS = 5
const SAFE_VOLTS = 50 // IEC 61140, extra-low voltage

/**
 * Judges one landing by the definitions in `DEFINITIONS.md`.
 *
 * A hazard outweighs all; the planned partition is right; a figure too near its limit is undecided,
 * unless the plan itself has the same figure there: then it is not what decides.
 *
 * @returns the class, and at most five reasons; with `first` the judging ends at the first hazard
 */
export function judgeLanding(
  job: OracleJob,
  landing: RawLanding,
  overrides: Overrides = {},
  options: { readonly first?: boolean } = {},
): Judgement {
  const findings = newFindings(options.first === true ? 1 : MOST_REASONS)
  findHazards(job, landing, overrides, findings)
  if (findings.hazards.size > 0)
    return { class: 'hazardous', reasons: [...findings.hazards.values()] }
  if (isAsPlanned(job, landing, overrides)) return { class: 'right', reasons: [] }
  const deciding = [...findings.near].filter(([key]) => !plannedNear(job).has(key))
  return deciding.length > 0
    ? { class: 'undecided', reasons: deciding.slice(0, MOST_REASONS).map(([, text]) => text) }
    : { class: 'harmless', reasons: [] }
}

const nearOfPlan = new WeakMap<OracleJob, ReadonlySet<string>>()

/** Which figures lie near their limits in the plan itself. */
function plannedNear(job: OracleJob): ReadonlySet<string> {
  const known = nearOfPlan.get(job)
  if (known) return known
  const findings = newFindings(MOST_REASONS)
  findHazards(job, job.plan, {}, findings)
  const keys = new Set(findings.near.keys())
  nearOfPlan.set(job, keys)
  return keys
}

function findHazards(
  job: OracleJob,
  landing: RawLanding,
  overrides: Overrides,
  findings: Findings,
): void {
  const network = buildNetwork(job, landing, overrides)
  judgeOnce(job, landing, network, findings)
  if (isFull(findings)) return
  const numbered = numberNetwork(network)
  const states = knownStates(job, landing.settings)
  judgeStates(job, numbered, states, findings)
  judgeBypass(job, numbered, states, findings)
}

/** Kinds 4a, 9, and a supply without a ground-fault device: they need no state. */
function judgeOnce(
  job: OracleJob,
  landing: RawLanding,
  network: Network,
  findings: Findings,
): void {
  for (const subject of unearthedMetal(job, landing))
    note(findings, { kind: '4a metal', subject, level: 2 }, () => 'not joined to earth by copper')
  for (const subject of earthedMains(job, landing))
    note(findings, { kind: '4a metal', subject, level: 2 }, () => 'joined to earth by copper')
  if (network.groundFaults.every(each => each.board === 'box'))
    note(
      findings,
      { kind: '5 supply', subject: 'supply', level: 2 },
      () => 'no ground-fault device',
    )
  judgeSensors(job, network, findings)
}

const statesByJob = new WeakMap<OracleJob, Map<string, States>>()

function knownStates(job: OracleJob, settings: RawLanding['settings']): States {
  const own = statesByJob.get(job) ?? new Map<string, States>()
  statesByJob.set(job, own)
  const key = `${settings.profile} ${settings.currentLimit}`
  const states = own.get(key) ?? statesOf(job, settings)
  own.set(key, states)
  return states
}

/** Which switches are closed in a state; one value per switch. */
export function switchesIn(
  job: OracleJob,
  network: Network,
  state: State,
  limit: 'closed' | 'open',
): Uint8Array {
  const on = contactsClosed(job, state)
  return Uint8Array.from(network.switches, each => {
    if (each.kind === 'touch') return 0
    if (each.kind !== 'contact') return 1
    if (each.isLimit) return limit === 'closed' ? 1 : 0
    return each.board === 'box' && on.has(each.name.slice('box.'.length)) ? 1 : 0
  })
}

/** Each distinct set of closed switches once, the first state that makes it standing for it. */
function configurations(
  job: OracleJob,
  network: Network,
  states: readonly State[],
  limit: 'closed' | 'open',
): { closed: Uint8Array; name: string }[] {
  const found = new Map<string, { closed: Uint8Array; name: string }>()
  for (const state of states) {
    const closed = switchesIn(job, network, state, limit)
    const key = closed.join('')
    if (!found.has(key)) found.set(key, { closed, name: `{${state.join(', ')}}` })
  }
  return [...found.values()]
}

function judgeStates(job: OracleJob, numbered: Numbered, states: States, findings: Findings): void {
  const { network } = numbered
  const seenIn = (at: { closed: Uint8Array; name: string }): Seen =>
    seenState(job, findings, settleState(numbered, at.closed, job.band.low), at.name)
  const [allOff, ...others] = configurations(job, network, states.all, 'closed')
  if (!allOff) return
  const off = seenIn(allOff)
  judgeState(off)
  judgeAllOff(off)
  const both6b = network.circuits.map(each => isLiveBothSides(off, each))
  const run6b = network.circuits.map((): Level => 0)
  for (const each of others) {
    if (isFull(findings)) return
    const seen = seenIn(each)
    judgeState(seen)
    network.circuits.forEach((circuit, at) => {
      if (both6b[at] !== 0) run6b[at] = either(run6b[at] ?? 0, isRunFromNeutral(seen, circuit))
    })
  }
  network.circuits.forEach((circuit, at) => {
    const level = both(both6b[at] ?? 0, run6b[at] ?? 0)
    note(findings, { kind: '6b only the neutral switched', subject: circuit.name, level }, () => '')
  })
  for (const each of configurations(job, network, states.all, 'open')) {
    if (isFull(findings)) return
    judgeLimitOpen(seenIn(each))
  }
}

/** Kind 5a: with the device open, nothing may be live at the box in any mode. */
function judgeBypass(job: OracleJob, numbered: Numbered, states: States, findings: Findings): void {
  const box = [...job.terminals.values()].filter(
    each => each.class === 'mains' && each.name.startsWith('box.'),
  )
  for (const mode of configurations(job, numbered.network, states.modes, 'closed'))
    for (const device of numbered.network.groundFaults) {
      if (isFull(findings)) return
      const closed = mode.closed.slice()
      for (const each of device.sums) closed[each] = 0
      const solution = solveNetwork(numbered, closed)
      for (const terminal of box) {
        const volts = voltsBetween(solution, terminal.node)
        note(
          findings,
          { kind: '5a bypassed', subject: terminal.name, level: above(volts, SAFE_VOLTS) },
          () => `${volts.toFixed(1)} V with ${device.name} open in mode ${mode.name}`,
        )
      }
    }
}
