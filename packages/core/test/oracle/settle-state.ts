import type { Level } from './findings.ts'
import { above, both, either } from './findings.ts'
import type { OracleJob } from './read-job.ts'
import type { Numbered, Solution } from './solve-dense.ts'
import { branchAmps, solveNetwork, voltsBetween } from './solve-dense.ts'

const TRIP = 3
const AWAKE_VOLTS = 85

/** A state when fuses have blown and trips are known. */
export interface Settled {
  /** With what blew open; of several circuits, with those open that have tripped before. */
  readonly solution: Solution
  /** With what blew open, before anything trips. */
  readonly before: Solution
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
export function settleState(job: OracleJob, numbered: Numbered, start: Uint8Array): Settled {
  const closed = start.slice()
  const first = lookAt(job, numbered, closed)
  return job.circuits.length === 1
    ? settled(first, first, {
        cleared: either(...first.trips.map(each => each.level)),
        tripped: certain(first).map(each => each.board),
        onlyByBand: certain(first).length > 0 && certain(first).every(each => each.isByBand),
      })
    : settleCircuits(job, first)
}

/** One trip opens one circuit, and all is looked at again; only when none is left is it dead. */
function settleCircuits(job: OracleJob, first: Look): Settled {
  const tripped: string[] = []
  const open = new Set<number>()
  let [look, fuse, onlyByBand] = [first, first.fuse, false]
  for (;;) {
    const trip = foremost(certain(look).filter(each => !tripped.includes(each.board)))
    if (!trip) break
    tripped.push(trip.board)
    onlyByBand ||= trip.isByBand
    const circuit = job.circuitByDevice.get(trip.board)
    if (circuit !== undefined) open.add(circuit)
    if (circuit === undefined || open.size === job.circuits.length)
      return settled(first, look, { cleared: 2, tripped, onlyByBand })
    for (const each of openedBy(look.numbered, trip.board)) look.closed[each] = 0
    look = lookAt(job, look.numbered, look.closed)
    fuse = either(fuse, look.fuse)
  }
  const near = look.trips.some(each => each.level === 1) ? 1 : 0
  return settled(first, { ...look, fuse }, { cleared: near, tripped, onlyByBand })
}

const settled = (
  { solution: before }: Look,
  { solution, closed, fuse }: Look,
  found: Pick<Settled, 'cleared' | 'tripped' | 'onlyByBand'>,
): Settled => ({ solution, before, closed, fuse, ...found })

/** The same state after its trips: all that the devices hold is open. */
export function afterTrips({ solution: { numbered }, closed, tripped }: Settled): Solution {
  const after = closed.slice()
  for (const board of tripped) for (const each of openedBy(numbered, board)) after[each] = 0
  return solveNetwork(numbered, after)
}

/** Indices of the switches that a trip on a board opens. */
function openedBy({ network }: Numbered, board: string): number[] {
  const isSummed = (at: number) => network.groundFaults.some(each => each.sums.includes(at))
  return network.switches.flatMap((each, at) =>
    each.board === board && (each.kind === 'pole' || each.kind === 'switch' || isSummed(at))
      ? [at]
      : [],
  )
}

/** Something that trips: certain, near or not. */
interface Trip {
  readonly board: string
  readonly level: Level
  readonly kind: 'pole' | 'ground fault'
  /** Through the pole, or the sum. */
  readonly amps: number
  /** Only of a sum: not at the low end of the band. */
  readonly isByBand: boolean
}

/** A state as it is once no fuse is left to blow. */
interface Look {
  readonly numbered: Numbered
  readonly solution: Solution
  readonly closed: Uint8Array
  readonly fuse: Level
  readonly trips: readonly Trip[]
}

/** Solves, and opens each fuse that blows, the most loaded first; `closed` is changed. */
function lookAt(job: OracleJob, numbered: Numbered, closed: Uint8Array): Look {
  let solution = solveNetwork(numbered, closed)
  let worst = mostLoadedFuse(solution, closed)
  while (worst.level === 2) {
    closed[worst.at] = 0
    solution = solveNetwork(numbered, closed)
    worst = mostLoadedFuse(solution, closed)
  }
  const trips = [...polesTripping(solution, closed), ...faultsTripping(solution, job.band.low)]
  return { numbered, solution, closed, fuse: worst.level, trips }
}

const certain = ({ trips }: Look): readonly Trip[] => trips.filter(each => each.level === 2)

const SAME = 1 + 1e-9

/** The pole at the most amps, of equal ones the first; else the first ground-fault device. */
function foremost(trips: readonly Trip[]): Trip | undefined {
  const poles = trips.filter(each => each.kind === 'pole')
  return poles.length === 0
    ? trips[0]
    : poles.reduce((most, each) => (each.amps > most.amps * SAME ? each : most))
}

function mostLoadedFuse(at: Solution, closed: Uint8Array) {
  let worst = { at: -1, level: 0 as Level, ratio: 0 }
  at.numbered.network.switches.forEach((each, own) => {
    if (each.kind !== 'fuse' || closed[own] === 0) return
    const ratio = amps(at, each.branch) / (TRIP * each.rated)
    if (ratio > worst.ratio) worst = { at: own, level: above(ratio, 1), ratio }
  })
  return worst
}

const polesTripping = (at: Solution, closed: Uint8Array): Trip[] =>
  at.numbered.network.switches.flatMap(({ kind, board, branch, rated }, own): Trip[] => {
    if (kind !== 'pole' || closed[own] === 0) return []
    const through = amps(at, branch)
    return [{ board, kind, level: above(through, TRIP * rated), amps: through, isByBand: false }]
  })

const faultsTripping = (at: Solution, low: number): Trip[] =>
  at.numbered.network.groundFaults.map(({ board, sums, trip, poweredFrom }): Trip => {
    const sum = groundFaultSum(at, sums)
    const awake = poweredFrom ? above(voltsBetween(at, ...poweredFrom), AWAKE_VOLTS) : 2
    const level = both(awake, above(sum, trip.to))
    return { board, kind: 'ground fault', level, amps: sum, isByBand: sum * low < trip.to }
  })
