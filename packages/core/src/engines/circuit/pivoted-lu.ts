/** A square complex matrix, row-major and interleaved, with the row order that pivoting chose. */
export interface DenseMatrix {
  readonly size: number
  readonly entries: Float64Array
  readonly rows: Int32Array
}

export const denseMatrix = (size: number): DenseMatrix => ({
  size,
  entries: new Float64Array(2 * size * size),
  rows: new Int32Array(size),
})

/**
 * Factors in place into a unit lower and an upper triangle, with partial pivoting.
 *
 * A singular matrix leaves values that are not finite.
 *
 * @source [GOLUB-VAN-LOAN] algorithm 3.4.1, outer product form
 */
export function factorDense(matrix: DenseMatrix): void {
  for (let column = 0; column < matrix.size; column++) {
    const pivot = largestBelow(matrix, column)
    matrix.rows[column] = pivot
    if (pivot !== column) swapRows(matrix, pivot, column)
    reduceBelow(matrix, column)
  }
}

/** |re| + |im| serves to choose a pivot: within √2 of the magnitude. */
function largestBelow({ size, entries }: DenseMatrix, column: number): number {
  let best = column
  let most = -1
  for (let row = column; row < size; row++) {
    const at = 2 * (row * size + column)
    const weight = Math.abs(entries[at] as number) + Math.abs(entries[at + 1] as number)
    if (weight > most) {
      most = weight
      best = row
    }
  }
  return best
}

function swapRows({ size, entries }: DenseMatrix, a: number, b: number): void {
  for (let k = 0; k < 2 * size; k++) {
    const kept = entries[2 * size * a + k] as number
    entries[2 * size * a + k] = entries[2 * size * b + k] as number
    entries[2 * size * b + k] = kept
  }
}

function reduceBelow({ size, entries }: DenseMatrix, column: number): void {
  const top = 2 * (column * size + column)
  const pRe = entries[top] as number
  const pIm = entries[top + 1] as number
  const weight = pRe * pRe + pIm * pIm
  const width = 2 * (size - column)
  for (let row = column + 1; row < size; row++) {
    const left = 2 * (row * size + column)
    const aRe = entries[left] as number
    const aIm = entries[left + 1] as number
    if (aRe === 0 && aIm === 0) continue
    const fRe = (aRe * pRe + aIm * pIm) / weight
    const fIm = (aIm * pRe - aRe * pIm) / weight
    entries[left] = fRe
    entries[left + 1] = fIm
    for (let k = 2; k < width; k += 2) {
      const uRe = entries[top + k] as number
      const uIm = entries[top + k + 1] as number
      entries[left + k] = (entries[left + k] as number) - (fRe * uRe - fIm * uIm)
      entries[left + k + 1] = (entries[left + k + 1] as number) - (fRe * uIm + fIm * uRe)
    }
  }
}

/** Solves in place for one right-hand side, interleaved, with the factors of `factorDense`. */
export function solveDense(matrix: DenseMatrix, values: Float64Array): void {
  const { size, rows } = matrix
  for (let row = 0; row < size; row++) {
    swapValues(values, row, rows[row] as number)
    subtractProducts(matrix, values, row, 0, row)
  }
  for (let row = size - 1; row >= 0; row--) {
    subtractProducts(matrix, values, row, row + 1, size)
    divideByPivot(matrix, values, row)
  }
}

function swapValues(values: Float64Array, a: number, b: number): void {
  if (a === b) return
  for (const part of [0, 1]) {
    const kept = values[2 * a + part] as number
    values[2 * a + part] = values[2 * b + part] as number
    values[2 * b + part] = kept
  }
}

function subtractProducts(
  { size, entries }: DenseMatrix,
  values: Float64Array,
  row: number,
  start: number,
  end: number,
): void {
  let re = values[2 * row] as number
  let im = values[2 * row + 1] as number
  for (let column = start; column < end; column++) {
    const at = 2 * (row * size + column)
    const aRe = entries[at] as number
    const aIm = entries[at + 1] as number
    const vRe = values[2 * column] as number
    const vIm = values[2 * column + 1] as number
    re -= aRe * vRe - aIm * vIm
    im -= aRe * vIm + aIm * vRe
  }
  values[2 * row] = re
  values[2 * row + 1] = im
}

function divideByPivot({ size, entries }: DenseMatrix, values: Float64Array, row: number): void {
  const at = 2 * (row * size + row)
  const pRe = entries[at] as number
  const pIm = entries[at + 1] as number
  const weight = pRe * pRe + pIm * pIm
  const vRe = values[2 * row] as number
  const vIm = values[2 * row + 1] as number
  values[2 * row] = (vRe * pRe + vIm * pIm) / weight
  values[2 * row + 1] = (vIm * pRe - vRe * pIm) / weight
}
