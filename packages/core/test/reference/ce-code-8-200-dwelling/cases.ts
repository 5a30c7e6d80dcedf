/** Basic load by area [m², W]: two pages. */
export const BASIC = [
  { area: 60, watts: 5000 },
  { area: 90, watts: 5000 },
  { area: 90.5, watts: 6000 },
  { area: 100, watts: 6000 },
  { area: 180, watts: 6000 },
  { area: 269, watts: 7000 },
  { area: 271, watts: 8000 },
] as const

/** A range by its rating [W]. */
export const RANGES = [
  { rating: 0, watts: 0 },
  { rating: 8000, watts: 6000 },
  { rating: 11_000, watts: 6000 },
  { rating: 12_000, watts: 6000 },
  { rating: 14_000, watts: 6800 },
] as const

/** Others above 1500 W [W]. */
export const OTHERS = [
  { others: [5000, 4500], range: 11_000, watts: 2375 },
  { others: [5000, 4500], range: 0, watts: 6875 },
  { others: [5000], range: 0, watts: 5000 },
  { others: [1500, 1200], range: 11_000, watts: 0 },
  { others: [1501], range: 11_000, watts: 375.25 },
] as const

/** The worked example; its sum, and the current that the page prints. */
export const EXAMPLE = {
  dwelling: {
    area: 269,
    floorArea: 269,
    heatingOrCooling: 6000,
    range: 11_000,
    whole: [8000, 7200],
    others: [5000, 4500],
  },
  sum: 36_575,
  amps: 152.4,
  printedAmps: 173.1,
} as const

/** The least of the rule [W], by the floor area [m²]. */
export const LEAST = [
  { floorArea: 79.9, watts: 14_400 },
  { floorArea: 80, watts: 24_000 },
] as const
