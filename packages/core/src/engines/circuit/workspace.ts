import type { CompiledNetwork } from './compile-network.ts'
import type { DenseMatrix } from './pivoted-lu.ts'
import { denseMatrix } from './pivoted-lu.ts'
import type { MeshWorkspace } from './star-mesh.ts'
import { meshWorkspace } from './star-mesh.ts'

/**
 * Everything that solves of one compiled network write to; allocate it once and use it again.
 *
 * `re` and `im` hold the voltage of each node to the reference [V], by `nodeIndex`; they may be
 * longer than the list of nodes, and what lies beyond it means nothing.
 */
export interface Workspace {
  readonly re: Float64Array
  readonly im: Float64Array
  /** Contact states of the solve that wrote `re` and `im`. */
  readonly states: Uint8Array
  readonly mesh: MeshWorkspace | undefined
  readonly dense: DenseWorkspace | undefined
}

export interface DenseWorkspace {
  readonly matrix: DenseMatrix
  /** Right-hand side, then correction; interleaved, the reference left out. */
  readonly values: Float64Array
  /** What the sums of `values` lost to rounding. */
  readonly lost: Float64Array
  /** Sizes of the last two corrections [V]. */
  readonly corrections: Float64Array
}

/** Makes a workspace for a compiled network. */
export function makeWorkspace(compiled: CompiledNetwork): Workspace {
  const states = new Uint8Array(compiled.contacts.length)
  if (compiled.mesh) {
    const mesh = meshWorkspace(compiled.mesh.elimination)
    return { re: mesh.re, im: mesh.im, states, mesh, dense: undefined }
  }
  const count = compiled.nodes.length
  return {
    re: new Float64Array(count),
    im: new Float64Array(count),
    states,
    mesh: undefined,
    dense: {
      matrix: denseMatrix(count - 1),
      values: new Float64Array(2 * count - 2),
      lost: new Float64Array(2 * count - 2),
      corrections: new Float64Array(2),
    },
  }
}
