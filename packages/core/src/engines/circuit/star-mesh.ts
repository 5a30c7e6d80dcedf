import type { Elimination } from './elimination.ts'

/** Arrays of one numeric elimination, allocated once and written over by each solve. */
export interface MeshWorkspace {
  /** Admittances and Norton currents, laid out as the elimination says; destroyed by a solve. */
  readonly values: Float64Array
  /** Share of each neighbour in a pivot's voltage. */
  readonly ratios: Float64Array
  /** 1/pivot, by node. */
  readonly inverses: Float64Array
  /** Voltage of each node [V]. */
  readonly re: Float64Array
  readonly im: Float64Array
}

/** Makes the arrays of one elimination, side by side in one piece of memory. */
export function meshWorkspace(elimination: Elimination): MeshWorkspace {
  const { valueCount, ratioCount, nodeCount } = elimination
  const memory = new ArrayBuffer(8 * (valueCount + 2 * ratioCount + 4 * nodeCount))
  let at = 0
  const take = (length: number): Float64Array => {
    const array = new Float64Array(memory, at, length)
    at += 8 * length
    return array
  }
  return {
    values: take(valueCount),
    ratios: take(2 * ratioCount),
    inverses: take(2 * nodeCount),
    re: take(nodeCount),
    im: take(nodeCount),
  }
}

/**
 * Solves for all voltages: each node in turn is replaced by the mesh among its neighbours, and
 * then found again from theirs.
 *
 * A pivot is the sum of its admittances, never a stored diagonal that elimination eats away, and
 * an EMF stays with its branch. So no two large numbers are ever subtracted: a voltage is a
 * weighted mean of its neighbours' voltages, whatever the decades between the weights.
 *
 * Values of which some node has no finite answer (an exact resonance) give NaN.
 *
 * @source [GTH-1985] sums in place of subtractions; docs/derivations/star-mesh.md
 */
export function solveMesh(elimination: Elimination, work: MeshWorkspace): void {
  for (let index = 0; index < elimination.starts.length; index++)
    eliminate(elimination.steps, elimination.starts[index] as number, work)
  substituteBack(elimination, work)
}

function eliminate(steps: Int32Array, start: number, work: MeshWorkspace): void {
  const { values, ratios, inverses, re, im } = work
  const node = steps[start] as number
  const count = steps[start + 1] as number
  const ratioAt = steps[start + 2] as number
  const star = start + 3
  let at = star + 2 * count

  let sumRe = 0
  let sumIm = 0
  for (let k = star; k < at; k += 2) {
    const y = steps[k] as number
    sumRe += values[y] as number
    sumIm += values[y + 1] as number
  }
  const size = sumRe * sumRe + sumIm * sumIm
  const inverseRe = sumRe / size
  const inverseIm = -sumIm / size
  inverses[2 * node] = inverseRe
  inverses[2 * node + 1] = inverseIm

  let intoRe = 0
  let intoIm = 0
  const sums = steps[at++] as number
  for (let k = 0; k < sums; k++) {
    const j = steps[at++] as number
    const sign = steps[at++] as number
    intoRe += sign * (values[j] as number)
    intoIm += sign * (values[j + 1] as number)
  }
  re[node] = intoRe * inverseRe - intoIm * inverseIm
  im[node] = intoRe * inverseIm + intoIm * inverseRe

  for (let k = 0; k < count; k++) {
    const y = steps[star + 2 * k] as number
    const yRe = values[y] as number
    const yIm = values[y + 1] as number
    const rRe = yRe * inverseRe - yIm * inverseIm
    const rIm = yRe * inverseIm + yIm * inverseRe
    ratios[ratioAt + 2 * k] = rRe
    ratios[ratioAt + 2 * k + 1] = rIm
    for (let l = 0; l < k; l++) {
      const other = steps[star + 2 * l] as number
      const oRe = values[other] as number
      const oIm = values[other + 1] as number
      const target = steps[at++] as number
      values[target] = (values[target] as number) + oRe * rRe - oIm * rIm
      values[target + 1] = (values[target + 1] as number) + oRe * rIm + oIm * rRe
    }
  }

  const moves = steps[at++] as number
  for (let k = 0; k < moves; k++, at += 4) {
    const target = steps[at] as number
    const source = steps[at + 1] as number
    const r = ratioAt + 2 * (steps[at + 2] as number)
    const sign = steps[at + 3] as number
    const jRe = sign * (values[source] as number)
    const jIm = sign * (values[source + 1] as number)
    const rRe = ratios[r] as number
    const rIm = ratios[r + 1] as number
    values[target] = (values[target] as number) + (jRe * rRe - jIm * rIm)
    values[target + 1] = (values[target + 1] as number) + (jRe * rIm + jIm * rRe)
  }
}

/** From the last pivot to the first: a node's voltage is the weighted mean of its neighbours'. */
function substituteBack(elimination: Elimination, work: MeshWorkspace): void {
  const { steps, starts } = elimination
  const { ratios, re, im } = work
  for (let index = starts.length - 1; index >= 0; index--) {
    const start = starts[index] as number
    const node = steps[start] as number
    const count = steps[start + 1] as number
    let r = steps[start + 2] as number
    let vRe = re[node] as number
    let vIm = im[node] as number
    for (let k = 0; k < count; k++, r += 2) {
      const neighbour = steps[start + 4 + 2 * k] as number
      const rRe = ratios[r] as number
      const rIm = ratios[r + 1] as number
      const nRe = re[neighbour] as number
      const nIm = im[neighbour] as number
      vRe += rRe * nRe - rIm * nIm
      vIm += rRe * nIm + rIm * nRe
    }
    re[node] = vRe
    im[node] = vIm
  }
}

/**
 * Voltages that currents into the nodes would cause, with the factors of the solve just done.
 *
 * @param into - current into each node [A], interleaved; destroyed
 */
export function solveInjections(
  elimination: Elimination,
  work: MeshWorkspace,
  into: Float64Array,
): void {
  const { steps } = elimination
  const { ratios, inverses, re, im } = work
  for (const start of elimination.starts) {
    const node = steps[start] as number
    const count = steps[start + 1] as number
    let r = steps[start + 2] as number
    const jRe = into[2 * node] as number
    const jIm = into[2 * node + 1] as number
    const iRe = inverses[2 * node] as number
    const iIm = inverses[2 * node + 1] as number
    re[node] = jRe * iRe - jIm * iIm
    im[node] = jRe * iIm + jIm * iRe
    for (let k = 0; k < count; k++, r += 2) {
      const at = 2 * (steps[start + 4 + 2 * k] as number)
      const rRe = ratios[r] as number
      const rIm = ratios[r + 1] as number
      into[at] = (into[at] as number) + (jRe * rRe - jIm * rIm)
      into[at + 1] = (into[at + 1] as number) + (jRe * rIm + jIm * rRe)
    }
  }
  substituteBack(elimination, work)
}
