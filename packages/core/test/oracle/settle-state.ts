import type { Switch } from './build-network.ts'
import type { Level } from './findings.ts'
import { above, both, either } from './findings.ts'
import type { Numbered, Solution } from './solve-dense.ts'
import { branchAmps, solveNetwork, voltsBetween } from './solve-dense.ts'

const TRIP = 3
const AWAKE_VOLTS = 85

/** A state when fuses have blown and trips are known. */
export interface Settled {
  /** With what blew open, before anything trips. */
  readonly solution: Solution
  readonly closed: Uint8Array
  readonly cleared: Level
  /** Boards whose protection trips for certain. */
  readonly tripped: readonly string[]
  /** A fuse near the current it blows at. */
  readonly fuse: Level
  /** Certain to trip by the ground-fault sum at nominal volts, not at the low end of the band. */
  readonly onlyByBand: boolean
}

export const amps = (at: Solution, branch: number): number => {
  const { re, im } = branchAmps(at, branch)
  return Math.sqrt(re * re + im * im)
}

/** Magnitude of the sum of the currents that a ground-fault device watches [A]. */
export function groundFaultSum(at: Solution, sums: readonly number[]): number {
  const { switches } = at.numbered.network
  let [re, im] = [0, 0]
  for (const each of sums) {
    const through = branchAmps(at, switches[each]?.branch ?? 0)
    re += through.re
    im += through.im
  }
  return Math.sqrt(re * re + im * im)
}

/** Solves a state: fuses blow one by one, the most loaded first; then breakers and sums trip. */
export function settleState(numbered: Numbered, start: Uint8Array, low: number): Settled {
  const closed = start.slice()
  let solution = solveNetwork(numbered, closed)
  for (;;) {
    const worst = mostLoaded(solution, closed, 'fuse')
    if (worst.level < 2) break
    closed[worst.at] = 0
    solution = solveNetwork(numbered, closed)
  }
  const poles = polesTripping(solution, closed)
  const faults = faultsTripping(solution)
  const tripped = [...poles, ...faults].filter(each => each.level === 2)
  const isByPole = poles.some(each => each.level === 2)
  return {
    solution,
    closed,
    cleared: either(...[...poles, ...faults].map(each => each.level)),
    tripped: [...new Set(tripped.map(each => each.board))],
    fuse: mostLoaded(solution, closed, 'fuse').level,
    onlyByBand:
      tripped.length > 0 &&
      !isByPole &&
      faults.every(each => each.level < 2 || each.sum * low < each.to),
  }
}

/** The same state after its trips: all that the devices hold is open. */
export function afterTrips(settled: Settled): Solution {
  const { numbered } = settled.solution
  const closed = settled.closed.slice()
  numbered.network.switches.forEach((each, at) => {
    const opens = each.kind === 'pole' || each.kind === 'switch' || isSummed(numbered, at)
    if (opens && settled.tripped.includes(each.board)) closed[at] = 0
  })
  return solveNetwork(numbered, closed)
}

const isSummed = (numbered: Numbered, at: number): boolean =>
  numbered.network.groundFaults.some(each => each.sums.includes(at))

function mostLoaded(at: Solution, closed: Uint8Array, kind: Switch['kind']) {
  let worst = { at: -1, level: 0 as Level, ratio: 0 }
  at.numbered.network.switches.forEach((each, own) => {
    if (each.kind !== kind || closed[own] === 0) return
    const ratio = amps(at, each.branch) / (TRIP * each.rated)
    if (ratio > worst.ratio) worst = { at: own, level: above(ratio, 1), ratio }
  })
  return worst
}

function polesTripping(at: Solution, closed: Uint8Array): { board: string; level: Level }[] {
  return at.numbered.network.switches.flatMap((each, own) =>
    each.kind === 'pole' && closed[own] === 1
      ? [{ board: each.board, level: above(amps(at, each.branch), TRIP * each.rated) }]
      : [],
  )
}

function faultsTripping(at: Solution) {
  return at.numbered.network.groundFaults.map(each => {
    const sum = groundFaultSum(at, each.sums)
    const awake = each.poweredFrom ? above(voltsBetween(at, ...each.poweredFrom), AWAKE_VOLTS) : 2
    const level = both(awake as Level, above(sum, each.trip.to))
    return { board: each.board, level, sum, to: each.trip.to }
  })
}
