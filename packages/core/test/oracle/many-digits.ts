import { Decimal } from 'decimal.js'
import { buildNetwork } from './build-network.ts'
import { switchesIn } from './configurations.ts'
import type { Overrides, RawLanding } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'
import type { Numbered } from './solve-dense.ts'
import { nodeIm, nodeRe, numberNetwork, solveNetwork } from './solve-dense.ts'
import type { State } from './states.ts'

const Digits = Decimal.clone({ precision: 50 })

interface Many {
  readonly re: Decimal
  readonly im: Decimal
}

const ZERO: Many = { re: new Digits(0), im: new Digits(0) }
const times = (a: Many, b: Many): Many => ({
  re: a.re.times(b.re).minus(a.im.times(b.im)),
  im: a.re.times(b.im).plus(a.im.times(b.re)),
})
const plus = (a: Many, b: Many): Many => ({ re: a.re.plus(b.re), im: a.im.plus(b.im) })
const negative = (a: Many): Many => ({ re: a.re.negated(), im: a.im.negated() })
const isZero = (a: Many): boolean => a.re.isZero() && a.im.isZero()
const over = (a: Many, b: Many): Many => {
  const square = b.re.times(b.re).plus(b.im.times(b.im))
  const top = times(a, { re: b.re, im: b.im.negated() })
  return { re: top.re.div(square), im: top.im.div(square) }
}

/**
 * Greatest error of the oracle's own node voltages in one state, as a share of the source volts.
 *
 * The same elements are assembled and solved again in 50 digits, so that rounding in the assembly
 * counts as an error too.
 */
export function errorInManyDigits(
  job: OracleJob,
  landing: RawLanding,
  state: State,
  overrides: Overrides = {},
): number {
  const numbered = numberNetwork(buildNetwork(job, landing, overrides))
  const closed = switchesIn(job, numbered.network, state, 'closed')
  const own = solveNetwork(numbered, closed)
  const exact = solveInManyDigits(numbered, closed)
  const errors = exact.map((volts, node) =>
    Math.hypot(
      volts.re.minus(nodeRe(own, node)).toNumber(),
      volts.im.minus(nodeIm(own, node)).toNumber(),
    ),
  )
  return Math.max(...errors) / numbered.sourceVolts
}

function solveInManyDigits(numbered: Numbered, closed: Uint8Array): Many[] {
  const matrix = assemble(numbered, closed)
  const size = numbered.size
  for (let k = 0; k < size; k++) {
    pivot(matrix, k)
    const top = matrix[k] ?? []
    for (const row of matrix.slice(k + 1)) {
      const factor = over(row[k] ?? ZERO, top[k] ?? ZERO)
      if (!isZero(factor)) subtract(row, top, factor, k)
    }
  }
  const volts: Many[] = []
  for (let k = size - 1; k >= 0; k--) {
    const row = matrix[k] ?? []
    let sum = row[size] ?? ZERO
    for (let column = k + 1; column < size; column++)
      sum = plus(sum, negative(times(row[column] ?? ZERO, volts[column] ?? ZERO)))
    volts[k] = over(sum, row[k] ?? ZERO)
  }
  return volts
}

const sizeOf = (value: Many | undefined): Decimal =>
  value ? value.re.abs().plus(value.im.abs()) : new Digits(0)

function pivot(matrix: Many[][], k: number): void {
  let best = k
  for (let row = k + 1; row < matrix.length; row++)
    if (sizeOf(matrix[row]?.[k]).gt(sizeOf(matrix[best]?.[k]))) best = row
  const [kept, chosen] = [matrix[k], matrix[best]]
  if (kept && chosen) {
    matrix[k] = chosen
    matrix[best] = kept
  }
}

function subtract(row: Many[], top: readonly Many[], factor: Many, from: number): void {
  for (let column = from; column < row.length; column++) {
    const value = top[column] ?? ZERO
    if (!isZero(value)) row[column] = plus(row[column] ?? ZERO, negative(times(factor, value)))
  }
}

/** The nodal matrix from the elements, its right side in the last column. */
function assemble(numbered: Numbered, closed: Uint8Array): Many[][] {
  const { network, size, a, b } = numbered
  const matrix = Array.from({ length: size }, () => new Array<Many>(size + 1).fill(ZERO))
  const put = (row: number, column: number, value: Many): void => {
    const own = row < 0 || column < 0 ? undefined : matrix[row]
    if (own) own[column] = plus(own[column] ?? ZERO, value)
  }
  const ohms = new Map(
    network.switches.map((each, at) => {
      const branch = network.branches[each.branch]
      return [each.branch, closed[at] === 1 ? branch?.r : branch?.open]
    }),
  )
  network.branches.forEach((branch, at) => {
    const r = ohms.has(at) ? ohms.get(at) : branch.r
    const [i, j] = [a[at] ?? -2, b[at] ?? -2]
    if (r === undefined || !Number.isFinite(r) || i === -2 || j === -2) return
    const y = over(
      { re: new Digits(1), im: ZERO.im },
      { re: new Digits(r), im: new Digits(branch.x) },
    )
    for (const [row, column, value] of [
      [i, i, y],
      [j, j, y],
      [i, j, negative(y)],
      [j, i, negative(y)],
    ] as const)
      put(row, column, value)
    put(i, size, times(y, { re: new Digits(branch.emf.re), im: new Digits(branch.emf.im) }))
  })
  network.windings.forEach((winding, at) => {
    const nodes = numbered.windings[at]?.nodes ?? []
    const weights = [winding.ratio, -winding.ratio, -1, 1].map(each => new Digits(each))
    const y = new Digits(1).div(winding.r)
    for (const [row, i] of nodes.entries())
      for (const [column, j] of nodes.entries())
        put(i, j, {
          re: y.times(weights[row] ?? 0).times(weights[column] ?? 0),
          im: ZERO.im,
        })
  })
  return matrix
}
