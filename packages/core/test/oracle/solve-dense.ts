import type { Network } from './build-network.ts'

/**
 * A network numbered for solving: nodes that reach the reference, few neighbours first.
 *
 * Index −1 is the reference; −2 a node without any path to it, which is left out.
 */
export interface Numbered {
  readonly network: Network
  readonly size: number
  readonly index: ReadonlyMap<string, number>
  readonly a: Int32Array
  readonly b: Int32Array
  readonly closed: Admittances
  readonly open: Admittances
  readonly emf: Vector
  readonly isSwitch: Uint8Array
  readonly windings: readonly {
    readonly nodes: Int32Array
    readonly ratio: number
    readonly y: number
  }[]
  readonly base: Matrix
  readonly work: Matrix
  readonly rows: Int32Array
  readonly filled: Filled
  readonly sourceVolts: number
}

/** One per branch. */
type Admittances = Vector

interface Vector {
  readonly re: Float64Array
  readonly im: Float64Array
}

/** Row-major. */
type Matrix = Vector

/** Node voltages of one state, and the branch admittances they were found with. */
export interface Solution {
  readonly numbered: Numbered
  readonly re: Float64Array
  readonly im: Float64Array
  readonly y: Admittances
}

export const REFERENCE = -1
const LEFT_OUT = -2

/** Numbers the nodes of a network and assembles all of it that no switch changes. */
export function numberNetwork(network: Network): Numbered {
  const index = numberNodes(network)
  const size = index.size
  const at = (name: string): number => (name === '' ? REFERENCE : (index.get(name) ?? LEFT_OUT))
  const { branches } = network
  const isSwitch = new Uint8Array(branches.length)
  for (const each of network.switches) isSwitch[each.branch] = 1
  const numbered: Numbered = {
    network,
    size,
    index,
    a: Int32Array.from(branches, each => at(each.a)),
    b: Int32Array.from(branches, each => at(each.b)),
    closed: admittances(branches.map(each => [each.r, each.x])),
    open: admittances(branches.map(each => [each.open ?? Infinity, 0])),
    emf: {
      re: Float64Array.from(branches, each => each.emf.re),
      im: Float64Array.from(branches, each => each.emf.im),
    },
    isSwitch,
    windings: network.windings.map(each => ({
      nodes: Int32Array.from([...each.primary, ...each.secondary], at),
      ratio: each.ratio,
      y: 1 / each.r,
    })),
    base: zeroMatrix(size),
    work: zeroMatrix(size),
    rows: new Int32Array(size),
    filled: { columns: new Int32Array(size * size), ends: new Int32Array(size) },
    sourceVolts: Math.max(...branches.map(each => Math.hypot(each.emf.re, each.emf.im))),
  }
  assembleBase(numbered)
  return numbered
}

/** A branch solved with another impedance: its own times a factor. */
export interface Scaled {
  readonly branch: number
  readonly by: number
}

/**
 * Node voltages with the given switches closed: one value per switch, 1 or 0.
 *
 * Dense elimination with partial pivoting, then refined: what flows out of each node is summed
 * branch by branch, so that nodes held by insulation alone keep their digits too.
 */
export function solveNetwork(
  numbered: Numbered,
  closed: Uint8Array,
  scaled: readonly Scaled[] = [],
): Solution {
  const { size, work, base, rows, filled, sourceVolts } = numbered
  const y = admittancesWith(numbered, closed, scaled)
  work.re.set(base.re)
  work.im.set(base.im)
  for (const each of numbered.network.switches) stamp(numbered, work, each.branch, y)
  for (const { branch } of scaled) stampChange(numbered, work, branch, y)
  factorise(work, size, rows)
  listFilled(work, rows, filled)
  const solution = { numbered, re: new Float64Array(size), im: new Float64Array(size), y }
  for (let pass = 0; pass < 5; pass++) {
    const step = surplus(solution)
    substitute(work, rows, filled, step)
    if (correct(solution, step) <= 1e-10 * sourceVolts) break
  }
  return solution
}

export const nodeRe = (at: Solution, node: number): number =>
  node < 0 ? 0 : (at.re[node] as number)
export const nodeIm = (at: Solution, node: number): number =>
  node < 0 ? 0 : (at.im[node] as number)

/** Volts between two nodes, or to the reference. */
export function voltsBetween(at: Solution, a: string, b = ''): number {
  const [i, j] = [indexOf(at, a), indexOf(at, b)]
  return Math.sqrt((nodeRe(at, i) - nodeRe(at, j)) ** 2 + (nodeIm(at, i) - nodeIm(at, j)) ** 2)
}

/** Amps through a branch from its first node to its second. */
export function branchAmps(at: Solution, branch: number): { re: number; im: number } {
  const { a, b, emf } = at.numbered
  const i = a[branch] as number
  const j = b[branch] as number
  if (i === LEFT_OUT || j === LEFT_OUT) return { re: 0, im: 0 }
  const dre = nodeRe(at, i) - nodeRe(at, j) - (emf.re[branch] as number)
  const dim = nodeIm(at, i) - nodeIm(at, j) - (emf.im[branch] as number)
  const yre = at.y.re[branch] as number
  const yim = at.y.im[branch] as number
  return { re: yre * dre - yim * dim, im: yre * dim + yim * dre }
}

/** Amps that a transformer gives from its secondary. */
export function secondaryAmps(at: Solution, winding: number): { re: number; im: number } {
  const each = at.numbered.windings[winding]
  if (!each) return { re: 0, im: 0 }
  const [p, q, s, t] = each.nodes as unknown as [number, number, number, number]
  const { ratio, y } = each
  return {
    re: y * (ratio * (nodeRe(at, p) - nodeRe(at, q)) - (nodeRe(at, s) - nodeRe(at, t))),
    im: y * (ratio * (nodeIm(at, p) - nodeIm(at, q)) - (nodeIm(at, s) - nodeIm(at, t))),
  }
}

const indexOf = (at: Solution, node: string): number =>
  node === '' ? REFERENCE : (at.numbered.index.get(node) ?? LEFT_OUT)

/** Nodes with a path to the reference, those with few neighbours first: less fill. */
function numberNodes(network: Network): ReadonlyMap<string, number> {
  const neighbours = new Map<string, Set<string>>()
  const join = (a: string, b: string): void => {
    for (const [from, to] of [
      [a, b],
      [b, a],
    ] as const) {
      const own = neighbours.get(from) ?? new Set()
      neighbours.set(from, own.add(to))
    }
  }
  const touches = new Set(
    network.switches.filter(each => each.kind === 'touch').map(each => each.branch),
  )
  network.branches.forEach((each, at) => {
    if (!touches.has(at)) join(each.a, each.b)
  })
  for (const { primary, secondary } of network.windings) {
    join(...primary)
    join(...secondary)
  }
  const reached = new Set([''])
  for (const node of reached) for (const next of neighbours.get(node) ?? []) reached.add(next)
  reached.delete('')
  const degree = (node: string): number => neighbours.get(node)?.size ?? 0
  return new Map([...reached].sort((a, b) => degree(a) - degree(b)).map((node, at) => [node, at]))
}

function admittances(impedances: readonly (readonly [number, number])[]): Admittances {
  const re = new Float64Array(impedances.length)
  const im = new Float64Array(impedances.length)
  impedances.forEach(([r, x], at) => {
    if (!Number.isFinite(r)) return
    const square = r * r + x * x
    re[at] = r / square
    im[at] = -x / square
  })
  return { re, im }
}

const zeroMatrix = (size: number): Matrix => ({
  re: new Float64Array(size * size),
  im: new Float64Array(size * size),
})

function admittancesWith(
  numbered: Numbered,
  closed: Uint8Array,
  scaled: readonly Scaled[],
): Admittances {
  const re = numbered.closed.re.slice()
  const im = numbered.closed.im.slice()
  numbered.network.switches.forEach((each, at) => {
    if (closed[at] === 1) return
    re[each.branch] = numbered.open.re[each.branch] as number
    im[each.branch] = 0
  })
  for (const { branch, by } of scaled) {
    ;(re[branch] as number) /= by
    ;(im[branch] as number) /= by
  }
  return { re, im }
}

function assembleBase(numbered: Numbered): void {
  const { base, isSwitch, closed, size, windings } = numbered
  for (let at = 0; at < isSwitch.length; at++)
    if (isSwitch[at] === 0) stamp(numbered, base, at, closed)
  for (const { nodes, ratio, y } of windings) {
    const weights = [ratio, -ratio, -1, 1]
    for (const [row, i] of nodes.entries())
      for (const [column, j] of nodes.entries())
        if (i >= 0 && j >= 0)
          (base.re[i * size + j] as number) +=
            y * (weights[row] as number) * (weights[column] as number)
  }
}

const stamp = (numbered: Numbered, into: Matrix, branch: number, y: Admittances): void =>
  stampOne(numbered, into, branch, [y.re[branch] as number, y.im[branch] as number])

/** What a branch that is no switch has beyond what is assembled already. */
function stampChange(numbered: Numbered, into: Matrix, branch: number, y: Admittances): void {
  const { re, im } = numbered.closed
  stampOne(numbered, into, branch, [
    (y.re[branch] as number) - (re[branch] as number),
    (y.im[branch] as number) - (im[branch] as number),
  ])
}

function stampOne(
  numbered: Numbered,
  into: Matrix,
  branch: number,
  [re, im]: readonly [re: number, im: number],
): void {
  const { size } = numbered
  const [i, j] = [numbered.a[branch] as number, numbered.b[branch] as number]
  if (i === LEFT_OUT || j === LEFT_OUT) return
  if (i >= 0) addAt(into, i * size + i, re, im)
  if (j >= 0) addAt(into, j * size + j, re, im)
  if (i >= 0 && j >= 0) {
    addAt(into, i * size + j, -re, -im)
    addAt(into, j * size + i, -re, -im)
  }
}

function addAt(into: Vector, at: number, re: number, im: number): void {
  ;(into.re[at] as number) += re
  ;(into.im[at] as number) += im
}

/** Gaussian elimination in place, rows chosen by the largest remaining entry of the column. */
function factorise(matrix: Matrix, size: number, rows: Int32Array): void {
  const { re, im } = matrix
  const filled = new Int32Array(size)
  for (let row = 0; row < size; row++) rows[row] = row * size
  for (let k = 0; k < size; k++) {
    choosePivot(matrix, size, rows, k)
    const pivot = rows[k] as number
    const pre = re[pivot + k] as number
    const pim = im[pivot + k] as number
    const square = pre * pre + pim * pim
    let count = 0
    for (let column = k + 1; column < size; column++)
      if (re[pivot + column] !== 0 || im[pivot + column] !== 0) filled[count++] = column
    for (let row = k + 1; row < size; row++) {
      const at = rows[row] as number
      const are = re[at + k] as number
      const aim = im[at + k] as number
      if (are === 0 && aim === 0) continue
      const mre = (are * pre + aim * pim) / square
      const mim = (aim * pre - are * pim) / square
      re[at + k] = mre
      im[at + k] = mim
      for (let each = 0; each < count; each++) {
        const column = filled[each] as number
        const ure = re[pivot + column] as number
        const uim = im[pivot + column] as number
        re[at + column] = (re[at + column] as number) - mre * ure + mim * uim
        im[at + column] = (im[at + column] as number) - mre * uim - mim * ure
      }
    }
  }
}

function choosePivot(matrix: Matrix, size: number, rows: Int32Array, k: number): void {
  const { re, im } = matrix
  let best = k
  let greatest = -1
  for (let row = k; row < size; row++) {
    const at = (rows[row] as number) + k
    const vre = re[at] as number
    const vim = im[at] as number
    const own = vre * vre + vim * vim
    if (own > greatest) {
      greatest = own
      best = row
    }
  }
  if (!(greatest > 0)) throw new Error('the matrix has no pivot')
  const kept = rows[k] as number
  rows[k] = rows[best] as number
  rows[best] = kept
}

/** Which entries of the factors are not zero: per row the columns, in order. */
interface Filled {
  readonly columns: Int32Array
  /** Per row, where its columns end; they start at `row * size`. */
  readonly ends: Int32Array
}

function listFilled(matrix: Matrix, rows: Int32Array, filled: Filled): void {
  const { re, im } = matrix
  const size = rows.length
  for (let row = 0; row < size; row++) {
    const at = rows[row] as number
    let end = row * size
    for (let column = 0; column < size; column++)
      if (re[at + column] !== 0 || im[at + column] !== 0) filled.columns[end++] = column
    filled.ends[row] = end
  }
}

/** Solves with the factors; the right side is replaced by the answer. */
function substitute(matrix: Matrix, rows: Int32Array, filled: Filled, side: Vector): void {
  const size = rows.length
  const x = { re: new Float64Array(size), im: new Float64Array(size) }
  for (let row = 0; row < size; row++) {
    const at = rows[row] as number
    const from = Math.round(at / size)
    x.re[row] = side.re[from] as number
    x.im[row] = side.im[from] as number
    takeAway(matrix, at, filled, x, row, 'below')
  }
  for (let row = size - 1; row >= 0; row--) {
    const at = rows[row] as number
    takeAway(matrix, at, filled, x, row, 'above')
    const pre = matrix.re[at + row] as number
    const pim = matrix.im[at + row] as number
    const square = pre * pre + pim * pim
    const sre = x.re[row] as number
    const sim = x.im[row] as number
    x.re[row] = (sre * pre + sim * pim) / square
    x.im[row] = (sim * pre - sre * pim) / square
  }
  side.re.set(x.re)
  side.im.set(x.im)
}

/** From one entry of `x`, the products of its matrix row, on one side of the diagonal, with `x`. */
function takeAway(
  matrix: Matrix,
  at: number,
  filled: Filled,
  x: Vector,
  row: number,
  side: 'below' | 'above',
): void {
  const { re, im } = matrix
  const end = filled.ends[row] as number
  let sre = x.re[row] as number
  let sim = x.im[row] as number
  for (let each = row * x.re.length; each < end; each++) {
    const column = filled.columns[each] as number
    if (side === 'below' ? column >= row : column <= row) continue
    const mre = re[at + column] as number
    const mim = im[at + column] as number
    const vre = x.re[column] as number
    const vim = x.im[column] as number
    sre -= mre * vre - mim * vim
    sim -= mre * vim + mim * vre
  }
  x.re[row] = sre
  x.im[row] = sim
}

/** Amps that flow into each node beyond what flows out: zero when solved. */
function surplus(at: Solution): Vector {
  const { numbered } = at
  const { size, a, b } = numbered
  const side = { re: new Float64Array(size), im: new Float64Array(size) }
  const put = (node: number, re: number, im: number): void => {
    if (node >= 0) addAt(side, node, re, im)
  }
  for (let branch = 0; branch < a.length; branch++) {
    const amps = branchAmps(at, branch)
    put(a[branch] as number, -amps.re, -amps.im)
    put(b[branch] as number, amps.re, amps.im)
  }
  numbered.windings.forEach(({ nodes, ratio }, winding) => {
    const amps = secondaryAmps(at, winding)
    const weights = [-ratio, ratio, 1, -1]
    for (const [each, node] of nodes.entries())
      put(node, (weights[each] as number) * amps.re, (weights[each] as number) * amps.im)
  })
  return side
}

/** Adds the step, and returns its greatest entry. */
function correct(at: Solution, step: Vector): number {
  let greatest = 0
  for (let node = 0; node < at.re.length; node++) {
    const [re, im] = [step.re[node] as number, step.im[node] as number]
    ;(at.re[node] as number) += re
    ;(at.im[node] as number) += im
    greatest = Math.max(greatest, Math.abs(re), Math.abs(im))
  }
  return greatest
}
