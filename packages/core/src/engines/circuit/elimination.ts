/** A branch of the mesh to be eliminated, between node indices; `isDriven` when it holds an EMF. */
export interface MeshBranch {
  readonly from: number
  readonly to: number
  readonly isDriven: boolean
}

/**
 * The star–mesh elimination of one topology, as a list of integers that a numeric solve replays.
 *
 * Complex numbers lie in one array of `valueCount` numbers, real and imaginary part side by side:
 * first the admittances of the node pairs (branches in parallel share one), then their Norton
 * currents. All offsets point into it. `steps` holds for each pivot, in order of elimination:
 *
 *     node, n, ratio offset, n × (admittance, neighbour),
 *     s, s × (current, sign),              currents into the pivot
 *     n·(n−1)/2 × admittance,              pairs (1,0) (2,0) (2,1) … of neighbours
 *     m, m × (target current, source current, neighbour's position, sign)
 */
export interface Elimination {
  readonly nodeCount: number
  readonly valueCount: number
  readonly ratioCount: number
  readonly steps: Int32Array
  /** Where each pivot's record starts in `steps`. */
  readonly starts: Int32Array
  /** Per branch: offset of its admittance. */
  readonly admittances: Int32Array
  /** Per branch: offset of its Norton current, or −1. */
  readonly currents: Int32Array
  /** Per branch: +1 where that current is counted from `from` to `to`, else −1. */
  readonly signs: Int32Array
}

/** The Norton current of a node pair, counted into `head`. */
interface PairCurrent {
  readonly offset: number
  readonly head: number
}

/** Offset of the pair's admittance by neighbour, for every node that still stands. */
type Neighbours = Map<number, number>[]

/** What grows while the elimination is planned. */
interface Plan {
  readonly neighbours: Neighbours
  readonly currents: Map<number, PairCurrent>
  readonly steps: number[]
  readonly starts: number[]
  admittanceCount: number
  ratioCount: number
}

/**
 * Chooses an order of elimination (least degree first, then lowest index) and writes it down.
 *
 * @param ground - the node that is never eliminated; every other node that a branch names must be
 *   joined to it, and one that none names is left out
 * @param branches - none may join a node to itself
 * @source [ROSEN-1924] the star–mesh rule; docs/derivations/star-mesh.md
 */
export function planElimination(
  nodeCount: number,
  ground: number,
  branches: readonly MeshBranch[],
): Elimination {
  const plan = newPlan(nodeCount)
  const admittances = branches.map(({ from, to }) => admittanceOf(plan, from, to))
  const driven = branches.map(({ from, to, isDriven }) =>
    isDriven ? currentOf(plan, from, to, to) : undefined,
  )
  const waiting = plan.neighbours.flatMap(({ size }, node) =>
    size > 0 && node !== ground ? [node] : [],
  )
  while (waiting.length > 0) {
    const [pivot] = waiting.splice(leastDegree(waiting, plan.neighbours), 1)
    planPivot(plan, pivot as number)
  }
  const currentsAt = 2 * plan.admittanceCount
  return {
    nodeCount,
    valueCount: currentsAt + 2 * plan.currents.size,
    ratioCount: plan.ratioCount,
    steps: withCurrentsAt(plan, currentsAt),
    starts: new Int32Array(plan.starts),
    admittances: new Int32Array(admittances),
    currents: new Int32Array(driven.map(each => (each ? each.offset + currentsAt : -1))),
    signs: new Int32Array(
      driven.map((each, index) => (each?.head === branches[index]?.to ? 1 : -1)),
    ),
  }
}

const newPlan = (nodeCount: number): Plan => ({
  neighbours: Array.from({ length: nodeCount }, () => new Map()),
  currents: new Map(),
  steps: [],
  starts: [],
  admittanceCount: 0,
  ratioCount: 0,
})

const neighboursOf = (plan: Plan, node: number): Map<number, number> =>
  plan.neighbours[node] as Map<number, number>

/** Where in the list the node with the fewest neighbours stands. */
function leastDegree(waiting: readonly number[], neighbours: Neighbours): number {
  let best = 0
  let least = Number.POSITIVE_INFINITY
  for (let index = 0; index < waiting.length; index++) {
    const degree = neighbours[waiting[index] as number]?.size ?? 0
    if (degree >= least) continue
    least = degree
    best = index
  }
  return best
}

function admittanceOf(plan: Plan, a: number, b: number): number {
  const known = neighboursOf(plan, a).get(b)
  if (known !== undefined) return known
  const offset = 2 * plan.admittanceCount++
  neighboursOf(plan, a).set(b, offset)
  neighboursOf(plan, b).set(a, offset)
  return offset
}

function currentOf(plan: Plan, a: number, b: number, head: number): PairCurrent {
  const admittance = admittanceOf(plan, a, b)
  const known = plan.currents.get(admittance)
  if (known) return known
  const fresh = { offset: 2 * plan.currents.size, head }
  plan.currents.set(admittance, fresh)
  return fresh
}

type Star = readonly (readonly [node: number, admittance: number])[]

const nodeAt = (star: Star, index: number): number => star[index]?.[0] as number

function planPivot(plan: Plan, pivot: number): void {
  const star: Star = [...neighboursOf(plan, pivot)]
  for (const [node] of star) neighboursOf(plan, node).delete(pivot)
  plan.starts.push(plan.steps.length)
  plan.steps.push(pivot, star.length, 2 * plan.ratioCount)
  for (const [node, admittance] of star) plan.steps.push(admittance, node)
  plan.ratioCount += star.length
  planSums(plan, pivot, star)
  for (let index = 1; index < star.length; index++)
    for (let other = 0; other < index; other++)
      plan.steps.push(admittanceOf(plan, nodeAt(star, index), nodeAt(star, other)))
  planMoves(plan, pivot, star)
}

function planSums({ currents, steps }: Plan, pivot: number, star: Star): void {
  const countAt = steps.push(0) - 1
  for (const [, admittance] of star) {
    const current = currents.get(admittance)
    if (current) steps.push(current.offset, current.head === pivot ? 1 : -1)
  }
  steps[countAt] = (steps.length - countAt - 1) / 2
}

/** A current from a neighbour into the pivot goes on, in shares, to every other neighbour. */
function planMoves(plan: Plan, pivot: number, star: Star): void {
  const countAt = plan.steps.push(0) - 1
  for (const [tail, admittance] of star) {
    const source = plan.currents.get(admittance)
    if (!source) continue
    for (let position = 0; position < star.length; position++) {
      const node = nodeAt(star, position)
      if (node === tail) continue
      const target = currentOf(plan, tail, node, node)
      const sign = (source.head === pivot) === (target.head === node) ? 1 : -1
      plan.steps.push(target.offset, source.offset, position, sign)
    }
  }
  plan.steps[countAt] = (plan.steps.length - countAt - 1) / 4
}

/** Currents were counted from 0 while the number of admittances was still growing. */
function withCurrentsAt(plan: Plan, base: number): Int32Array {
  const steps = new Int32Array(plan.steps)
  const shift = (at: number): void => {
    steps[at] = (steps[at] as number) + base
  }
  for (const start of plan.starts) {
    const count = steps[start + 1] as number
    let at = start + 3 + 2 * count
    const sums = steps[at++] as number
    for (let index = 0; index < sums; index++, at += 2) shift(at)
    at += (count * (count - 1)) / 2
    const moves = steps[at++] as number
    for (let index = 0; index < moves; index++, at += 4) {
      shift(at)
      shift(at + 1)
    }
  }
  return steps
}
