/**
 * Volts at each named node when 1 A goes in at one of them and out at the node left out.
 *
 * Plain elimination without pivoting: conductances alone make the matrix diagonally dominant.
 */
export function solveReal(
  nodes: readonly string[],
  wires: readonly { readonly a: string; readonly b: string; readonly ohms: number }[],
  into: string,
): ReadonlyMap<string, number> {
  const index = new Map(nodes.map((node, at) => [node, at]))
  const matrix = nodes.map(node => [...nodes.map(() => 0), node === into ? 1 : 0])
  for (const { a, b, ohms } of wires)
    for (const [from, to] of [
      [a, b],
      [b, a],
    ] as const) {
      const row = matrix[index.get(from) ?? -1]
      if (!row) continue
      addTo(row, index.get(from) ?? -1, 1 / ohms)
      const other = index.get(to)
      if (other !== undefined) addTo(row, other, -1 / ohms)
    }
  eliminate(matrix)
  return new Map(nodes.map((node, at) => [node, matrix[at]?.[nodes.length] ?? 0]))
}

const addTo = (row: number[], at: number, value: number): void => {
  row[at] = (row[at] ?? 0) + value
}

/** Clears every column but its diagonal; the last column becomes the answer. */
function eliminate(matrix: number[][]): void {
  matrix.forEach((row, k) => {
    const pivot = row[k] ?? 0
    row.forEach((value, column) => {
      row[column] = value / pivot
    })
    for (const other of matrix) {
      const factor = other[k] ?? 0
      if (other === row || factor === 0) continue
      for (const [column, value] of row.entries()) addTo(other, column, -factor * value)
    }
  })
}
