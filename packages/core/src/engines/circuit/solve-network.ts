import type { Complex } from '../../base/complex.ts'
import { add, conjugate, magnitude, multiply, scale } from '../../base/complex.ts'
import { invariant } from '../../base/invariant.ts'
import type { BranchVisit, NodeVoltages } from './branch-currents.ts'
import {
  branchAmps,
  branchCurrent,
  eachCurrent,
  elementVoltage,
  secondaryVoltage,
  visitBranch,
  voltageAt,
  windingCurrent,
} from './branch-currents.ts'
import type { WindingPair } from './branch-table.ts'
import type { CompiledNetwork, Route } from './compile-network.ts'
import { contactStates } from './compile-network.ts'
import { denseErrorBound, solveDenseRoute } from './dense-route.ts'
import { loadMesh, meshErrorBound, placeRegions } from './mesh-solve.ts'
import type { NodeId } from './network.ts'
import { solveMesh } from './star-mesh.ts'
import type { Workspace } from './workspace.ts'
import { makeWorkspace } from './workspace.ts'

/** Bounds the corrections of the pivoted-LU route. */
export interface SolveOptions {
  readonly refinementsMax?: number
}

const REFINEMENTS_MAX = 12

/**
 * The phasors of one solved state: RMS, e^{+jωt}. The figures of merit are worked out when read.
 *
 * `volts` and the currents throw on an id that the network does not have.
 */
export interface Solution {
  readonly route: Route
  /** Voltage of a node to the reference [V]. */
  volts(node: NodeId): Complex
  /** Current into the first terminal; of a transformer, of its primary [A]. */
  current(elementId: string): Complex
  /** Current into the first terminal of a transformer's secondary [A]. */
  secondaryCurrent(elementId: string): Complex
  /** Complex power that an element absorbs; a source that delivers has a negative one [VA]. */
  power(elementId: string): Complex
  /**
   * The worst |ΣI| at a node over the largest current. Currents come from rounded voltages, so
   * 1 mΩ at 120 V alone leaves about 1e-11 A.
   */
  readonly kclResidual: number
  /** |ΣS| over Σ|S|. */
  readonly powerBalance: number
  /** Estimate of the worst error of a voltage [V]; infinite when the values have no finite answer. */
  readonly errorBound: number
}

/**
 * Solves into a workspace: the hot path, which allocates nothing on the star–mesh route.
 *
 * Afterwards `work.re` and `work.im` hold the node voltages, by `nodeIndex`.
 *
 * @param states - one byte a contact, 1 for closed, by `contactIndex`
 */
export function solveInto(
  compiled: CompiledNetwork,
  states: Uint8Array,
  work: Workspace,
  options?: SolveOptions,
): void {
  work.states.set(states)
  if (compiled.mesh && work.mesh) {
    loadMesh(compiled.mesh, states, work.mesh.values)
    solveMesh(compiled.mesh.elimination, work.mesh)
    placeRegions(compiled.mesh.placements, work)
    return
  }
  invariant(work.dense !== undefined, 'a workspace serves only the network it was made for')
  solveDenseRoute(compiled.table, work, work.dense, options?.refinementsMax ?? REFINEMENTS_MAX)
}

/**
 * Solves in a workspace that is used again, and keeps the result apart from it.
 *
 * @param scratch - made for this network or for one of the same shape; the general route has room of
 *   its own instead, since its error bound reads it later
 * @returns the voltages alone, enough for every figure of a `Solution`
 */
export function solvedApart(
  compiled: CompiledNetwork,
  states: Uint8Array,
  scratch: Workspace,
): Workspace {
  if (!compiled.mesh) {
    const work = makeWorkspace(compiled)
    solveInto(compiled, states, work)
    return work
  }
  solveInto(compiled, states, scratch)
  const count = compiled.nodes.length
  return {
    re: scratch.re.slice(0, count),
    im: scratch.im.slice(0, count),
    states: scratch.states.slice(),
    mesh: undefined,
    dense: undefined,
  }
}

/**
 * Solves one state of a compiled network.
 *
 * @param closedContacts - ids of the contacts that are closed, all others open; undefined leaves
 *   every contact where the network says it starts
 */
export function solveNetwork(
  compiled: CompiledNetwork,
  closedContacts?: ReadonlySet<string>,
  options?: SolveOptions,
): Solution {
  const work = makeWorkspace(compiled)
  solveInto(compiled, contactStates(compiled, closedContacts), work, options)
  return solutionOf(compiled, work)
}

/** What a workspace holds after `solveInto`, by the ids of the network. */
export function solutionOf(compiled: CompiledNetwork, work: Workspace): Solution {
  const find = (id: string): number => {
    const element = compiled.elementIndexes.get(id)
    invariant(element !== undefined, `the network has no element "${id}"`)
    return element
  }
  return {
    route: compiled.route,
    volts: node => {
      const index = compiled.nodeIndexes.get(node)
      invariant(index !== undefined, `the network has no node "${node}"`)
      return voltageAt(work, index)
    },
    current: id => currentAt(compiled, work, find(id)),
    secondaryCurrent: id => secondaryCurrentAt(compiled, work, find(id)),
    power: id => powerAt(compiled, work, find(id)),
    get kclResidual() {
      return kclResidualOf(compiled, work)
    },
    get powerBalance() {
      return powerBalanceOf(compiled, work)
    },
    get errorBound() {
      return errorBoundOf(compiled, work)
    },
  }
}

/** |current| into the first terminal of an element, by `elementIndex` [A]: for what is asked often. */
export function ampsAt(compiled: CompiledNetwork, work: NodeVoltages, element: number): number {
  const { table } = compiled
  for (const each of table.windings)
    if (each.element === element) return magnitude(currentAt(compiled, work, element))
  return branchAmps(table, work, element)
}

const windingOf = (compiled: CompiledNetwork, element: number): WindingPair | undefined =>
  compiled.table.windings.find(each => each.element === element)

/** Current into the first terminal of an element, by `elementIndex`; of a transformer, primary [A]. */
export function currentAt(compiled: CompiledNetwork, work: NodeVoltages, element: number): Complex {
  const own = branchCurrent(compiled.table, work, element)
  if (compiled.table.windings.length === 0) return own
  const pair = windingOf(compiled, element)
  return pair ? add(own, scale(windingCurrent(work, pair), -1 / pair.ratio)) : own
}

/** Current into the first terminal of a transformer's secondary, by `elementIndex` [A]. */
export function secondaryCurrentAt(
  compiled: CompiledNetwork,
  work: NodeVoltages,
  element: number,
): Complex {
  const pair = windingOf(compiled, element)
  invariant(pair !== undefined, `element ${element} has no secondary`)
  return windingCurrent(work, pair)
}

/** Complex power that an element absorbs, by `elementIndex` [VA]. */
export function powerAt(compiled: CompiledNetwork, work: NodeVoltages, element: number): Complex {
  const current = currentAt(compiled, work, element)
  const own = multiply(elementVoltage(compiled.table, work, element), conjugate(current))
  const pair = windingOf(compiled, element)
  if (!pair) return own
  return add(own, multiply(secondaryVoltage(work, pair), conjugate(windingCurrent(work, pair))))
}

const ratioOrZero = (part: number, whole: number): number => (part === 0 ? 0 : part / whole)

function kclResidualOf({ table, nodes }: CompiledNetwork, work: NodeVoltages): number {
  const sums = new Float64Array(2 * nodes.length)
  let largest = 0
  eachCurrent(table, work, (node, re, im) => {
    sums[2 * node] = (sums[2 * node] as number) + re
    sums[2 * node + 1] = (sums[2 * node + 1] as number) + im
    largest = Math.max(largest, re * re + im * im)
  })
  let worst = 0
  for (let node = 0; node < nodes.length; node++) {
    const [re, im] = [sums[2 * node] as number, sums[2 * node + 1] as number]
    worst = Math.max(worst, re * re + im * im)
  }
  return ratioOrZero(Math.sqrt(worst), Math.sqrt(largest))
}

function powerBalanceOf(compiled: CompiledNetwork, work: NodeVoltages): number {
  const { table } = compiled
  let [totalRe, totalIm, sum] = [0, 0, 0]
  const absorb = (re: number, im: number): void => {
    totalRe += re
    totalIm += im
    sum += Math.sqrt(re * re + im * im)
  }
  const visit: BranchVisit = (_element, voltsRe, voltsIm, ampsRe, ampsIm) =>
    absorb(voltsRe * ampsRe + voltsIm * ampsIm, voltsIm * ampsRe - voltsRe * ampsIm)
  const isWound = new Set(table.windings.map(each => each.element))
  for (let element = 0; element < table.contactOf.length; element++)
    if (!isWound.has(element)) visitBranch(table, work, element, visit)
  for (const element of isWound) {
    const { re, im } = powerAt(compiled, work, element)
    absorb(re, im)
  }
  return ratioOrZero(Math.sqrt(totalRe * totalRe + totalIm * totalIm), sum)
}

const errorBoundOf = (compiled: CompiledNetwork, work: Workspace): number =>
  work.dense ? denseErrorBound(work, work.dense) : meshErrorBound(compiled, work)
