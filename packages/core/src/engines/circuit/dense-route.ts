import { admittanceInState, eachCurrent, largestVoltage, ROUNDING } from './branch-currents.ts'
import type { BranchTable } from './branch-table.ts'
import { settleSums, subtractExactly } from './exact-sum.ts'
import { factorDense, solveDense } from './pivoted-lu.ts'
import type { DenseWorkspace, Workspace } from './workspace.ts'

/**
 * Solves any network by nodal analysis and pivoted LU, and refines what that leaves.
 *
 * The diagonal of the matrix is formed, so its first answer can be wrong by 1e-5 where decades lie
 * apart. The refinement does not inherit that: it sums the currents of the branches themselves,
 * each taken from a difference of two voltages, with the rounding of the sums carried along.
 *
 * @param refinementsMax - at most so many corrections
 */
export function solveDenseRoute(
  table: BranchTable,
  work: Workspace,
  dense: DenseWorkspace,
  refinementsMax: number,
): void {
  stampMatrix(table, work.states, dense)
  factorDense(dense.matrix)
  work.re.fill(0)
  work.im.fill(0)
  dense.corrections.fill(Number.POSITIVE_INFINITY)
  for (let step = 0; step <= refinementsMax; step++) {
    const before = dense.corrections[1] as number
    const size = correct(table, work, dense)
    dense.corrections[0] = before
    dense.corrections[1] = size
    if (!(size > ROUNDING * largestVoltage(work)) || size > before / 2) return
  }
}

/**
 * How far any voltage may be off [V]: infinite when the corrections did not shrink.
 */
export function denseErrorBound(work: Workspace, dense: DenseWorkspace): number {
  const before = dense.corrections[0] as number
  const last = dense.corrections[1] as number
  const floor = ROUNDING * largestVoltage(work)
  if (last <= floor) return 2 * floor
  const shrink = last / before
  return shrink < 0.5 ? floor + last / (1 - shrink) : Number.POSITIVE_INFINITY
}

/** Adds one correction to the voltages and returns its largest part [V]. */
function correct(table: BranchTable, work: Workspace, dense: DenseWorkspace): number {
  sumCurrents(table, work, dense)
  solveDense(dense.matrix, dense.values)
  let largest = 0
  for (let node = 1; node < work.re.length; node++) {
    const re = dense.values[2 * node - 2] as number
    const im = dense.values[2 * node - 1] as number
    work.re[node] = (work.re[node] as number) + re
    work.im[node] = (work.im[node] as number) + im
    const size = Math.sqrt(re * re + im * im)
    if (!(size <= largest)) largest = size
  }
  return largest
}

/** Current missing at each node. */
function sumCurrents(table: BranchTable, work: Workspace, dense: DenseWorkspace): void {
  dense.values.fill(0)
  dense.lost.fill(0)
  eachCurrent(table, work, (node, re, im) => {
    if (node === 0) return
    subtractExactly(dense, 2 * node - 2, re)
    subtractExactly(dense, 2 * node - 1, im)
  })
  settleSums(dense)
}

/** A part that forces y·(w·v) on the nodes with weights w: its stamp is y·w·wᵀ. */
type Weights = readonly (readonly [node: number, weight: number])[]

function stampMatrix(table: BranchTable, states: Uint8Array, dense: DenseWorkspace): void {
  dense.matrix.entries.fill(0)
  for (let element = 0; element < table.contactOf.length; element++) {
    const first = table.ends[2 * element] as number
    const second = table.ends[2 * element + 1] as number
    const { re, im } = admittanceInState(table, states, element)
    stamp(
      dense,
      [
        [first, 1],
        [second, -1],
      ],
      re,
      im,
    )
  }
  for (const { primary, secondary, ratio, series } of table.windings) {
    const [s1, s2] = secondary
    const share = 1 / ratio
    stamp(
      dense,
      [
        [s1, 1],
        [s2, -1],
        [primary[0], -share],
        [primary[1], share],
      ],
      series.re,
      series.im,
    )
  }
}

function stamp({ matrix }: DenseWorkspace, weights: Weights, re: number, im: number): void {
  const { entries, size } = matrix
  for (const [row, a] of weights)
    for (const [column, b] of weights) {
      if (row === 0 || column === 0) continue
      const at = 2 * ((row - 1) * size + column - 1)
      entries[at] = (entries[at] as number) + a * b * re
      entries[at + 1] = (entries[at + 1] as number) + a * b * im
    }
}
