/** Breaker [A] and the smallest earth, as printed. */
export const PRINTED = [
  { breaker: 15, earth: '14 AWG' },
  { breaker: 20, earth: '12 AWG' },
  { breaker: 30, earth: '10 AWG' },
  { breaker: 40, earth: '10 AWG' },
  { breaker: 50, earth: '10 AWG' },
  { breaker: 60, earth: '10 AWG' },
  { breaker: 70, earth: '8 AWG' },
  { breaker: 100, earth: '8 AWG' },
  { breaker: 125, earth: '6 AWG' },
  { breaker: 200, earth: '6 AWG' },
] as const
