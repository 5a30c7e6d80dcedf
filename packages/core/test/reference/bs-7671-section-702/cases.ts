/** Where a point by a sunken basin lies, from the distances of the pages [m]. */
export const POINTS = [
  { fromRim: -0.5, above: 0, zone: 0 },
  { fromRim: -0.5, above: 1, zone: 1 },
  { fromRim: 1.99, above: 2.49, zone: 1 },
  { fromRim: 2, above: 2.5, zone: 1 },
  { fromRim: 2.01, above: 1, zone: 2 },
  { fromRim: 3.5, above: 2.5, zone: 2 },
  { fromRim: 3.51, above: 1, zone: undefined },
  { fromRim: 1, above: 2.51, zone: undefined },
] as const

/** A tub that stands 0.9 m high: its water is inside up to the rim. */
export const STANDING = [
  { fromRim: 0, above: 0.9, zone: 0 },
  { fromRim: 0, above: 0.91, zone: 1 },
  { fromRim: 0.1, above: 0.5, zone: 1 },
] as const

/** Extra-low voltage that is allowed [V]. */
export const VOLTS = [
  { zone: 0, alternating: 12, direct: 30 },
  { zone: 1, alternating: 25, direct: 60 },
] as const

/** What an older page gives for both zones: never more than the code. */
export const OLDER = { alternating: 12, direct: 30 } as const

/** Protection against water. */
export const WATER = [
  { zone: 0, indoors: 'IPX8', outdoors: 'IPX8', jets: 'IPX8' },
  { zone: 1, indoors: 'IPX4', outdoors: 'IPX4', jets: 'IPX5' },
  { zone: 2, indoors: 'IPX2', outdoors: 'IPX4', jets: 'IPX5' },
] as const

/**
 * Residual current of what has full voltage in zone 2 [mA], and the electrode of a combined earth
 * [Ω].
 */
export const FIGURES = { milliamps: 30, ohms: 20 } as const
