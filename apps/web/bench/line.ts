/** What is measured: one figure with the goal that it is held to. */
export interface Line {
  readonly name: string
  readonly unit: string
  readonly goal: Goal
  /** Measures afresh. What it opens, it closes. */
  readonly measure: (bench: Bench) => Promise<number>
}

/** What every line has at hand. */
export interface Bench {
  /** The folder of the built app. */
  readonly bundle: string
}

export interface Goal {
  readonly text: string
  readonly holds: (value: number) => boolean
}

export const atMost = (limit: number): Goal => ({
  text: `≤ ${limit}`,
  holds: value => value <= limit,
})

export const atLeast = (limit: number): Goal => ({
  text: `≥ ${limit}`,
  holds: value => value >= limit,
})

/** For a figure that puts others into proportion. */
export const stated: Goal = { text: 'stated', holds: () => true }

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN
}

/** The results of so many rounds, one after the other. */
export async function rounds<T>(count: number, once: () => Promise<T>): Promise<readonly T[]> {
  const results: T[] = []
  for (let round = 0; round < count; round++) results.push(await once())
  return results
}
