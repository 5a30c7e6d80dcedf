/** Running sums that keep what rounding took from them. */
export interface ExactSums {
  readonly values: Float64Array
  readonly lost: Float64Array
}

/** Subtracts from one of the sums, as if in twice the digits. @source [KNUTH-2] 4.2.2 theorem B */
export function subtractExactly({ values, lost }: ExactSums, at: number, amount: number): void {
  const before = values[at] as number
  const after = before - amount
  const taken = before - after
  const error = before - (after + taken) + (taken - amount)
  values[at] = after
  lost[at] = (lost[at] as number) + error
}

/** Adds what was lost back to the sums. */
export function settleSums({ values, lost }: ExactSums): void {
  for (let at = 0; at < values.length; at++)
    values[at] = (values[at] as number) + (lost[at] as number)
}
