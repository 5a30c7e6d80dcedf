interface Printed {
  readonly column: 'A 2' | 'A 3' | 'B 2' | 'B 3' | 'C 2' | 'C 3' | 'E 2' | 'E 3'
  readonly sizes: readonly number[]
  readonly amps: readonly number[]
}

const SIZES = [1, 1.5, 2.5, 4, 6, 10, 16]

/** The second transcription: methods 1, 2 and 3 there are A, B and C here. */
export const SECOND: readonly Printed[] = [
  { column: 'A 2', sizes: SIZES, amps: [11, 14, 18.5, 25, 32, 43, 57] },
  { column: 'A 3', sizes: SIZES, amps: [10, 13, 17.5, 23, 29, 39, 52] },
  { column: 'B 2', sizes: SIZES, amps: [13, 16.5, 23, 30, 38, 52, 69] },
  { column: 'B 3', sizes: SIZES, amps: [11.5, 15, 20, 27, 34, 46, 62] },
  { column: 'C 2', sizes: SIZES, amps: [15, 19.5, 27, 36, 46, 63, 85] },
  { column: 'C 3', sizes: SIZES, amps: [13.5, 17.5, 24, 32, 41, 57, 76] },
  { column: 'E 2', sizes: SIZES.slice(1), amps: [22, 30, 40, 51, 70, 94] },
  { column: 'E 3', sizes: SIZES.slice(1), amps: [18.5, 25, 34, 43, 60, 80] },
]
