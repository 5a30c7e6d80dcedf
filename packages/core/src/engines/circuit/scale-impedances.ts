import { complex, multiply } from '../../base/complex.ts'
import { tabulateBranches } from './branch-table.ts'
import type { CompiledNetwork } from './compile-network.ts'
import { withBaseValues } from './mesh-route.ts'
import type { Element } from './network.ts'

function scaled(element: Element, factor: number | undefined): Element {
  return element.kind === 'impedance' && factor !== undefined
    ? { ...element, ohms: multiply(element.ohms, complex(factor)) }
    : element
}

/**
 * The same network with some impedances multiplied: its shape, order of elimination and route stay.
 *
 * @param factors - by element id, > 0; ids that are no impedance of the network are ignored
 */
export function scaleImpedances(
  compiled: CompiledNetwork,
  factors: ReadonlyMap<string, number>,
): CompiledNetwork {
  const elements = compiled.network.elements.map(each => scaled(each, factors.get(each.id)))
  const network = { ...compiled.network, elements }
  const table = tabulateBranches(network, compiled.nodeIndexes)
  return {
    ...compiled,
    network,
    table,
    mesh: compiled.mesh && withBaseValues(compiled.mesh, table),
  }
}
