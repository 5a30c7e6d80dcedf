import { isAsPlanned } from './as-planned.ts'
import type { Network } from './build-network.ts'
import { buildNetwork } from './build-network.ts'
import type { Configuration } from './configurations.ts'
import { configurations } from './configurations.ts'
import type { Findings, Level } from './findings.ts'
import { both, either, isFull, newFindings, not, note } from './findings.ts'
import { judgeOnce } from './judge-once.ts'
import { judgeOpenings } from './judge-openings.ts'
import {
  isDeadBox,
  isLiveBothSides,
  isRunFromNeutral,
  judgeAllOff,
  judgeLimitOpen,
  judgeState,
} from './judge-state.ts'
import type { Overrides, RawLanding } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'
import type { Seen } from './seen.ts'
import { seenState } from './seen.ts'
import { settleState } from './settle-state.ts'
import { numberNetwork } from './solve-dense.ts'
import type { States } from './states.ts'
import { statesOf } from './states.ts'

export type JudgementClass = 'hazardous' | 'harmless' | 'right' | 'undecided'

export interface Judgement {
  readonly class: JudgementClass
  readonly reasons: readonly string[]
}

const MOST_REASONS = 5

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
  judgeStates(job, landing, network, findings)
  if (job.isTurnable)
    judgeStates(job, landing, buildNetwork(job, landing, overrides, true), findings)
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

const ALL_OFF: States = { modes: [[]], all: [[]] }

/** Every state that the box reaches, then what is opened by hand: with the plug one way round. */
function judgeStates(
  job: OracleJob,
  landing: RawLanding,
  network: Network,
  findings: Findings,
): void {
  const states = knownStates(job, landing.settings)
  if (isFull(findings)) return
  const numbered = numberNetwork(network)
  const seenIn = (at: Configuration, isReached: Level): Seen =>
    seenState(job, findings, settleState(job, numbered, at.closed), { name: at.name, isReached })
  const [allOff] = configurations(job, network, ALL_OFF.all, 'closed')
  if (!allOff) return
  const off = seenIn(allOff, 2)
  judgeState(off)
  judgeAllOff(off)
  const isDead = isDeadBox(off)
  const isReached = not(isDead)
  const reached = isDead === 2 ? ALL_OFF : states
  const others = configurations(job, network, reached.all, 'closed').slice(1)
  judgeNeutralSwitched(off, others, each => {
    const seen = seenIn(each, isReached)
    judgeState(seen)
    return seen
  })
  for (const each of configurations(job, network, reached.all, 'open')) {
    if (isFull(findings)) return
    judgeLimitOpen(seenIn(each, isReached))
  }
  judgeOpenings(job, landing, numbered, { modes: reached.modes, isReached }, findings)
}

/** Kind 6b, along with every other state: `judged` is asked for each, until there are reasons enough. */
function judgeNeutralSwitched(
  off: Seen,
  others: readonly Configuration[],
  judged: (at: Configuration) => Seen,
): void {
  const { findings } = off
  const { circuits } = off.settled.solution.numbered.network
  const isLive = circuits.map(each => isLiveBothSides(off, each))
  const isRun = circuits.map((): Level => 0)
  for (const each of others) {
    if (isFull(findings)) return
    const seen = judged(each)
    circuits.forEach((circuit, at) => {
      if (isLive[at] !== 0) isRun[at] = either(isRun[at] ?? 0, isRunFromNeutral(seen, circuit))
    })
  }
  circuits.forEach((circuit, at) => {
    const level = both(isLive[at] ?? 0, isRun[at] ?? 0)
    note(findings, { kind: '6b only the neutral switched', subject: circuit.name, level }, () => '')
  })
}
