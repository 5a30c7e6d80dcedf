import type { Complex } from '../../base/complex.ts'
import { multiply, scale, subtract, ZERO } from '../../base/complex.ts'
import { admittanceInState, emfOf, largestVoltage, ROUNDING, voltageAt } from './branch-currents.ts'
import type { BranchTable } from './branch-table.ts'
import type { CompiledNetwork } from './compile-network.ts'
import type { ExactSums } from './exact-sum.ts'
import { settleSums, subtractExactly } from './exact-sum.ts'
import type { MeshRoute, Placement, ScaledBranch } from './mesh-route.ts'
import type { MeshWorkspace } from './star-mesh.ts'
import { meshWorkspace, solveInjections, solveMesh } from './star-mesh.ts'
import type { Workspace } from './workspace.ts'

/** Puts the values of a state where the elimination wants them. */
export function loadMesh(route: MeshRoute, states: Uint8Array, values: Float64Array): void {
  const { contactAt, closedSiemens, openSiemens } = route
  values.set(route.base)
  for (let contact = 0; contact < contactAt.length; contact++) {
    const at = contactAt[contact] as number
    if (at < 0) continue
    const siemens = (states[contact] ? closedSiemens : openSiemens)[contact] as number
    values[at] = (values[at] as number) + siemens
  }
}

/** Scales the voltages of reflected regions back and sets each region on its anchor. */
export function placeRegions(placements: readonly Placement[], work: Workspace): void {
  const { re, im } = work
  for (const { node, meshNode, anchor, anchorMeshNode, scale } of placements) {
    const overRe = (re[meshNode] as number) - (re[anchorMeshNode] as number)
    const overIm = (im[meshNode] as number) - (im[anchorMeshNode] as number)
    re[node] = (re[anchor] as number) + overRe / scale
    im[node] = (im[anchor] as number) + overIm / scale
  }
}

/**
 * Estimates the worst error of a voltage by solving once more for what the currents lack [V].
 *
 * Works on a copy, so that reading it changes nothing.
 */
export function meshErrorBound({ mesh, table }: CompiledNetwork, work: Workspace): number {
  if (!mesh) return Number.POSITIVE_INFINITY
  const copy = meshWorkspace(mesh.elimination)
  loadMesh(mesh, work.states, copy.values)
  solveMesh(mesh.elimination, copy)
  const missing = missingCurrents(mesh.branches, table, work.states, copy)
  solveInjections(mesh.elimination, copy, missing)
  const spread = mesh.placements.reduce((most, each) => Math.max(most, 2 / each.scale), 1)
  const bound = spread * largestVoltage(copy) + ROUNDING * largestVoltage(work)
  return Number.isFinite(bound) ? bound : Number.POSITIVE_INFINITY
}

function missingCurrents(
  branches: readonly ScaledBranch[],
  table: BranchTable,
  states: Uint8Array,
  copy: MeshWorkspace,
): Float64Array {
  const length = copy.inverses.length
  const sums: ExactSums = { values: new Float64Array(length), lost: new Float64Array(length) }
  for (const branch of branches) {
    const { re, im } = scaledCurrent(branch, table, states, copy)
    subtractExactly(sums, 2 * branch.to, re)
    subtractExactly(sums, 2 * branch.to + 1, im)
    subtractExactly(sums, 2 * branch.from, -re)
    subtractExactly(sums, 2 * branch.from + 1, -im)
  }
  settleSums(sums)
  return sums.values
}

function scaledCurrent(
  branch: ScaledBranch,
  table: BranchTable,
  states: Uint8Array,
  { re, im }: MeshWorkspace,
): Complex {
  const { element, winding, from, to } = branch
  const volts = { re, im, states }
  const own = table.windings[winding]?.series ?? admittanceInState(table, states, element)
  const emf = winding < 0 ? emfOf(table, element) : ZERO
  const across = subtract(voltageAt(volts, to), voltageAt(volts, from))
  const drop = subtract(across, scale(emf, branch.scale))
  return scale(multiply(own, drop), 1 / (branch.scale * branch.scale))
}
