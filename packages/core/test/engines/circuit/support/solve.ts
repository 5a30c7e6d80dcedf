import { assert } from 'vitest'
import type { Complex } from '../../../../src/base/complex.ts'
import { magnitude, subtract } from '../../../../src/base/complex.ts'
import type { CompileOptions } from '../../../../src/engines/circuit/compile-network.ts'
import { compileNetwork } from '../../../../src/engines/circuit/compile-network.ts'
import type { Network, NodeId } from '../../../../src/engines/circuit/network.ts'
import { nodesOf } from '../../../../src/engines/circuit/network.ts'
import type { Solution } from '../../../../src/engines/circuit/solve-network.ts'
import { solveNetwork } from '../../../../src/engines/circuit/solve-network.ts'
import { checkPhysics } from '../../../support/check-physics.ts'

/** Compiles and solves a network that must have no structural fault, and checks its physics. */
export function solved(
  network: Network,
  closedContacts?: ReadonlySet<string>,
  options: CompileOptions = {},
): Solution {
  const compiled = compileNetwork(network, options)
  assert(compiled.ok, `structural faults: ${JSON.stringify(compiled)}`)
  const solution = solveNetwork(compiled.value, closedContacts)
  checkPhysics(network, solution, closedContacts)
  return solution
}

/** |a − b|. */
export const distance = (a: Complex, b: Complex): number => magnitude(subtract(a, b))

/** The largest |a − b| over all nodes of a network; b may know the nodes by other names [V]. */
export const largestDistance = (
  network: Network,
  a: Solution,
  b: Solution,
  rename: (node: NodeId) => NodeId = node => node,
): number =>
  Math.max(...nodesOf(network).map(node => distance(a.volts(node), b.volts(rename(node)))))

/** The largest voltage of a solution, or of a source [V]. */
export const scaleOf = (network: Network, solution: Solution): number =>
  Math.max(
    ...nodesOf(network).map(node => magnitude(solution.volts(node))),
    ...network.elements.map(each => (each.kind === 'source' ? magnitude(each.volts) : 0)),
  )
