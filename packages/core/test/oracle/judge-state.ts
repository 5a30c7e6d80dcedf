import type { Level } from './findings.ts'
import { above, below, both, either, not, note } from './findings.ts'
import { holdsBothPolesOpen } from './heater-poles.ts'
import { judgeRatings } from './judge-ratings.ts'
import type { LoadCircuit } from './load-circuits.ts'
import { SAFE_VOLTS } from './load-circuits.ts'
import type { Seen } from './seen.ts'
import { round, tell } from './seen.ts'
import { afterTrips, amps, groundFaultSum } from './settle-state.ts'
import { solveNetwork, voltsBetween } from './solve-dense.ts'

const METAL_VOLTS = 5
const EARTH_AMPS = 10e-3 // where no ground-fault device gives its own
const TOUCH_AMPS = 0.5e-3 // IEC 60990
const AWAKE_VOLTS = 85
const SHARE = { energised: 0.1, energisedOff: 0.25, over: 1.1, under: 0.85 }

/** Kinds 1a, 1c, 2, 3, 4b, 4c, 5c, 7a, 8 and 10, in one state that is not cleared. */
export function judgeState(seen: Seen): void {
  if (seen.settled.fuse === 1)
    note(
      seen.findings,
      { kind: 'trips', subject: 'a fuse', level: 1 },
      () => `near its blow in ${seen.state}`,
    )
  if (seen.settled.onlyByBand)
    note(
      seen.findings,
      { kind: 'trips', subject: 'ground fault', level: 1 },
      () => `only by the band in ${seen.state}`,
    )
  if (seen.holds === 0) return
  judgeRatings(seen)
  judgeVolts(seen)
  judgeLowVoltage(seen)
  judgeMetal(seen)
  judgeEarths(seen)
  judgeSum(seen)
  judgeDryHeater(seen)
  judgeTwoSpeeds(seen)
  judgeLoose(seen)
}

const voltsOf = (seen: Seen, each: LoadCircuit): number =>
  voltsBetween(seen.settled.solution, each.a, each.b)

/** Whether a circuit has at least that share of its plate volts across it. */
const hasShare = (seen: Seen, each: LoadCircuit, share: number): Level =>
  above(voltsOf(seen, each), share * each.plate)

const circuitsOf = (seen: Seen): readonly LoadCircuit[] =>
  seen.settled.solution.numbered.network.circuits

function judgeVolts(seen: Seen): void {
  const { high, low } = seen.job.band
  for (const each of circuitsOf(seen)) {
    const across = voltsOf(seen, each)
    const isOver = above(across * high, SHARE.over * each.plate)
    const isUnder = each.isMotor
      ? both(hasShare(seen, each, SHARE.energised), below(across * low, SHARE.under * each.plate))
      : 0
    tell(
      seen,
      '2 volts',
      each.name,
      either(isOver, isUnder),
      () => `${round(across)} V on ${each.plate} V`,
    )
  }
}

function judgeLowVoltage(seen: Seen): void {
  const { solution } = seen.settled
  for (const terminal of seen.job.terminals.values()) {
    if (terminal.class !== 'low-voltage' && terminal.class !== 'sensor') continue
    const at = voltsBetween(solution, terminal.node)
    tell(
      seen,
      '3 low voltage',
      terminal.name,
      above(at, SAFE_VOLTS),
      () => `${round(at)} V to the reference`,
    )
  }
  for (const each of solution.numbered.network.windings) {
    const across = voltsBetween(solution, ...each.primary)
    const level = above(across * seen.job.band.high, SHARE.over * each.plate)
    tell(seen, '3 low voltage', each.name, level, () => `${round(across)} V on ${each.plate} V`)
  }
}

function judgeMetal(seen: Seen): void {
  for (const each of seen.settled.solution.numbered.network.metal) {
    const at = voltsBetween(seen.settled.solution, each.node)
    const level = above(at * seen.job.band.high, METAL_VOLTS)
    tell(seen, '4b metal', each.name, level, () => `${round(at)} V to the reference`)
  }
}

function judgeEarths(seen: Seen): void {
  const { network } = seen.settled.solution.numbered
  const bounds = network.groundFaults.map(each => each.trip.from)
  const limit = bounds.length > 0 ? Math.min(...bounds) : EARTH_AMPS
  for (const each of network.earths) {
    const through = amps(seen.settled.solution, each.branch)
    tell(seen, '4c earth', each.name, above(through, limit), () => `carries ${round(through)} A`)
  }
}

function judgeSum(seen: Seen): void {
  for (const each of seen.settled.solution.numbered.network.groundFaults) {
    const sum = groundFaultSum(seen.settled.solution, each.sums)
    const level = above(sum * seen.job.band.high, each.trip.from)
    tell(seen, '5c sum', each.name, level, () => `${round(1000 * sum)} mA`)
  }
}

const heatersOf = (seen: Seen): readonly LoadCircuit[] =>
  circuitsOf(seen).filter(each => each.isHeater)

function judgeDryHeater(seen: Seen): void {
  const moves = circuitsOf(seen)
    .filter(each => each.movesWater)
    .map(each => both(hasShare(seen, each, SHARE.under), not(hasShare(seen, each, SHARE.over))))
  for (const each of heatersOf(seen)) {
    const level = both(hasShare(seen, each, SHARE.energised), not(either(...moves)))
    tell(
      seen,
      '7a dry heater',
      each.name,
      level,
      () => `${round(voltsOf(seen, each))} V, no water moved`,
    )
  }
}

/** Kind 7b, in a state whose limit contacts are open. */
export function judgeLimitOpen(seen: Seen): void {
  for (const each of heatersOf(seen)) {
    const level = hasShare(seen, each, SHARE.energised)
    tell(
      seen,
      '7b past the limit',
      each.name,
      level,
      () => `${round(voltsOf(seen, each))} V, limit open`,
    )
  }
}

function judgeTwoSpeeds(seen: Seen): void {
  const motors = circuitsOf(seen).filter(each => each.isMotor)
  for (const [at, one] of motors.entries())
    for (const two of motors.slice(at + 1))
      if (one.load === two.load) {
        const level = both(
          hasShare(seen, one, SHARE.energised),
          hasShare(seen, two, SHARE.energised),
        )
        tell(
          seen,
          '8 two circuits',
          one.load.id,
          level,
          () => `${one.circuit} and ${two.circuit} together`,
        )
      }
}

function judgeLoose(seen: Seen): void {
  const { solution, closed } = seen.settled
  solution.numbered.network.switches.forEach((each, at) => {
    if (each.kind !== 'touch') return
    const touched = closed.slice()
    touched[at] = 1
    const through = amps(solveNetwork(solution.numbered, touched), each.branch)
    tell(
      seen,
      '10 loose and live',
      each.name,
      above(through, TOUCH_AMPS),
      () => `${round(1000 * through)} mA by touch`,
    )
  })
}

/** Kinds 5b, 6a and 7c, in the all-off state. */
export function judgeAllOff(seen: Seen): void {
  judgeBlind(seen)
  for (const each of circuitsOf(seen)) {
    if (!each.isMains || each.load.kind === 'audio') continue // audio is always on
    const level = hasShare(seen, each, SHARE.energisedOff)
    tell(seen, '6a on while off', each.name, level, () => `${round(voltsOf(seen, each))} V`)
  }
  if (holdsBothPolesOpen(seen.job)) judgeSecondContact(seen)
}

const LIVE_SHARE = 0.5

/** Kind 7c: a live node of an idle heater leaves one contact between it and heat without end. */
function judgeSecondContact(seen: Seen): void {
  for (const each of heatersOf(seen)) {
    if (!each.isMains) continue
    const volts = [each.a, each.b].map(node => voltsBetween(seen.settled.solution, node))
    const live = Math.max(...volts)
    tell(
      seen,
      '7c past the second contact',
      each.name,
      above(live, LIVE_SHARE * seen.job.legVolts),
      () => `${round(live)} V to the reference`,
    )
  }
}

const DEAD_SHARE = 0.5

/** Whether no command acts: the box's electronics lack their volts, and nothing has tripped for good. */
export function isDeadBox(seen: Seen): Level {
  const { solution } = seen.settled
  const { electronics } = solution.numbered.network
  if (electronics.length === 0) return 0
  return both(
    seen.holds,
    ...electronics.map(({ across, volts }) =>
      below(voltsBetween(solution, ...across), DEAD_SHARE * volts),
    ),
  )
}

/** Blind is a lasting fault: where the state trips, it counts if it shows before and after. */
function judgeBlind(seen: Seen): void {
  const { before, tripped } = seen.settled
  for (const each of before.numbered.network.groundFaults) {
    if (!each.poweredFrom) continue
    const volts = voltsBetween(before, ...each.poweredFrom)
    let level = below(volts, AWAKE_VOLTS)
    if (level > 0 && tripped.length > 0)
      level = both(
        level,
        below(voltsBetween(afterTrips(seen.settled), ...each.poweredFrom), AWAKE_VOLTS),
      )
    note(seen.findings, { kind: '5b blind', subject: each.name, level }, () => `${round(volts)} V`)
  }
}

const NEUTRAL_SHARE = 0.1

/** Kind 6b, first half: in the all-off state both nodes are live, nothing across. */
export function isLiveBothSides(seen: Seen, each: LoadCircuit): Level {
  const { solution } = seen.settled
  const limit = LIVE_SHARE * seen.job.legVolts
  return both(
    each.isMains ? 2 : 0,
    seen.holds,
    above(voltsBetween(solution, each.a), limit),
    above(voltsBetween(solution, each.b), limit),
    not(hasShare(seen, each, SHARE.energised)),
  )
}

/** Kind 6b, second half: energised with one of its nodes near the reference. */
export function isRunFromNeutral(seen: Seen, each: LoadCircuit): Level {
  const { solution } = seen.settled
  const limit = NEUTRAL_SHARE * seen.job.legVolts
  const nodes = [each.a, each.b].map(node => below(voltsBetween(solution, node), limit))
  return both(seen.holds, hasShare(seen, each, SHARE.energised), either(...nodes))
}
