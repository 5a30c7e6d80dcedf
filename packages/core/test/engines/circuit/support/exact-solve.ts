import { assert } from 'vitest'
import type { Complex } from '../../../../src/base/complex.ts'
import type { Element, Network, NodeId } from '../../../../src/engines/circuit/network.ts'

/**
 * Whole numbers of 2⁻²⁵⁶: 77 decimal places, far beyond what twelve decades of values can eat.
 *
 * BigInt rather than a decimal type: some ten times faster, and doubles go in without rounding.
 */
const BITS = 256n
const ONE = 1n << BITS

/** π to 80 places. */
const PI_DIGITS = '31415926535897932384626433832795028841971693993751058209749445923078164062862089'
const PI = (BigInt(PI_DIGITS) << BITS) / 10n ** BigInt(PI_DIGITS.length - 1)

interface Fixed {
  readonly re: bigint
  readonly im: bigint
}

const NOTHING: Fixed = { re: 0n, im: 0n }
const plus = (a: Fixed, b: Fixed): Fixed => ({ re: a.re + b.re, im: a.im + b.im })
const minus = (a: Fixed, b: Fixed): Fixed => ({ re: a.re - b.re, im: a.im - b.im })
const isNothing = (a: Fixed): boolean => a.re === 0n && a.im === 0n
const product = (a: Fixed, b: Fixed): Fixed => ({
  re: (a.re * b.re - a.im * b.im) >> BITS,
  im: (a.re * b.im + a.im * b.re) >> BITS,
})

const quotient = (a: Fixed, b: Fixed): Fixed => {
  const size = b.re * b.re + b.im * b.im
  return {
    re: ((a.re * b.re + a.im * b.im) << BITS) / size,
    im: ((a.im * b.re - a.re * b.im) << BITS) / size,
  }
}

/** A double as it is, without rounding. */
function fixedOf(value: number): bigint {
  let scaled = value
  let bits = 0n
  for (; !Number.isInteger(scaled); bits++) scaled *= 2
  assert.isTrue(bits <= BITS, `${value} has more digits than the oracle`)
  return BigInt(scaled) << (BITS - bits)
}

const real = (value: number): Fixed => ({ re: fixedOf(value), im: 0n })
const fixed = (value: Complex): Fixed => ({ re: fixedOf(value.re), im: fixedOf(value.im) })
const UNIT: Fixed = { re: ONE, im: 0n }

/** A branch that draws y·(Σ w·v − e) and puts it on its nodes with the weights w. */
interface Branch {
  readonly weights: readonly (readonly [node: NodeId, weight: Fixed])[]
  readonly y: Fixed
  readonly emf: Fixed
}

const MINUS: Fixed = { re: -ONE, im: 0n }

function branchesOf(element: Element, hertz: number, isClosed: (id: string) => boolean): Branch[] {
  if (element.kind === 'transformer') {
    const share = quotient(UNIT, real(element.ratio))
    const [p1, p2] = element.primary
    const [s1, s2] = element.secondary
    const across = [[p1, UNIT] as const, [p2, MINUS] as const]
    const windings = [
      [s1, UNIT] as const,
      [s2, MINUS] as const,
      [p1, minus(NOTHING, share)] as const,
      [p2, share] as const,
    ]
    return [
      { weights: across, y: quotient(UNIT, fixed(element.magnetisingOhms)), emf: NOTHING },
      { weights: windings, y: quotient(UNIT, fixed(element.seriesOhms)), emf: NOTHING },
    ]
  }
  const [first, second] = element.between
  const emf = element.kind === 'source' ? fixed(element.volts) : NOTHING
  const y = admittance(element, hertz, isClosed)
  return [
    {
      weights: [
        [first, UNIT],
        [second, MINUS],
      ],
      y,
      emf,
    },
  ]
}

function admittance(
  element: Exclude<Element, { kind: 'transformer' }>,
  hertz: number,
  isClosed: (id: string) => boolean,
): Fixed {
  switch (element.kind) {
    case 'capacitor': {
      const omega = (2n * PI * fixedOf(hertz)) >> BITS
      return { re: 0n, im: (omega * fixedOf(element.farads)) >> BITS }
    }
    case 'contact':
      return quotient(UNIT, real(isClosed(element.id) ? element.closedOhms : element.openOhms))
    case 'meter':
      return quotient(UNIT, real(element.ohms))
    default:
      return quotient(UNIT, fixed(element.ohms))
  }
}

/** Voltages in many digits, and how far a double is from them. */
export interface ExactSolution {
  readonly volts: (node: NodeId) => Complex
  /** |given − exact| [V]. */
  readonly error: (node: NodeId, given: Complex) => number
}

/**
 * Solves a network by nodal analysis and elimination in 256-bit fixed point.
 *
 * Its own answer is checked: what the currents at a node fail to sum to stays below 1e-45 A, so
 * with 1e-10 S to the reference at worst no voltage is off by more than 1e-33 V or so.
 */
export function solveExactly(
  network: Network,
  closedContacts?: ReadonlySet<string>,
): ExactSolution {
  const initial = new Set(
    network.elements.flatMap(each => (each.kind === 'contact' && each.closed ? [each.id] : [])),
  )
  const isClosed = (id: string): boolean => (closedContacts ?? initial).has(id)
  const branches = network.elements.flatMap(each => branchesOf(each, network.hertz, isClosed))
  const numbers = numbersOf(network.reference, branches)
  const solved = eliminate(...assemble(branches, numbers))
  const exact = (node: NodeId): Fixed => solved[numbers.get(node) ?? -1] ?? NOTHING
  checkResidual(branches, exact, network.reference)
  return {
    volts: node => ({ re: toNumber(exact(node).re), im: toNumber(exact(node).im) }),
    error: (node, given) => {
      const { re, im } = minus(fixed(given), exact(node))
      return Math.sqrt(toNumber(re) ** 2 + toNumber(im) ** 2)
    },
  }
}

const toNumber = (value: bigint): number => Number(value) * 2 ** -Number(BITS)

function numbersOf(reference: NodeId, branches: readonly Branch[]): Map<NodeId, number> {
  const nodes = new Set(branches.flatMap(({ weights }) => weights.map(([node]) => node)))
  nodes.delete(reference)
  return new Map([...nodes].map((node, index) => [node, index]))
}

function assemble(branches: readonly Branch[], numbers: Map<NodeId, number>): [Fixed[][], Fixed[]] {
  const matrix = Array.from(numbers, () => new Array<Fixed>(numbers.size).fill(NOTHING))
  const right = new Array<Fixed>(numbers.size).fill(NOTHING)
  for (const { weights, y, emf } of branches)
    for (const [a, wa] of weights) {
      const row = numbers.get(a)
      if (row === undefined) continue
      const own = product(wa, y)
      right[row] = plus(right[row] as Fixed, product(own, emf))
      for (const [b, wb] of weights) {
        const column = numbers.get(b)
        if (column === undefined) continue
        const line = matrix[row] as Fixed[]
        line[column] = plus(line[column] as Fixed, product(own, wb))
      }
    }
  return [matrix, right]
}

/** From the last node to the first without pivoting, past what is zero; then forward. */
function eliminate(matrix: Fixed[][], right: Fixed[]): readonly Fixed[] {
  const size = right.length
  for (let pivot = size - 1; pivot > 0; pivot--) {
    const top = matrix[pivot] as Fixed[]
    const columns = Array.from({ length: pivot }, (_, k) => k).filter(
      k => !isNothing(top[k] as Fixed),
    )
    for (const row of columns) {
      const line = matrix[row] as Fixed[]
      const factor = quotient(line[pivot] as Fixed, top[pivot] as Fixed)
      for (const k of columns) line[k] = minus(line[k] as Fixed, product(factor, top[k] as Fixed))
      right[row] = minus(right[row] as Fixed, product(factor, right[pivot] as Fixed))
    }
  }
  const solved: Fixed[] = []
  for (let row = 0; row < size; row++) {
    const line = matrix[row] as Fixed[]
    let sum = right[row] as Fixed
    for (let k = 0; k < row; k++) sum = minus(sum, product(line[k] as Fixed, solved[k] as Fixed))
    solved.push(quotient(sum, line[row] as Fixed))
  }
  return solved
}

function checkResidual(
  branches: readonly Branch[],
  exact: (node: NodeId) => Fixed,
  reference: NodeId,
): void {
  const sums = new Map<NodeId, Fixed>()
  for (const { weights, y, emf } of branches) {
    const drop = weights.reduce((sum, [node, w]) => plus(sum, product(w, exact(node))), NOTHING)
    const amps = product(y, minus(drop, emf))
    for (const [node, w] of weights)
      sums.set(node, plus(sums.get(node) ?? NOTHING, product(w, amps)))
  }
  sums.delete(reference)
  for (const [node, { re, im }] of sums)
    assert.isBelow(toNumber(re) ** 2 + toNumber(im) ** 2, 1e-90, `the oracle itself, at ${node}`)
}
