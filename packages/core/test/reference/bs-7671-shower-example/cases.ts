export const SHOWER = {
  device: 32,
  celsius: 35,
  factor: 0.94,
  needed: 34.04,
  chosen: { mm2: 10, carries: 46 },
  rejected: { mm2: 6, carries: 34 },
} as const

/** A rating, its factor, and what is left of it [A]. */
export const FACTORED = { tabulated: 24, factor: 0.77, left: 18.48, printed: 18.5 } as const
