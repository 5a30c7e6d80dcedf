interface Printed {
  readonly column: 'C 2' | 'C 3' | 'D 2' | 'D 3' | 'E 2' | 'E 3'
  readonly amps: readonly number[]
}

export const SIZES = [1.5, 2.5, 4, 6, 10, 16, 25, 35] as const

/** The second transcription, amps by size. */
export const SECOND: readonly Printed[] = [
  { column: 'C 2', amps: [27, 36, 49, 62, 85, 110, 146, 180] },
  { column: 'C 3', amps: [23, 31, 42, 53, 73, 94, 124, 154] },
  { column: 'E 2', amps: [29, 39, 52, 66, 90, 115, 152, 188] },
  { column: 'E 3', amps: [25, 33, 44, 56, 78, 99, 131, 162] },
  { column: 'D 2', amps: [25, 33, 46, 53, 71, 91, 116, 139] },
  { column: 'D 3', amps: [21, 28, 36, 44, 58, 75, 96, 115] },
]

/** The one cell in which the pages differ: the code keeps the lesser. */
export const CONFLICT = { column: 'D 2', mm2: 4, lesser: 43, greater: 46 } as const

/**
 * Above which operating temperature of a terminal the second page sends back to table 4D4A [°C].
 */
export const TERMINALS = 70
