/** A stream of numbers from 0 to 1 that one seed fixes. */
export interface Random {
  /** At least 0, below 1. */
  readonly next: () => number
  /** A whole number from 0 to below the count. */
  readonly below: (count: number) => number
  /** Evenly spread over the decades from one value to another. */
  readonly decades: (low: number, high: number) => number
  readonly pick: <Value>(values: readonly Value[]) => Value
}

/** The mulberry32 generator. */
export function seeded(seed: number): Random {
  let state = seed >>> 0
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
  const below = (count: number): number => Math.floor(next() * count)
  return {
    next,
    below,
    decades: (low, high) => low * (high / low) ** next(),
    pick: <Value>(values: readonly Value[]) => values[below(values.length)] as Value,
  }
}
