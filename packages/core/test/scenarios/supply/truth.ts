import type { Complex } from '../../../src/base/complex.ts'
import { complex, magnitude, subtract } from '../../../src/base/complex.ts'
import type { FeedFunction } from '../../../src/domain/board/board.ts'
import { SITUATIONS } from '../../../src/domain/supply/readings.ts'
import type { SupplyAlone } from '../../../src/domain/wiring/supply-alone.ts'
import { endPairs } from '../../../src/domain/wiring/supply-alone.ts'
import type { SupplyFault } from '../../../src/domain/wiring/supply-faults.ts'
import { clampAccuracy, VOLT_METER, voltAccuracy } from '../../../src/domain/wiring/volt-meter.ts'
import { compileNetwork } from '../../../src/engines/circuit/compile-network.ts'
import type { Element, Network, NodeId } from '../../../src/engines/circuit/network.ts'
import type { Solution } from '../../../src/engines/circuit/solve-network.ts'
import { solveNetwork } from '../../../src/engines/circuit/solve-network.ts'
import type {
  Measurable,
  MeterReading,
  SupplyCircumstances,
} from '../../../src/stages/diagnose/supply/artifact.ts'
import type { Predictor } from '../../../src/stages/diagnose/supply/predict.ts'
import type { Random } from '../../engines/circuit/support/random.ts'

/** A supply as it really is: how far everything lies from what was described. */
export interface Truth {
  readonly fault: SupplyFault
  /** Share of nominal volts. */
  readonly source: number
  readonly wiring: number
  readonly insulation: number
  /** Between each two conductors of the run, that they lie beside each other [F]. */
  readonly coupling: readonly number[]
  /** Amps at plate volts as a share of the plate's, by load. */
  readonly loads: ReadonlyMap<string, number>
}

const OPEN = 1e9

const turned = (volts: number, degrees: number): Complex =>
  complex(volts * Math.cos((degrees * Math.PI) / 180), volts * Math.sin((degrees * Math.PI) / 180))

/** What another source than the described one stands at, by line. Written out, shared with nothing. */
function otherSource(fault: SupplyFault, line: 'leg1' | 'leg2'): Complex | undefined {
  const first = line === 'leg1'
  switch (fault.kind) {
    case 'split-phase':
      return turned(120, first ? 0 : 180)
    case 'wye':
      return turned(120, first ? 0 : -120)
    case 'high-leg':
      return (fault.line === 'leg1') === first ? turned(120 * Math.sqrt(3), 90) : turned(120, 0)
    default:
      return undefined
  }
}

const lineOf = (id: string): 'leg1' | 'leg2' => (/leg2$/u.test(id) ? 'leg2' : 'leg1')

/** The first source of a network: what every hot hangs on where all are on one leg. */
const firstVolts = (network: Network): Complex =>
  network.elements.flatMap(each => (each.kind === 'source' ? [each.volts] : []))[0] ?? complex(0)

/** A second circuit of one pole on the other line has its `leg1` there: its own volts say which. */
const isOther = (volts: Complex, network: Network): boolean =>
  magnitude(subtract(volts, firstVolts(network))) > 1

function sourceVolts(
  element: Extract<Element, { kind: 'source' }>,
  truth: Truth,
  network: Network,
) {
  const { fault, source } = truth
  const line = isOther(element.volts, network) ? 'leg2' : lineOf(element.id)
  const volts =
    fault.kind === 'same-leg' ? firstVolts(network) : (otherSource(fault, line) ?? element.volts)
  return complex(volts.re * source, volts.im * source)
}

/** Ohms that a fault adds to an element. */
function added(id: string, { fault }: Truth): number {
  if (fault.kind === 'off') {
    const [, device, part] = /^part:([^.]+)\.(.+)$/u.exec(id) ?? []
    return device === fault.device && /^(?:P|S)/u.test(part ?? '') ? OPEN : 0
  }
  if (!('step' in fault) || fault.step.element !== id) return 0
  return 'ohms' in fault ? fault.ohms : OPEN
}

/** The last cable's conductors of these functions change their ends at the tub. */
function exchanged(element: Element, alone: SupplyAlone, { fault }: Truth): Element {
  if (!('ends' in fault) || element.kind !== 'impedance' || !element.id.startsWith('cable:'))
    return element
  const [one, other] = fault.ends
  const isLastOf = (name: FeedFunction) => alone.runs.get(name)?.at(-1)?.element === element.id
  const to = isLastOf(one) ? other : isLastOf(other) ? one : undefined
  const node = to && alone.ends.get(to)
  return node === undefined ? element : { ...element, between: [element.between[0], node] }
}

const times = ({ re, im }: Complex, share: number, more = 0): Complex =>
  complex(re * share + more, im * share)

function changedBy(
  element: Element,
  alone: SupplyAlone,
  truth: Truth,
  off: ReadonlySet<string>,
): Element {
  if (element.kind === 'source')
    return { ...element, volts: sourceVolts(element, truth, alone.network) }
  if (element.kind !== 'impedance') return element
  const { id } = element
  const share = id.startsWith('lumped:')
    ? off.has(id)
      ? OPEN
      : 1 / (truth.loads.get(id.slice('lumped:'.length)) ?? 1)
    : id.startsWith('insulation:')
      ? truth.insulation
      : /^(?:cable|tail|part|behind|source)/u.test(id)
        ? truth.wiring
        : 1
  const plain = { ...element, ohms: times(element.ohms, share, added(id, truth)) }
  return exchanged(plain, alone, truth)
}

/** What a cable's conductors do to each other, though nothing joins them. */
const couplings = (alone: SupplyAlone, { coupling }: Truth): readonly Element[] =>
  endPairs(alone.ends).map(([a, b], index) => ({
    kind: 'capacitor',
    id: `coupling:${a}|${b}`,
    between: [alone.ends.get(a) ?? '', alone.ends.get(b) ?? ''],
    farads: coupling[index] ?? 0,
  }))

/** The network as it really is in a situation. */
export function truthNetwork(
  alone: SupplyAlone,
  circumstances: SupplyCircumstances,
  situation: string,
  truth: Truth,
): Network {
  const off = new Set(
    circumstances.loads
      .filter(each => !each.on.some(on => on === situation))
      .map(each => `lumped:${each.id}`),
  )
  const elements = alone.network.elements.map(each => changedBy(each, alone, truth, off))
  return { ...alone.network, elements: [...elements, ...couplings(alone, truth)] }
}

/** Every pole and switch of the devices that trip is open, at random where a device may trip or not. */
function tripped(alone: SupplyAlone, network: Network, random: Random): Network {
  const solution = solvedBy(network)
  const open = alone.groundFaults.flatMap(({ device, part }) => {
    const sum = part.sums
      .map(id => solution.current(`part:${device}.${id}`))
      .reduce((a, b) => complex(a.re + b.re, a.im + b.im), complex(0))
    const amps = magnitude(sum)
    const [a, b] = part.poweredFrom ?? []
    const awake =
      a === undefined ||
      magnitude(subtract(solution.volts(`${device}:${a}`), solution.volts(`${device}:${b}`))) >= 85
    const at = part.trip.from.si + random.next() * (part.trip.to.si - part.trip.from.si)
    return awake && amps >= at ? [device] : []
  })
  if (open.length === 0) return network
  return {
    ...network,
    elements: network.elements.map(each =>
      each.kind === 'impedance' && open.some(device => each.id.startsWith(`part:${device}.`))
        ? { ...each, ohms: complex(OPEN) }
        : each,
    ),
  }
}

/** Solved by pivoted LU, which shares no elimination with what the diagnosis uses. */
function solvedBy(network: Network, closed: ReadonlySet<string> = new Set()): Solution {
  const compiled = compileNetwork(network, { route: 'pivoted-lu' })
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.failure))
  return solveNetwork(compiled.value, closed)
}

/** What a meter shows of a value: off by at most its accuracy, which counts from what it shows. */
const wrong = (value: number, share: number, least: number, random: Random): number =>
  Math.abs(value + ((2 * random.next() - 1) * (share * value + least)) / (1 + share))

const entered = <U extends string>(si: number, unit: U) => ({
  kind: 'known' as const,
  value: { si: si as number & { readonly unit: U }, text: `${si} ${unit}` },
})

function readingOf(of: Measurable, value: number, random: Random): MeterReading {
  if (of.kind === 'volts') {
    const shown = wrong(value, VOLT_METER.share, VOLT_METER.volts, random)
    if (Math.abs(shown - value) > voltAccuracy(shown) + 1e-9) throw new Error('beyond its accuracy')
    return { ...of, value: entered(shown, 'V') }
  }
  const shown = wrong(value, VOLT_METER.clampShare, VOLT_METER.clampAmps, random)
  if (Math.abs(shown - value) > clampAccuracy(shown) + 1e-9) throw new Error('beyond its accuracy')
  return { ...of, value: entered(shown, 'A') }
}

const nodesOf = (alone: SupplyAlone, of: readonly FeedFunction[]): readonly NodeId[] =>
  of.map(each => alone.ends.get(each) ?? '')

/** Everything that could be read at the tub, as a meter would show it. */
export function readingsOf(
  alone: SupplyAlone,
  circumstances: SupplyCircumstances,
  measurables: readonly Measurable[],
  truth: Truth,
  random: Random,
): readonly MeterReading[] {
  return SITUATIONS.flatMap(situation => {
    const network = tripped(alone, truthNetwork(alone, circumstances, situation, truth), random)
    const compiled = compileNetwork(network, { route: 'pivoted-lu' })
    if (!compiled.ok) throw new Error(JSON.stringify(compiled.failure))
    return measurables
      .filter(each => each.situation === situation)
      .map(of => {
        if (of.kind === 'amps') {
          const amps = magnitude(solveNetwork(compiled.value).current(`lumped:${of.load}`))
          return readingOf(of, amps, random)
        }
        const meter = new Set([`meter:${of.between[0]}|${of.between[1]}`])
        const solution = solveNetwork(compiled.value, meter)
        const [a, b] = nodesOf(alone, of.between)
        const volts = magnitude(subtract(solution.volts(a ?? ''), solution.volts(b ?? '')))
        return readingOf(of, volts, random)
      })
  })
}

/** A supply with a fault, everything else somewhere within what it may be. */
export function truthWith(
  fault: SupplyFault,
  { alone, circumstances: { loads } }: Pick<Predictor, 'alone' | 'circumstances'>,
  band: { readonly from: number; readonly to: number },
  random: Random,
): Truth {
  const between = (from: number, to: number): number => from + (to - from) * random.next()
  // 30 to 100 pF a metre over 3 to 30 m, each pair by itself.
  const cable = random.decades(0.1e-9, 3e-9)
  return {
    coupling: endPairs(alone.ends).map(() => cable * between(0.6, 1.6)),
    fault: 'ohms' in fault ? { ...fault, ohms: random.decades(0.01, 10_000) } : fault,
    source: between(band.from, band.to),
    wiring: between(0.76, 1.24),
    insulation: random.decades(0.05, 20),
    loads: new Map(loads.map(each => [each.id, between(0.9, 1.1)] as const)),
  }
}
