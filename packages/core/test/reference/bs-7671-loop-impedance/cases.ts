export const RATINGS = [6, 10, 16, 20, 25, 32, 40, 50, 63] as const

/** Ohms by rating, as the second pages print them; D ends at 50 A. */
export const SECOND = [
  { column: 'B', seconds: 0.4, ohms: [7.28, 4.37, 2.73, 2.19, 1.75, 1.37, 1.09, 0.87, 0.69] },
  { column: 'B', seconds: 5, ohms: [7.28, 4.37, 2.73, 2.19, 1.75, 1.37, 1.09, 0.87, 0.69] },
  { column: 'C', seconds: 0.4, ohms: [3.64, 2.19, 1.37, 1.09, 0.87, 0.68, 0.55, 0.44, 0.35] },
  { column: 'C', seconds: 5, ohms: [3.64, 2.19, 1.37, 1.09, 0.87, 0.68, 0.55, 0.44, 0.35] },
  { column: 'D', seconds: 0.4, ohms: [1.82, 1.09, 0.68, 0.55, 0.44, 0.34, 0.27, 0.22] },
] as const

/** What may be measured cold behind B, as printed. */
export const COLD_B = [5.82, 3.5, 2.18, 1.75, 1.4, 1.1, 0.87, 0.7, 0.55] as const

/** The run of one page, and what it becomes with the cable that it names. */
export const RUN = {
  loop: 1.09,
  external: 0.35,
  wrong: 14.82,
  printed: 35.1,
  metres: 26.8,
} as const

/** Line and protective conductor together [mΩ/m at 20 °C], as printed. */
export const TOGETHER = [
  { line: 1, protective: 1, milliohms: 36.2 },
  { line: 1.5, protective: 1, milliohms: 30.2 },
  { line: 2.5, protective: 1.5, milliohms: 19.51 },
  { line: 4, protective: 1.5, milliohms: 16.71 },
  { line: 6, protective: 2.5, milliohms: 10.49 },
  { line: 10, protective: 4, milliohms: 6.44 },
  { line: 16, protective: 6, milliohms: 4.23 },
] as const

/** Times at 230 V, as printed. */
export const TIMES = [
  { earthing: 'TN', serves: 'with sockets', rating: 32, seconds: 0.4 },
  { earthing: 'TN', serves: 'with sockets', rating: 63, seconds: 0.4 },
  { earthing: 'TN', serves: 'with sockets', rating: 64, seconds: 5 },
  { earthing: 'TN', serves: 'fixed equipment only', rating: 32, seconds: 0.4 },
  { earthing: 'TN', serves: 'fixed equipment only', rating: 40, seconds: 5 },
  { earthing: 'TT', serves: 'fixed equipment only', rating: 32, seconds: 0.2 },
  { earthing: 'TT', serves: 'fixed equipment only', rating: 40, seconds: 1 },
] as const
