/** 4500 + 4500 + 17 000 VA, then a tub; 8000 + 40 % of the rest; ours. */
export const HOUSE = { area: 1500, circuits: 3, plates: [12_000, 5000] } as const
export const TUB = 11_000
export const EXISTING = 15_200
export const WITH_TUB = 19_600

/** Part (B): cooling of 5 kVA at 100 %. */
export const COOLING = 5000

/** By the form of a county. */
export const FORM = { first: 8000, restPercent: 40 } as const
