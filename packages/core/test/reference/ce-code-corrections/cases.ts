/** The second page: air [°C], then 60, 75 and 90 °C. */
export const AMBIENT = [
  { celsius: 35, factors: [0.91, 0.94, 0.96] },
  { celsius: 40, factors: [0.82, 0.88, 0.91] },
  { celsius: 45, factors: [0.71, 0.82, 0.87] },
  { celsius: 50, factors: [0.58, 0.75, 0.82] },
  { celsius: 55, factors: [0.41, 0.67, 0.76] },
  { celsius: 60, factors: [undefined, 0.58, 0.71] },
  { celsius: 65, factors: [undefined, 0.47, 0.65] },
  { celsius: 70, factors: [undefined, 0.33, 0.58] },
  { celsius: 75, factors: [undefined, undefined, 0.5] },
  { celsius: 80, factors: [undefined, undefined, 0.41] },
] as const

/** The second page: conductors from and to. */
export const NUMBER = [
  { from: 1, to: 3, factor: 1 },
  { from: 4, to: 6, factor: 0.8 },
  { from: 7, to: 24, factor: 0.7 },
  { from: 25, to: 42, factor: 0.6 },
  { from: 43, to: 400, factor: 0.5 },
] as const

/** The part of table 8 that a page prints. */
export const FILL = { from: 3, percent: 40 } as const
