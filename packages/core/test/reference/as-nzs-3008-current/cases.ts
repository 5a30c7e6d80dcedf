export const SIZES = [1, 1.5, 2.5, 4, 6, 10, 16, 25] as const

/** Table 4, from the second transcription. */
export const TABLE_4_SECOND = {
  enclosed: [13, 18, 24, 32, 41, 54, 70, 94],
  'partly insulated': [11, 14, 20, 25, 33, 44, 56, 75],
  'wholly insulated': [6, 8, 12, 16, 20, 27, 36, 48],
} as const

/** Table 5 enclosed, from 1.5 mm². */
export const TABLE_5_SECOND = [21, 30, 38, 47, 65, 84, 113] as const

/** Table 10, 1 to 16 mm². */
export const TABLE_10_SECOND = {
  enclosed: [13, 16, 23, 30, 39, 52, 68],
  'flexible, spaced': [16, 20, 26, 35, 45, 63, 83],
  'flexible, enclosed': [13, 17, 23, 29, 38, 51, 68],
} as const

/** Enclosed, as some calculators print it under this book's name: for 30 °C, another book's [A]. */
export const MISNAMED = { mm2: 1.5, carries: 17.5 } as const
