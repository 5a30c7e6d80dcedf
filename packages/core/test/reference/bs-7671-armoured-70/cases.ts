const SIZES = [1.5, 2.5, 4, 6, 10, 16, 25, 35]

/** In the ground, as the harmonised document prints its column D1. */
export const GROUND = [
  { column: 'D 2', sizes: SIZES, amps: [22, 29, 37, 46, 60, 78, 99, 119] },
  { column: 'D 3', sizes: SIZES, amps: [18, 24, 30, 38, 50, 64, 82, 98] },
] as const
