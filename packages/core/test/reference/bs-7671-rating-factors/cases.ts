/** Air, 70 °C cables. */
export const AIR_70 = [
  { celsius: 25, factor: 1.03 },
  { celsius: 30, factor: 1 },
  { celsius: 35, factor: 0.94 },
  { celsius: 40, factor: 0.87 },
  { celsius: 45, factor: 0.79 },
  { celsius: 50, factor: 0.71 },
  { celsius: 55, factor: 0.61 },
  { celsius: 60, factor: 0.5 },
] as const

/** Air, 90 °C cables. */
export const AIR_90 = [
  { celsius: 25, factor: 1.02 },
  { celsius: 30, factor: 1 },
  { celsius: 35, factor: 0.96 },
  { celsius: 40, factor: 0.91 },
  { celsius: 45, factor: 0.87 },
  { celsius: 50, factor: 0.82 },
  { celsius: 55, factor: 0.76 },
  { celsius: 60, factor: 0.71 },
  { celsius: 65, factor: 0.65 },
  { celsius: 70, factor: 0.58 },
  { celsius: 75, factor: 0.5 },
  { celsius: 80, factor: 0.41 },
] as const

/** Ground, as exam questions have it. */
export const GROUND_70 = [
  { celsius: 25, factor: 0.95 },
  { celsius: 30, factor: 0.89 },
] as const

/** Circuits bunched. */
export const BUNCHED = [
  { circuits: 1, factor: 1 },
  { circuits: 2, factor: 0.8 },
  { circuits: 3, factor: 0.7 },
  { circuits: 4, factor: 0.65 },
  { circuits: 5, factor: 0.6 },
  { circuits: 6, factor: 0.57 },
  { circuits: 7, factor: 0.54 },
  { circuits: 8, factor: 0.52 },
  { circuits: 9, factor: 0.5 },
  { circuits: 10, factor: 0.48 },
  { circuits: 12, factor: 0.45 },
  { circuits: 14, factor: 0.43 },
  { circuits: 16, factor: 0.41 },
  { circuits: 18, factor: 0.39 },
  { circuits: 20, factor: 0.38 },
] as const
