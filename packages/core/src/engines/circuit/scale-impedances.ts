import { complex, divide } from '../../base/complex.ts'
import type { CompiledNetwork } from './compile-network.ts'
import { withBaseValues } from './mesh-route.ts'

/**
 * The same network with some impedances multiplied: its shape, order of elimination and route stay.
 *
 * @param factors - by element id, > 0; ids that are no impedance of the network are ignored
 * @returns a network to solve; `network`, as it was described, keeps the impedances that it had
 */
export function scaleImpedances(
  compiled: CompiledNetwork,
  factors: ReadonlyMap<string, number>,
): CompiledNetwork {
  const admittances = compiled.table.admittances.slice()
  for (const [id, factor] of factors) {
    const index = compiled.elementIndexes.get(id)
    const element = index === undefined ? undefined : compiled.network.elements[index]
    if (index === undefined || element?.kind !== 'impedance') continue
    const { re, im } = element.ohms
    const { re: own, im: other } = divide(complex(1), complex(re * factor, im * factor))
    admittances[2 * index] = own
    admittances[2 * index + 1] = other
  }
  const table = { ...compiled.table, admittances }
  return { ...compiled, table, mesh: compiled.mesh && withBaseValues(compiled.mesh, table) }
}
