interface Printed {
  readonly column: 'single-phase' | 'three-phase'
  readonly sizes: readonly number[]
  readonly millivolts: readonly number[]
}

/** Second transcription, 70 °C; at 25 and 35 mm² the figure for direct current, which is r. */
export const SECOND_70: readonly Printed[] = [
  {
    column: 'single-phase',
    sizes: [1, 1.5, 2.5, 4, 6, 10, 16],
    millivolts: [44, 29, 18, 11, 7.3, 4.4, 2.8],
  },
  {
    column: 'three-phase',
    sizes: [1, 1.5, 2.5, 4, 6, 10, 16],
    millivolts: [38, 25, 15, 9.5, 6.4, 3.8, 2.4],
  },
]

/** Second transcription, 90 °C. */
export const SECOND_90: readonly Printed[] = [
  {
    column: 'single-phase',
    sizes: [1.5, 2.5, 4, 6, 10, 16],
    millivolts: [31, 19, 12, 7.9, 4.7, 2.9],
  },
  { column: 'three-phase', sizes: [1.5, 2.5, 4, 6, 10, 16], millivolts: [27, 16, 10, 6.8, 4, 2.5] },
  { column: 'single-phase', sizes: [25, 35], millivolts: [1.9, 1.35] },
  { column: 'three-phase', sizes: [25, 35], millivolts: [1.65, 1.15] },
]

/** Direct current, which has no reactance: 70 °C. */
export const DIRECT_70 = [
  { mm2: 25, r: 1.75 },
  { mm2: 35, r: 1.25 },
] as const

/** The cell in which two pages differ. */
export const CONFLICT_35 = { r: 1.365, share: 0.012 } as const

/** Limits in volts, as printed: 3 or 5 % of 230 and of 400 V. */
export const VOLTS = [
  { supply: 'public', use: 'lighting', nominal: 230, volts: 6.9 },
  { supply: 'public', use: 'other', nominal: 230, volts: 11.5 },
  { supply: 'public', use: 'lighting', nominal: 400, volts: 12 },
  { supply: 'public', use: 'other', nominal: 400, volts: 20 },
  { supply: 'private', use: 'lighting', nominal: 230, volts: 13.8 },
  { supply: 'private', use: 'other', nominal: 230, volts: 18.4 },
] as const
