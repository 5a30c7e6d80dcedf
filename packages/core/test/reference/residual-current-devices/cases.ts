/** Longest time of class A by the published formula [s]. */
export const CLASS_A = [
  { milliamps: 6, seconds: 5.5939 },
  { milliamps: 8, seconds: 3.7073 },
  { milliamps: 10, seconds: 2.6945 },
  { milliamps: 15, seconds: 1.5089 },
  { milliamps: 20, seconds: 1.0 },
  { milliamps: 30, seconds: 0.56 },
  { milliamps: 50, seconds: 0.2697 },
  { milliamps: 100, seconds: 0.1001 },
  { milliamps: 150, seconds: 0.0561 },
  { milliamps: 264, seconds: 0.025 },
] as const

/** What each kind trips at [mA]. */
export const TRIPS = [
  { device: 'class A', from: 6 },
  { device: 'class B', from: 20 },
  { device: 'equipment', from: 30 },
  { device: '30 mA', from: 30 },
] as const

/** Two devices at the same currents: derived from the bands above. */
export const SIDE_BY_SIDE = [
  { milliamps: 3.9, classA: 'holds', thirty: 'holds' },
  { milliamps: 5, classA: 'may trip', thirty: 'holds' },
  { milliamps: 10, classA: 'trips', thirty: 'holds' },
  { milliamps: 20, classA: 'trips', thirty: 'may trip' },
  { milliamps: 30, classA: 'trips', thirty: 'trips' },
  { milliamps: 60, classA: 'trips', thirty: 'trips' },
] as const

/** Break times [ms], as the second page prints them. */
export const BREAKS = [
  { multiple: 1, column: 'general', milliseconds: 300 },
  { multiple: 5, column: 'general', milliseconds: 40 },
  { multiple: 1, column: 'selective', milliseconds: 500 },
  { multiple: 5, column: 'selective', milliseconds: 150 },
  { multiple: 1, column: 'selective, at least', milliseconds: 130 },
  { multiple: 5, column: 'selective, at least', milliseconds: 50 },
] as const

/** At twice the rating, which one page has. */
export const TWICE = { general: 150, selective: 200, waits: 60, instrument: 50 } as const
