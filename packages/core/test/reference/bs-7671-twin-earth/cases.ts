interface Printed {
  readonly column: 'C' | '100' | '103'
  readonly amps: readonly number[]
}

export const SIZES = [1, 1.5, 2.5, 4, 6, 10, 16] as const

/** The second transcription, amps by size. */
export const SECOND: readonly Printed[] = [
  { column: 'C', amps: [16, 20, 27, 37, 47, 64, 85] },
  { column: '100', amps: [13, 16, 21, 27, 34, 45, 57] },
  { column: '103', amps: [8, 10, 13.5, 17.5, 23.5, 32, 42.5] },
]

/** Printed by one page under this table's name, and of another table. */
export const MISNAMED = [15.5, 20, 27, 37, 47, 65, 87] as const
