import { complex } from '../../base/complex.ts'
import type { Network, NodeId } from '../../engines/circuit/network.ts'
import { pairsOf } from '../../engines/circuit/network.ts'
import { resistanceBetween } from '../../engines/circuit/resistance-between.ts'
import type { SensorInput } from '../box/control-box.ts'
import { BOX, findTerminal } from '../job.ts'
import type { CurveName, Probe } from '../load/load.ts'
import { CURVES } from '../load/load.ts'
import type { Plant } from './plant.ts'
import { reachedFrom } from './reach.ts'
import { boardNode, circuitElement, leadNode } from './wire.ts'

const KELVIN_AT_25C = 298.15

/** Resistance of a probe [Ω] at a temperature [°C], by the beta equation. @source [NTC-BETA] */
export function probeOhms(curve: CurveName, celsius: number): number {
  const { ohmsAt25, beta } = CURVES[curve]
  return ohmsAt25 * Math.exp(beta * (1 / (celsius + 273.15) - 1 / KELVIN_AT_25C))
}

/** The temperature [°C] that an input of this curve shows for a resistance [Ω]. @source [NTC-BETA] */
export function shownCelsius(curve: CurveName, ohms: number): number {
  const { ohmsAt25, beta } = CURVES[curve]
  return 1 / (1 / KELVIN_AT_25C + Math.log(ohms / ohmsAt25) / beta) - 273.15
}

/** What a sensor input of the box is joined to. */
export interface Sensed {
  readonly input: SensorInput
  /** Ohms seen between its two terminals with every probe at one temperature; absent when open. */
  readonly ohms: number | undefined
  /** The one probe in the path; absent when there is none or several. */
  readonly probe: Probe | undefined
}

/** Everything outside the box, with every probe at this temperature. */
function outside(plant: Plant, celsius: number): Network['elements'] {
  const probes = new Map(
    plant.job.loads.flatMap(load =>
      load.kind === 'probe'
        ? [[circuitElement(load.id, 'probe'), probeOhms(load.curve, celsius)] as const]
        : [],
    ),
  )
  return plant.wiring.all.flatMap(element => {
    if (element.kind !== 'impedance') return []
    const ohms = probes.get(element.id)
    if (ohms !== undefined) return [{ ...element, ohms: complex(ohms) }]
    return /^(lead|circuit):/u.test(element.id) ? [element] : []
  })
}

/** Ohms between two nodes through these elements, or undefined where nothing joins them. */
function ohmsBetween(elements: Network['elements'], a: NodeId, b: NodeId): number | undefined {
  const reached = reachedFrom(a, elements.flatMap(pairsOf))
  if (!reached.has(b)) return undefined
  const near = elements.filter(each => pairsOf(each).every(([one]) => reached.has(one)))
  const result = resistanceBetween({ hertz: 60, reference: b, elements: near }, a, b)
  return result.ok ? result.value : undefined
}

/** What each sensor input sees with all probes at one temperature [°C]. */
export function sense(plant: Plant, celsius: number): readonly Sensed[] {
  const elements = outside(plant, celsius)
  return plant.job.box.sensors.map(input => {
    const nodes = input.terminals.map(id => findTerminal(plant.job, `${BOX}.${id}`)?.node ?? '')
    const [a, b] = [boardNode(BOX, nodes[0] ?? ''), boardNode(BOX, nodes[1] ?? '')]
    const probes = plant.job.loads.filter(
      (load): load is Probe => load.kind === 'probe' && isBetween(plant, load, a, b),
    )
    return {
      input,
      ohms: ohmsBetween(elements, a, b),
      probe: probes.length === 1 ? probes[0] : undefined,
    }
  })
}

/** Whether a probe's two leads land on these two nodes. */
function isBetween(plant: Plant, probe: Probe, a: NodeId, b: NodeId): boolean {
  const at = probe.leads.map(lead => {
    const inner = leadNode(probe.id, lead.id)
    const element = plant.wiring.all.find(each => each.id === `lead:${probe.id}.${lead.id}`)
    return element?.kind === 'impedance' && element.between[0] === inner
      ? element.between[1]
      : inner
  })
  return (at[0] === a && at[1] === b) || (at[0] === b && at[1] === a)
}
