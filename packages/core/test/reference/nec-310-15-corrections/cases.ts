/** Second transcription: upper end of the band [°C], then 60, 75 and 90 °C. */
export const AMBIENT = [
  { upTo: 10, factors: [1.29, 1.2, 1.15] },
  { upTo: 15, factors: [1.22, 1.15, 1.12] },
  { upTo: 20, factors: [1.15, 1.11, 1.08] },
  { upTo: 25, factors: [1.08, 1.05, 1.04] },
  { upTo: 30, factors: [1.0, 1.0, 1.0] },
  { upTo: 35, factors: [0.91, 0.94, 0.96] },
  { upTo: 40, factors: [0.82, 0.88, 0.91] },
  { upTo: 45, factors: [0.71, 0.82, 0.87] },
  { upTo: 50, factors: [0.58, 0.75, 0.82] },
  { upTo: 55, factors: [0.41, 0.67, 0.76] },
  { upTo: 60, factors: [undefined, 0.58, 0.71] },
  { upTo: 65, factors: [undefined, 0.47, 0.65] },
] as const

/** Above 65 °C, other pages. */
export const HOT = [
  { upTo: 70, factors: [undefined, 0.33, 0.58] },
  { upTo: 75, factors: [undefined, undefined, 0.5] },
  { upTo: 80, factors: [undefined, undefined, 0.41] },
  { upTo: 85, factors: [undefined, undefined, 0.29] },
] as const

/** The other table of the same section, based on 40 °C: not for table 310.16. */
export const BASED_ON_40 = [
  { upTo: 10, factors: [1.58, 1.36, 1.26] },
  { upTo: 15, factors: [1.5, 1.31, 1.22] },
  { upTo: 20, factors: [1.41, 1.25, 1.18] },
  { upTo: 25, factors: [1.32, 1.2, 1.14] },
  { upTo: 30, factors: [1.22, 1.13, 1.1] },
  { upTo: 35, factors: [1.12, 1.07, 1.05] },
  { upTo: 40, factors: [1.0, 1.0, 1.0] },
  { upTo: 45, factors: [0.87, 0.93, 0.95] },
  { upTo: 50, factors: [0.71, 0.85, 0.89] },
  { upTo: 55, factors: [0.5, 0.76, 0.84] },
  { upTo: 60, factors: [undefined, 0.65, 0.77] },
  { upTo: 65, factors: [undefined, 0.53, 0.71] },
  { upTo: 70, factors: [undefined, 0.38, 0.63] },
  { upTo: 75, factors: [undefined, undefined, 0.55] },
  { upTo: 80, factors: [undefined, undefined, 0.45] },
] as const

/** Second transcription: from and to, percent. */
export const NUMBER = [
  { from: 4, to: 6, percent: 80 },
  { from: 7, to: 9, percent: 70 },
  { from: 10, to: 20, percent: 50 },
  { from: 21, to: 30, percent: 45 },
  { from: 31, to: 40, percent: 40 },
  { from: 41, to: 400, percent: 35 },
] as const

/** A question on a forum: 12 AWG, 90 °C, 55 °C of air; 0.84 of the other table is the wrong answer. */
export const RACK = {
  size: '12 AWG',
  ambient: 55,
  factor: 0.76,
  wrong: 0.84,
  carries: 22.8,
} as const

/** 75 A · 0.91 · 0.8; the terminals would allow 65 A. */
export const COMBINED = { ambient: 40, loaded: 4, carries: 54.6, terminals: 65 } as const
