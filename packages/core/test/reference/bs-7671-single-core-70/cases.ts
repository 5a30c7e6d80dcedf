interface Printed {
  readonly column: 'A 2' | 'A 3' | 'B 2' | 'B 3' | 'C 2' | 'C 3'
  readonly sizes: readonly number[]
  readonly amps: readonly number[]
}

const SIZES = [1, 1.5, 2.5, 4, 6, 10, 16, 25, 35]

/** The second transcription, amps by size, as printed there. */
export const SECOND: readonly Printed[] = [
  { column: 'C 2', sizes: SIZES, amps: [15.5, 20, 27, 37, 47, 65, 87, 114, 141] },
  { column: 'C 3', sizes: SIZES, amps: [14, 18, 25, 33, 43, 59, 79, 104, 129] },
  { column: 'B 2', sizes: SIZES, amps: [13.5, 17.5, 24, 32, 41, 57, 76, 101, 125] },
  { column: 'B 3', sizes: SIZES, amps: [12, 15.5, 21, 28, 36, 50, 68, 89, 110] },
]

/** Method A1 of the international table, which method A is. */
export const METHOD_A1: readonly Printed[] = [
  { column: 'A 2', sizes: SIZES.slice(1), amps: [14.5, 19.5, 26, 34, 46, 61, 80, 99] },
  { column: 'A 3', sizes: SIZES.slice(1), amps: [13.5, 18, 24, 31, 42, 56, 73, 89] },
]

/** One row as a discussion of two books gives it. */
export const ROW_25 = [
  { column: 'B 2', carries: 101 },
  { column: 'B 3', carries: 89 },
  { column: 'C 2', carries: 114 },
  { column: 'C 3', carries: 104 },
] as const
