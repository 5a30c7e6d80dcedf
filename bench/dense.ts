import type { Element, Network } from '@tubwright/core'
import { nodesOf } from '@tubwright/core'

/** A plain nodal matrix, assembled afresh and solved by dense complex elimination: the yardstick. */
export interface Dense {
  readonly solve: (closed: ReadonlySet<string>) => Float64Array
}

interface Stamp {
  readonly a: number
  readonly b: number
  readonly admittance: (closed: ReadonlySet<string>) => readonly [number, number]
  readonly injection: readonly [number, number]
}

const inverse = (re: number, im: number): readonly [number, number] => {
  const size = re * re + im * im
  return [re / size, -im / size]
}

const NONE: readonly [number, number] = [0, 0]

function stampOf(element: Element, at: (node: string) => number, omega: number): Stamp | undefined {
  if (element.kind === 'transformer') return undefined
  const [a, b] = [at(element.between[0]), at(element.between[1])]
  switch (element.kind) {
    case 'impedance': {
      const fixed = inverse(element.ohms.re, element.ohms.im)
      return { a, b, admittance: () => fixed, injection: NONE }
    }
    case 'capacitor': {
      const fixed = [0, omega * element.farads] as const
      return { a, b, admittance: () => fixed, injection: NONE }
    }
    case 'meter': {
      const fixed = [1 / element.ohms, 0] as const
      return { a, b, admittance: () => fixed, injection: NONE }
    }
    case 'contact': {
      const [shut, open] = [
        [1 / element.closedOhms, 0] as const,
        [1 / element.openOhms, 0] as const,
      ]
      return { a, b, admittance: closed => (closed.has(element.id) ? shut : open), injection: NONE }
    }
    case 'source': {
      const fixed = inverse(element.ohms.re, element.ohms.im)
      const { re, im } = element.volts
      const injection = [fixed[0] * re - fixed[1] * im, fixed[0] * im + fixed[1] * re] as const
      return { a, b, admittance: () => fixed, injection }
    }
  }
}

/** The four-node stamp of a transformer, as branches with admittances of either sign. */
function transformerStamps(element: Element, at: (node: string) => number): readonly Stamp[] {
  if (element.kind !== 'transformer') return []
  const [p, q] = [at(element.primary[0]), at(element.primary[1])]
  const [s, t] = [at(element.secondary[0]), at(element.secondary[1])]
  const y = inverse(element.seriesOhms.re, element.seriesOhms.im)
  const m = inverse(element.magnetisingOhms.re, element.magnetisingOhms.im)
  const n = 1 / element.ratio
  const times = (factor: number) => [y[0] * factor, y[1] * factor] as const
  const branch = (a: number, b: number, value: readonly [number, number]): Stamp => ({
    a,
    b,
    admittance: () => value,
    injection: NONE,
  })
  const primary = [times(n * n)[0] + m[0], times(n * n)[1] + m[1]] as const
  return [
    branch(p, q, [primary[0] - 0, primary[1]]),
    branch(s, t, times(1)),
    branch(p, s, times(n)),
    branch(q, t, times(n)),
    branch(p, t, times(-n)),
    branch(q, s, times(-n)),
  ]
}

/** Prepares the yardstick for a network; assembling belongs to each solve, as it does to ours. */
export function denseOf(network: Network): Dense {
  const nodes = nodesOf(network)
  const index = new Map(nodes.map((node, at) => [node, at - 1] as const))
  const at = (node: string): number => index.get(node) ?? -1
  const omega = 2 * Math.PI * network.hertz
  const stamps = network.elements.flatMap(element => {
    const stamp = stampOf(element, at, omega)
    return stamp ? [stamp] : transformerStamps(element, at)
  })
  const size = nodes.length - 1
  const width = 2 * (size + 1)
  const matrix = new Float64Array(size * width)
  return {
    solve(closed) {
      matrix.fill(0)
      for (const stamp of stamps) place(matrix, width, stamp, stamp.admittance(closed))
      return eliminate(matrix, size, width)
    },
  }
}

function place(
  matrix: Float64Array,
  width: number,
  { a, b, injection }: Stamp,
  [re, im]: readonly [number, number],
): void {
  const put = (row: number, column: number, sign: number): void => {
    if (row < 0 || column < 0) return
    const at = row * width + 2 * column
    matrix[at] = (matrix[at] as number) + sign * re
    matrix[at + 1] = (matrix[at + 1] as number) + sign * im
  }
  put(a, a, 1)
  put(b, b, 1)
  put(a, b, -1)
  put(b, a, -1)
  for (const [row, sign] of [
    [a, 1],
    [b, -1],
  ] as const) {
    if (row < 0) continue
    const at = row * width + width - 2
    matrix[at] = (matrix[at] as number) + sign * injection[0]
    matrix[at + 1] = (matrix[at + 1] as number) + sign * injection[1]
  }
}

function eliminate(m: Float64Array, size: number, width: number): Float64Array {
  for (let k = 0; k < size; k++) {
    swapRows(m, width, k, largestRow(m, size, width, k))
    const pivot = k * width + 2 * k
    const [pr, pi] = inverse(m[pivot] as number, m[pivot + 1] as number)
    for (let row = k + 1; row < size; row++) {
      const at = row * width + 2 * k
      const [re, im] = [m[at] as number, m[at + 1] as number]
      if (re === 0 && im === 0) continue
      subtractRow(m, width, row, k, re * pr - im * pi, re * pi + im * pr)
    }
  }
  return substitute(m, size, width)
}

function largestRow(m: Float64Array, size: number, width: number, k: number): number {
  let [best, most] = [k, -1]
  for (let row = k; row < size; row++) {
    const at = row * width + 2 * k
    const length = (m[at] as number) ** 2 + (m[at + 1] as number) ** 2
    if (length > most) [best, most] = [row, length]
  }
  return best
}

function swapRows(m: Float64Array, width: number, a: number, b: number): void {
  if (a === b) return
  for (let column = 0; column < width; column++) {
    const kept = m[a * width + column] as number
    m[a * width + column] = m[b * width + column] as number
    m[b * width + column] = kept
  }
}

function subtractRow(
  m: Float64Array,
  width: number,
  row: number,
  from: number,
  re: number,
  im: number,
): void {
  for (let column = 2 * from; column < width; column += 2) {
    const [a, b] = [m[from * width + column] as number, m[from * width + column + 1] as number]
    const at = row * width + column
    m[at] = (m[at] as number) - (re * a - im * b)
    m[at + 1] = (m[at + 1] as number) - (re * b + im * a)
  }
}

function substitute(m: Float64Array, size: number, width: number): Float64Array {
  const volts = new Float64Array(2 * size)
  for (let k = size - 1; k >= 0; k--) {
    let [re, im] = [m[k * width + width - 2] as number, m[k * width + width - 1] as number]
    for (let column = k + 1; column < size; column++) {
      const at = k * width + 2 * column
      const [a, b] = [m[at] as number, m[at + 1] as number]
      const [vr, vi] = [volts[2 * column] as number, volts[2 * column + 1] as number]
      re -= a * vr - b * vi
      im -= a * vi + b * vr
    }
    const [pr, pi] = inverse(m[k * width + 2 * k] as number, m[k * width + 2 * k + 1] as number)
    volts[2 * k] = re * pr - im * pi
    volts[2 * k + 1] = re * pi + im * pr
  }
  return volts
}
