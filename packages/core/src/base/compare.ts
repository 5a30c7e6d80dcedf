const SLACK = 1e-9 // relative: exactly 80 % passes on every machine

/** The one comparison of a value with an upper limit. */
export const atMost = (value: number, limit: number): boolean =>
  value <= limit + SLACK * Math.abs(limit)

/** The one comparison of a value with a lower limit. */
export const atLeast = (value: number, limit: number): boolean =>
  value >= limit - SLACK * Math.abs(limit)
