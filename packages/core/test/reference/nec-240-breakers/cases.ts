/** The second page, standard ratings [A]. */
export const RATINGS = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350,
  400, 450, 500, 600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
] as const

/** Fuses only, edition of 2017; 601 A is gone from 2023. */
export const FUSES_2017 = [1, 3, 6, 10, 601] as const

/** Not made, and the next that is. */
export const NOT_MADE = [
  { amps: 55, next: 60 },
  { amps: 65, next: 70 },
  { amps: 85, next: 90 },
  { amps: 120, next: 125 },
] as const

/** Ampacity, and the greatest breaker before it. */
export const NEXT_SIZE_UP = [
  { carries: 55, breaker: 60 },
  { carries: 65, breaker: 70 },
  { carries: 85, breaker: 90 },
  { carries: 54.6, breaker: 60 },
  { carries: 115, breaker: 125 },
] as const

/** Second transcription of 240.4(D). */
export const SMALL = [
  { metal: 'copper', size: '14 AWG', breaker: 15 },
  { metal: 'aluminium', size: '12 AWG', breaker: 15 },
  { metal: 'copper', size: '12 AWG', breaker: 20 },
  { metal: 'aluminium', size: '10 AWG', breaker: 25 },
  { metal: 'copper', size: '10 AWG', breaker: 30 },
] as const
