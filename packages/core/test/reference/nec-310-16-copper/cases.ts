/** Amps by size, 30 °C ambient, three conductors at most, as printed. */
export const PRINTED = [
  { size: '14 AWG', carries: 20 },
  { size: '12 AWG', carries: 25 },
  { size: '10 AWG', carries: 35 },
  { size: '8 AWG', carries: 50 },
  { size: '6 AWG', carries: 65 },
  { size: '4 AWG', carries: 85 },
  { size: '3 AWG', carries: 100 },
  { size: '2 AWG', carries: 115 },
  { size: '1 AWG', carries: 130 },
] as const

/** Greatest breaker of the small ones, 240.4(D). */
export const SMALL = [
  { size: '14 AWG', breaker: 15 },
  { size: '12 AWG', breaker: 20 },
  { size: '10 AWG', breaker: 30 },
] as const

/** Standard ratings, 240.6(A), as far as the table goes. */
export const STANDARD = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150,
] as const
