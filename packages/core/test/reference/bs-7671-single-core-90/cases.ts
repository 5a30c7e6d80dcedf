interface Printed {
  readonly column: 'A 2' | 'A 3' | 'B 2' | 'B 3' | 'C 2' | 'C 3'
  readonly sizes: readonly number[]
  readonly amps: readonly number[]
}

const MIDDLE = [1.5, 2.5, 4, 6, 10, 16]
const ENDS = [1, 25, 35]

/** The second transcription, and a third for what it leaves out. */
export const SECOND: readonly Printed[] = [
  { column: 'B 2', sizes: MIDDLE, amps: [23, 31, 42, 54, 75, 100] },
  { column: 'B 3', sizes: MIDDLE, amps: [20, 28, 37, 48, 66, 88] },
  { column: 'C 2', sizes: MIDDLE, amps: [25, 34, 46, 59, 81, 109] },
  { column: 'C 3', sizes: MIDDLE, amps: [23, 31, 41, 54, 74, 99] },
  { column: 'A 2', sizes: MIDDLE, amps: [19, 26, 35, 45, 61, 81] },
  { column: 'A 3', sizes: MIDDLE, amps: [17, 23, 31, 40, 54, 73] },
  { column: 'A 2', sizes: ENDS, amps: [14, 106, 131] },
  { column: 'A 3', sizes: ENDS, amps: [13, 95, 117] },
  { column: 'B 2', sizes: ENDS, amps: [17, 133, 164] },
  { column: 'B 3', sizes: ENDS, amps: [15, 117, 144] },
  { column: 'C 2', sizes: ENDS, amps: [19, 143, 176] },
  { column: 'C 3', sizes: ENDS, amps: [17.5, 130, 161] },
]
