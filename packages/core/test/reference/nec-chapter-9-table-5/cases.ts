/** Second transcription: area [in²] and, from the older edition, diameter [in]. */
export const SECOND_PAGE = [
  { size: '14 AWG', area: 0.0097, diameter: 0.111 },
  { size: '12 AWG', area: 0.0133, diameter: 0.13 },
  { size: '10 AWG', area: 0.0211, diameter: 0.164 },
  { size: '8 AWG', area: 0.0366, diameter: 0.216 },
  { size: '6 AWG', area: 0.0507, diameter: 0.254 },
  { size: '4 AWG', area: 0.0824, diameter: 0.324 },
  { size: '3 AWG', area: 0.0973, diameter: 0.352 },
  { size: '2 AWG', area: 0.1158, diameter: 0.384 },
  { size: '1 AWG', area: 0.1562, diameter: 0.446 },
  { size: '1/0 AWG', area: 0.1855, diameter: 0.486 },
  { size: '2/0 AWG', area: 0.2223, diameter: 0.532 },
  { size: '3/0 AWG', area: 0.2679, diameter: 0.584 },
  { size: '4/0 AWG', area: 0.3237, diameter: 0.642 },
] as const

/** As a forum gives it. */
export const WRONG = { size: '4 AWG', area: 0.1293 } as const

/** Three of 12, four of 10 and eight of 8 AWG: the sum that the institute works out [in²]. */
export const WORKED = {
  sizes: ['12 AWG', '10 AWG', '8 AWG'],
  counts: [3, 4, 8],
  sum: 0.4171,
} as const
