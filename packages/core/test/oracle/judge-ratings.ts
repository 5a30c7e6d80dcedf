import type { LandedEnd, Network, Switch } from './build-network.ts'
import { above } from './findings.ts'
import type { OracleJob } from './read-job.ts'
import type { Seen } from './seen.ts'
import { round, tell } from './seen.ts'
import { amps } from './settle-state.ts'
import type { Scaled, Solution } from './solve-dense.ts'
import { branchAmps, secondaryAmps, solveNetwork, voltsBetween } from './solve-dense.ts'

/** Amps through one thing that has a rating. */
interface Figure {
  readonly kind: '1a above rating' | '1c overloaded'
  readonly subject: string
  readonly through: number
  readonly rated: number
  /** How many conductor ends meet here; none in a winding. */
  readonly ends: number
}

/** Kinds 1a and 1c; motors draw at least their plate amps, though the volts at them be fewer. */
export function judgeRatings(seen: Seen): void {
  const { solution, closed } = seen.settled
  const { numbered } = solution
  const first = figuresOf(seen.job, solution)
  const motors = weakMotors(solution)
  const second = mayExceed(first, solution, motors)
    ? figuresOf(seen.job, solveNetwork(numbered, closed, motors))
    : first
  first.forEach(({ kind, subject, through, rated }, at) => {
    const most = Math.max(through, second[at]?.through ?? 0)
    tell(seen, kind, subject, above(most, rated), () => `${round(most)} A on ${round(rated)} A`)
  })
}

const WEAK = { from: 0.85, to: 1 }

/** Motor circuits below their plate volts, each with the share it has. */
function weakMotors(at: Solution): Scaled[] {
  const { circuits, circuitBranches } = at.numbered.network
  return circuits.flatMap((each, own) => {
    const by = each.isMotor ? voltsBetween(at, each.a, each.b) / each.plate : 0
    const branch = circuitBranches[own]
    return branch !== undefined && by >= WEAK.from && by < WEAK.to ? [{ branch, by }] : []
  })
}

const CLEAR_OF = { rating: 0.99, winding: 0.9 }

/**
 * Whether a second solution can bring any figure near its rating.
 *
 * A motor at a share of its plate volts draws at most the inverse of that share as much; without
 * capacitance nothing else rises by more than that, per end. Twice is a margin for the angle. A
 * winding is no path for a motor's amps: its own follow the volts at it, and those hardly move.
 */
function mayExceed(first: readonly Figure[], at: Solution, motors: readonly Scaled[]): boolean {
  const more = motors.reduce((sum, { branch, by }) => sum + amps(at, branch) * (1 / by - 1), 0)
  return (
    more > 0 &&
    first.some(({ through, rated, ends }) =>
      ends === 0
        ? through > CLEAR_OF.winding * rated
        : through + 2 * ends * more > CLEAR_OF.rating * rated,
    )
  )
}

const ABOVE: Figure['kind'] = '1a above rating'

/** One branch with a rating. */
type Single = Network['conductors'][number]

/** Every figure that has a rating, in the same order for each solution of one network. */
function figuresOf(job: OracleJob, at: Solution): Figure[] {
  const { network } = at.numbered
  const ofKind = (...kinds: readonly Switch['kind'][]) =>
    network.switches.filter(each => kinds.includes(each.kind))
  const single = (kind: Figure['kind'], all: readonly Single[]): Figure[] =>
    all.map(({ name, branch, rated }) => ({
      kind,
      subject: name,
      through: amps(at, branch),
      rated,
      ends: 1,
    }))
  return [
    ...[...network.landed].map(([terminal, ends]) => ({
      kind: ABOVE,
      subject: terminal,
      through: throughTerminal(at, ends),
      rated: job.terminals.get(terminal)?.rated ?? 0,
      ends: ends.length,
    })),
    ...single(ABOVE, ofKind('contact', 'switch')),
    ...single(ABOVE, network.jumpers),
    ...single(ABOVE, network.conductors),
    ...windingFigures(network, at),
    // what blows or trips for certain is open here, or the state is cleared
    ...single('1c overloaded', ofKind('fuse', 'pole')),
  ]
}

/** What comes by one end and leaves by another counts once. */
function throughTerminal(at: Solution, ends: readonly LandedEnd[]): number {
  let [magnitudes, re, im] = [0, 0, 0]
  for (const { branch, sign } of ends) {
    const own = branchAmps(at, branch)
    magnitudes += Math.hypot(own.re, own.im)
    re += sign * own.re
    im += sign * own.im
  }
  return (magnitudes + Math.hypot(re, im)) / 2
}

const windingFigures = (network: Network, at: Solution): Figure[] =>
  network.windings.flatMap(({ name, ratio, rated, magnetising }, own) => {
    const { re, im } = secondaryAmps(at, own)
    const idle = branchAmps(at, magnetising)
    const primary = Math.hypot(ratio * re + idle.re, ratio * im + idle.im)
    return [
      {
        kind: ABOVE,
        subject: `${name} secondary`,
        through: Math.hypot(re, im),
        rated: rated.secondary,
        ends: 0,
      },
      {
        kind: ABOVE,
        subject: `${name} primary`,
        through: primary,
        rated: rated.primary,
        ends: 0,
      },
    ]
  })
