const KELVINS = [10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60] as const

/** Air, from the second transcription: 70 °C, then 90 °C. */
export const AIR = KELVINS.map((celsius, at) => ({
  celsius,
  thermoplastic: [1.22, 1.17, 1.12, 1.06, 1.0, 0.94, 0.87, 0.79, 0.71, 0.61, 0.5][at],
  thermosetting: [1.15, 1.12, 1.08, 1.04, 1.0, 0.96, 0.91, 0.87, 0.82, 0.76, 0.71][at],
}))

/** Air above 60 °C, 90 °C cables only. */
export const HOT_AIR = [
  { celsius: 65, thermosetting: 0.65 },
  { celsius: 70, thermosetting: 0.58 },
  { celsius: 75, thermosetting: 0.5 },
  { celsius: 80, thermosetting: 0.41 },
] as const

/** Ground, from the second transcription. */
export const GROUND = KELVINS.map((celsius, at) => ({
  celsius,
  thermoplastic: [1.1, 1.05, 1.0, 0.95, 0.89, 0.84, 0.77, 0.71, 0.63, 0.55, 0.45][at],
  thermosetting: [1.07, 1.04, 1.0, 0.96, 0.93, 0.89, 0.85, 0.8, 0.76, 0.71, 0.65][at],
}))

export const COUNTS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 12, 16, 20] as const

/** Groups, from the second transcription; nothing is printed above nine in a layer. */
export const GROUPS = {
  bunched: [1, 0.8, 0.7, 0.65, 0.6, 0.57, 0.54, 0.52, 0.5, 0.45, 0.41, 0.38],
  wall: [1, 0.85, 0.79, 0.75, 0.73, 0.72, 0.72, 0.71, 0.7],
  ceiling: [0.95, 0.81, 0.72, 0.68, 0.66, 0.64, 0.63, 0.62, 0.61],
  tray: [1, 0.88, 0.82, 0.77, 0.75, 0.73, 0.73, 0.72, 0.72],
  ladder: [1, 0.87, 0.82, 0.8, 0.8, 0.79, 0.79, 0.78, 0.78],
} as const
