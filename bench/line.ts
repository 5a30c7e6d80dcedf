export interface Goal {
  readonly text: string
  readonly holds: (value: number) => boolean
}

export const atMostGoal = (limit: number): Goal => ({
  text: `≤ ${limit}`,
  holds: value => value <= limit,
})
export const atLeastGoal = (limit: number): Goal => ({
  text: `≥ ${limit}`,
  holds: value => value >= limit,
})
export const STATED: Goal = { text: 'stated', holds: () => true }

const digits = (value: number): string => (value >= 100 ? value.toFixed(0) : value.toPrecision(3))

/** One line a figure: name, value, unit, goal, whether it holds. Returns whether it holds. */
export function line(name: string, value: number, unit: string, goal: Goal): boolean {
  const holds = goal.holds(value)
  const verdict = goal === STATED ? 'stated' : holds ? 'holds' : 'falls short'
  console.log(
    [name.padEnd(58), digits(value).padStart(8), unit.padEnd(8), goal.text.padEnd(8), verdict].join(
      ' ',
    ),
  )
  return holds
}

/** The median time of a call [s], over so many rounds of so many calls. */
export function medianSeconds(rounds: number, calls: number, work: () => void): number {
  const times: number[] = []
  for (let round = 0; round < rounds; round++) {
    const start = process.hrtime.bigint()
    for (let call = 0; call < calls; call++) work()
    times.push(Number(process.hrtime.bigint() - start) / 1e9 / calls)
  }
  times.sort((a, b) => a - b)
  return times[Math.floor(rounds / 2)] ?? Number.NaN
}

/** The exponent p of time ∝ size^p, by least squares on logarithms: 1 is linear. */
export function growth(points: readonly (readonly [size: number, seconds: number])[]): number {
  const logs = points.map(([size, seconds]) => [Math.log(size), Math.log(seconds)] as const)
  const mean = (pick: (each: readonly [number, number]) => number) =>
    logs.reduce((sum, each) => sum + pick(each), 0) / logs.length
  const [x, y] = [mean(each => each[0]), mean(each => each[1])]
  const across = logs.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0)
  const along = logs.reduce((sum, [a]) => sum + (a - x) ** 2, 0)
  return across / along
}
