import { readGreatest, readQuantity } from './quantities.ts'
import type { RawBox, RawSurvey } from './raw-files.ts'
import type { Phasor, SourceLine } from './source-lines.ts'
import { sourceOf } from './source-lines.ts'

/** One circuit of the supply: from its first device to the box. */
export interface SupplyCircuit {
  /** Id of its first device. */
  readonly first: string
  /** EMF by the node function that it arrives at [V]. */
  readonly lines: ReadonlyMap<string, Phasor>
  /** What stands for the rating of its poles [A]: known, or the largest that the box allows. */
  readonly breaker: number
  /** The breaker where the survey knows it: the greatest that it may be [A]. */
  readonly knownBreaker?: number
}

type FedAt = (device: string) => Readonly<Record<string, string>>

/** The circuits of a supply; the first starts at its first device, others at those with `fedBy`. */
export function circuitsOf(survey: RawSurvey, box: RawBox, fedAt: FedAt): SupplyCircuit[] {
  const { supply } = survey
  const source = sourceOf(supply.system)
  return supply.devices.flatMap((device, at): SupplyCircuit[] => {
    if (at > 0 && !device.fedBy) return []
    const nodes = fedAt(device.id)
    const own = Object.keys(source.lines).filter(line => nodes[line] !== undefined)
    const fedBy = at === 0 ? own.map(line => [line, line]) : Object.entries(device.fedBy ?? {})
    const lines = fedBy.map(([node, line]): [string, Phasor] => {
      const emf = source.lines[line as SourceLine]
      if (node === undefined || nodes[node] === undefined || !emf)
        throw new Error(`${device.id}: no ${line} of the source for its ${node}`)
      return [node, emf]
    })
    const knownBreaker = readGreatest(at === 0 ? supply.breaker : device.breaker)
    return [
      {
        first: device.id,
        lines: new Map(lines),
        // an unknown breaker: the largest that the box allows, which trips last
        breaker: knownBreaker ?? readQuantity(box.largestBreaker),
        ...(knownBreaker === undefined ? {} : { knownBreaker }),
      },
    ]
  })
}

/** Which circuit each device belongs to, by index: its own, else that of the cable that leads to it. */
export function circuitByDevice(
  survey: RawSurvey,
  circuits: readonly SupplyCircuit[],
): ReadonlyMap<string, number> {
  const { devices, cables } = survey.supply
  const found = new Map(circuits.map(({ first }, at) => [first, at]))
  for (let before = -1; before !== found.size; ) {
    before = found.size
    for (const { from, to } of cables) {
      const circuit = found.get(from)
      if (circuit !== undefined && to !== 'box' && !found.has(to)) found.set(to, circuit)
    }
  }
  // no cable says: what stands alone is judged with the first
  for (const { id } of devices) if (!found.has(id)) found.set(id, 0)
  return found
}
