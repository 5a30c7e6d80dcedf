/** Least earth by active [mm²], from the second transcription. */
export const EARTHS = [
  { active: 1, earth: 1 },
  { active: 1.5, earth: 1.5 },
  { active: 2.5, earth: 2.5 },
  { active: 4, earth: 2.5 },
  { active: 6, earth: 2.5 },
  { active: 10, earth: 4 },
  { active: 16, earth: 6 },
  { active: 25, earth: 6 },
  { active: 35, earth: 10 },
] as const

/** Metal by a spa [m]: whether it is bonded, by the figures of the page. */
export const METAL = [
  { what: 'a handrail at the edge', longest: 0.9, level: 0, up: 0.8, bonded: true },
  { what: 'a gutter just within reach', longest: 6, level: 1.25, up: 2.5, bonded: true },
  { what: 'a tap of 150 mm', longest: 0.15, level: 1, up: 0.5, bonded: true },
  { what: 'a hook of 100 mm', longest: 0.1, level: 0.2, up: 1, bonded: false },
  { what: 'a fence beyond reach', longest: 3, level: 1.26, up: 0, bonded: false },
  { what: 'a lamp post above reach', longest: 4, level: 0.5, up: 2.51, bonded: false },
] as const

/** Heaters [A] and what they count for, by 75, 75 and 25 %. */
export const DEMAND = [
  { spas: [24], pools: [], counts: 18 },
  { spas: [20, 12], pools: [40], counts: 48 },
  { spas: [], pools: [16, 16], counts: 16 },
  { spas: [], pools: [], counts: 0 },
] as const

export const FIGURES = {
  dropPercent: 5,
  ownSubstation: 7,
  residualMilliamps: 30,
  firstZone: 2,
  secondZone: 1.5,
  volts: 12,
  air: 40,
  soil: 25,
  fast: 0.4,
} as const

/** Protection against water in the three zones, as the page gives it. */
export const WATER = [
  { zone: 0, ip: 'IPX8' },
  { zone: 1, ip: 'IPX5' },
  { zone: 2, ip: 'IPX4' },
] as const
