/** The second page: breaker not over, copper, aluminium. */
export const SECOND_PAGE = [
  { upTo: 15, copper: '14 AWG', aluminium: '12 AWG' },
  { upTo: 20, copper: '12 AWG', aluminium: '10 AWG' },
  { upTo: 60, copper: '10 AWG', aluminium: '8 AWG' },
  { upTo: 100, copper: '8 AWG', aluminium: '6 AWG' },
  { upTo: 200, copper: '6 AWG', aluminium: '4 AWG' },
  { upTo: 300, copper: '4 AWG', aluminium: '2 AWG' },
  { upTo: 400, copper: '3 AWG', aluminium: '1 AWG' },
  { upTo: 500, copper: '2 AWG', aluminium: '1/0 AWG' },
  { upTo: 600, copper: '1 AWG', aluminium: '2/0 AWG' },
  { upTo: 800, copper: '1/0 AWG', aluminium: '3/0 AWG' },
  { upTo: 1000, copper: '2/0 AWG', aluminium: '4/0 AWG' },
  { upTo: 1200, copper: '3/0 AWG', aluminium: '250 kcmil' },
] as const

/** The third page, copper: the ends of its bands, which begin at a standard rating. */
export const BANDS = [
  { from: 30, to: 60, copper: '10 AWG' },
  { from: 70, to: 100, copper: '8 AWG' },
  { from: 110, to: 200, copper: '6 AWG' },
  { from: 225, to: 300, copper: '4 AWG' },
  { from: 350, to: 400, copper: '3 AWG' },
  { from: 450, to: 500, copper: '2 AWG' },
  { from: 600, to: 600, copper: '1 AWG' },
  { from: 700, to: 800, copper: '1/0 AWG' },
] as const

/** Legs made larger, copper: what they would have been, what they are, and the earth. */
export const LARGER_LEGS = [
  {
    breaker: 300,
    needed: '250 kcmil',
    chosen: '350 kcmil',
    earth: '2 AWG',
    from: 'training notes',
  },
  { breaker: 20, needed: '12 AWG', chosen: '1/0 AWG', earth: '1/0 AWG', from: 'engineering page' },
  { breaker: 50, needed: '8 AWG', chosen: '1 AWG', earth: '3 AWG', from: 'engineering page' },
  {
    breaker: 200,
    needed: '3/0 AWG',
    chosen: '500 kcmil',
    earth: '1 AWG',
    from: 'engineering page',
  },
  { breaker: 20, needed: '12 AWG', chosen: '6 AWG', earth: '6 AWG', from: 'ours' },
  { breaker: 50, needed: '6 AWG', chosen: '4 AWG', earth: '8 AWG', from: 'ours' },
  { breaker: 60, needed: '6 AWG', chosen: '6 AWG', earth: '10 AWG', from: 'ours' },
] as const

/** Where the printed areas fall short of the proportion by their rounding: ratio, area asked [cmil]. */
export const EDGES = [
  {
    needed: '6 AWG',
    chosen: '4 AWG',
    ratio: 1.5907,
    asked: 16_511,
    earth: '8 AWG',
    strict: '6 AWG',
  },
  {
    needed: '8 AWG',
    chosen: '4 AWG',
    ratio: 2.5282,
    asked: 26_242,
    earth: '6 AWG',
    strict: '4 AWG',
  },
] as const
