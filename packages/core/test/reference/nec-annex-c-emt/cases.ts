/** Trade sizes of the counts below. */
export const TRADE = ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2'] as const

export const THWN = [
  { size: '14 AWG', counts: [12, 22, 35, 61, 84, 138] },
  { size: '12 AWG', counts: [9, 16, 26, 45, 61, 101] },
  { size: '10 AWG', counts: [5, 10, 16, 28, 38, 63] },
  { size: '8 AWG', counts: [3, 6, 9, 16, 22, 36] },
  { size: '6 AWG', counts: [2, 4, 7, 12, 16, 26] },
  { size: '4 AWG', counts: [1, 2, 4, 7, 10, 16] },
  { size: '3 AWG', counts: [1, 1, 3, 6, 8, 13] },
  { size: '2 AWG', counts: [1, 1, 3, 5, 7, 11] },
  { size: '1 AWG', counts: [1, 1, 1, 4, 5, 8] },
  { size: '1/0 AWG', counts: [1, 1, 1, 3, 4, 7] },
  { size: '2/0 AWG', counts: [0, 1, 1, 2, 3, 6] },
  { size: '3/0 AWG', counts: [0, 1, 1, 1, 3, 5] },
] as const

/** Type THW with its area [in²]: another insulation, the same conduit and the same rounding. */
export const THW = [
  { size: '14 AWG', area: 0.0139, counts: [8, 15, 25, 43, 58, 96] },
  { size: '12 AWG', area: 0.0181, counts: [6, 11, 19, 33, 45, 74] },
  { size: '10 AWG', area: 0.0243, counts: [5, 8, 14, 24, 33, 55] },
  { size: '8 AWG', area: 0.0437, counts: [2, 5, 8, 13, 18, 30] },
] as const

/** The one cell of these that the rule gives lower: 0.598 / 0.0507 is 11.795, just under 11.8. */
export const EXCEPTION = {
  size: '6 AWG',
  tradeSize: '1-1/4',
  printed: 12,
  quotient: 11.795,
} as const
