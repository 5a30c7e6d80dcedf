import { assert } from 'vitest'
import type { Complex } from '../../src/base/complex.ts'
import {
  add,
  complex,
  conjugate,
  magnitude,
  multiply,
  subtract,
  ZERO,
} from '../../src/base/complex.ts'
import type { Element, Network, NodeId } from '../../src/engines/circuit/network.ts'
import type { Solution } from '../../src/engines/circuit/solve-network.ts'

/**
 * Share of a branch's admittance times the largest voltage that rounding may leave [1].
 *
 * A voltage is a double: its last bit alone drives 1e-11 A through 1 mΩ at 120 V. The allowance is
 * some hundred such bits, still far below any current that matters.
 */
const ROUNDING = 1e-13

/** A current that leaves a node into an element, and the most that rounding could make of it. */
interface Leaving {
  readonly node: NodeId
  readonly amps: Complex
  readonly swing: number
}

/** A current from the first to the second node of a pair, at a voltage across it. */
interface Flow {
  readonly pair: readonly [NodeId, NodeId]
  readonly amps: Complex
  readonly siemens: number
}

/**
 * Asserts that a solution obeys physics: no node makes current, and the powers sum to nothing.
 *
 * Works out every current afresh from the voltages and the values of the elements, and shares no
 * code with the solver but complex arithmetic. Also asserts that the solution's own currents and
 * powers are those.
 *
 * @param closedContacts - the state that was solved; undefined: as the network starts
 */
export function checkPhysics(
  network: Network,
  solution: Solution,
  closedContacts?: ReadonlySet<string>,
): void {
  const volts = largestVolts(network, solution)
  const flows = network.elements.map(each => flowsOf(each, network, solution, closedContacts))
  checkCurrents(flows.flat(), volts)
  checkPowers(network, solution, flows, volts)
}

function checkCurrents(flows: readonly Flow[], volts: number): void {
  const sums = new Map<NodeId, { amps: Complex; swing: number }>()
  for (const { node, amps, swing } of flows.flatMap(leavingOf)) {
    const sum = sums.get(node) ?? { amps: ZERO, swing: 0 }
    sums.set(node, { amps: add(sum.amps, amps), swing: sum.swing + swing })
  }
  for (const [node, { amps, swing }] of sums)
    assert.isAtMost(magnitude(amps), ROUNDING * volts * swing, `current made at node ${node}`)
}

const leavingOf = ({ pair, amps, siemens }: Flow): readonly Leaving[] => [
  { node: pair[0], amps, swing: siemens },
  { node: pair[1], amps: subtract(ZERO, amps), swing: siemens },
]

function checkPowers(
  network: Network,
  solution: Solution,
  flows: readonly (readonly Flow[])[],
  volts: number,
): void {
  let sum = ZERO
  let allowed = 0
  network.elements.forEach((element, index) => {
    const own = flows[index] ?? []
    const power = own.map(flow => powerOf(flow, solution)).reduce(add, ZERO)
    const swing = ROUNDING * volts * volts * own.reduce((total, each) => total + each.siemens, 0)
    checkReported(element, solution, own, power, { amps: swing / volts, power: swing })
    sum = add(sum, power)
    allowed += swing
  })
  assert.isAtMost(magnitude(sum), allowed, 'the powers do not sum to zero')
}

function checkReported(
  element: Element,
  solution: Solution,
  flows: readonly Flow[],
  power: Complex,
  allowed: { amps: number; power: number },
): void {
  const { id } = element
  const first = flows.filter(({ pair }) => pair === firstPair(element))
  const amps = first.map(each => each.amps).reduce(add, ZERO)
  assert.isAtMost(magnitude(subtract(solution.current(id), amps)), allowed.amps, `current of ${id}`)
  assert.isAtMost(magnitude(subtract(solution.power(id), power)), allowed.power, `power of ${id}`)
}

const firstPair = (element: Element): readonly [NodeId, NodeId] =>
  element.kind === 'transformer' ? element.primary : element.between

const acrossOf = (solution: Solution, [first, second]: readonly [NodeId, NodeId]): Complex =>
  subtract(solution.volts(first), solution.volts(second))

const powerOf = (flow: Flow, solution: Solution): Complex =>
  multiply(acrossOf(solution, flow.pair), conjugate(flow.amps))

const largestVolts = (network: Network, solution: Solution): number =>
  Math.max(
    ...network.elements.map(each => (each.kind === 'source' ? magnitude(each.volts) : 0)),
    ...network.elements.flatMap(firstPair).map(node => magnitude(solution.volts(node))),
    Number.MIN_VALUE,
  )

const times = (a: Complex, factor: number): Complex => complex(a.re * factor, a.im * factor)

const quotient = (volts: Complex, ohms: Complex): Complex =>
  times(multiply(volts, conjugate(ohms)), 1 / (ohms.re * ohms.re + ohms.im * ohms.im))

/** Every current of an element, from Ohm's law alone. */
function flowsOf(
  element: Element,
  network: Network,
  solution: Solution,
  closedContacts: ReadonlySet<string> | undefined,
): readonly Flow[] {
  if (element.kind === 'transformer') {
    const { primary, secondary, ratio, seriesOhms, magnetisingOhms } = element
    const noLoad = times(acrossOf(solution, primary), 1 / ratio)
    const amps = quotient(subtract(acrossOf(solution, secondary), noLoad), seriesOhms)
    const siemens = (1 + 1 / ratio) / magnitude(seriesOhms)
    const magnetising = quotient(acrossOf(solution, primary), magnetisingOhms)
    return [
      { pair: primary, amps: magnetising, siemens: 1 / magnitude(magnetisingOhms) },
      { pair: primary, amps: times(amps, -1 / ratio), siemens: siemens / ratio },
      { pair: secondary, amps, siemens },
    ]
  }
  const ohms = ohmsOf(element, network.hertz, closedContacts)
  const emf = element.kind === 'source' ? element.volts : ZERO
  const drop = subtract(acrossOf(solution, element.between), emf)
  return [{ pair: element.between, amps: quotient(drop, ohms), siemens: 1 / magnitude(ohms) }]
}

function ohmsOf(
  element: Exclude<Element, { kind: 'transformer' }>,
  hertz: number,
  closedContacts: ReadonlySet<string> | undefined,
): Complex {
  switch (element.kind) {
    case 'capacitor':
      return complex(0, -1 / (2 * Math.PI * hertz * element.farads))
    case 'contact':
      return complex(
        (closedContacts?.has(element.id) ?? element.closed) ? element.closedOhms : element.openOhms,
      )
    case 'meter':
      return complex(element.ohms)
    default:
      return element.ohms
  }
}
