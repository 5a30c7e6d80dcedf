import type { Simulation } from 'eecircuit-engine'
import type { Complex } from '../../../../src/base/complex.ts'
import { complex } from '../../../../src/base/complex.ts'
import type { NodeId } from '../../../../src/engines/circuit/network.ts'
import type { SpiceNetlist } from '../../../../src/engines/circuit/spice.ts'
import { inTurn, theSimulation } from '../../../support/simulation.ts'

/** A general circuit simulator, started once: it takes 0.35 s to load. */
export interface Simulator {
  readonly solve: (netlist: SpiceNetlist) => Promise<ReadonlyMap<NodeId, Complex>>
}

/**
 * Starts the simulator.
 *
 * It does not throw on a netlist that it cannot solve, but hands back another plot: so the plot's
 * name, the number of points and the list of errors are all looked at. `noopac` spares it the DC
 * operating point, which a linear circuit does not need and which fails behind a capacitor.
 */
export async function startSimulator(): Promise<Simulator> {
  const solveIn = async (simulation: Simulation, { text, map }: SpiceNetlist) => {
    simulation.setNetList(text.replace('\n.ac ', '\n.options noopac\n.ac '))
    const result = await simulation.runSim()
    const errors = simulation.getError()
    if (result.dataType !== 'complex' || !/Plotname: AC Analysis/u.test(result.header))
      throw new Error(`no AC plot: ${result.header} ${errors.join('; ')}\n${text}`)
    if (result.numPoints !== 1) throw new Error(`${result.numPoints} points`)
    return new Map(
      Object.entries(map.nodes).map(([name, node]) => {
        const value = result.data.find(each => each.name === `v(${name})`)?.values[0]
        if (name !== '0' && !value) throw new Error(`no voltage for node ${node}\n${text}`)
        return [node, complex(value?.real ?? 0, value?.img ?? 0)]
      }),
    )
  }
  await theSimulation()
  return { solve: netlist => inTurn(simulation => solveIn(simulation, netlist)) }
}
