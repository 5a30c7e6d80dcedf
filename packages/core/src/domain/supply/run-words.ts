/** Where a segment of the run lies. */
export const SURROUNDINGS = ['indoors', 'outdoors', 'underground'] as const
export type Surrounding = (typeof SURROUNDINGS)[number]

export const MATERIALS = ['copper', 'aluminium'] as const
export type Material = (typeof MATERIALS)[number]

/** What an insulation or a terminal is made for: the column of its table. */
export const RATED_TEMPERATURES = ['60 °C', '70 °C', '75 °C', '90 °C'] as const
export type RatedTemperature = (typeof RATED_TEMPERATURES)[number]

/** How the conductors of a segment are held. */
export const WIRING_METHODS = [
  'conduit',
  'flexible-conduit',
  'sheathed-cable',
  'sheathed-cable-in-insulation',
  'cable-in-conduit',
  'armoured-cable',
  'buried-cable',
  'cord',
] as const
export type WiringMethod = (typeof WIRING_METHODS)[number]

/** Kinds of conduit, by the names of the trade in North America. */
export const CONDUITS = ['EMT', 'PVC 40', 'PVC 80', 'FMC', 'LFMC', 'LFNC-B'] as const

/** In inches. */
export const TRADE_SIZES = ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2'] as const

/** How many other conductors that carry current lie in the same conduit or bunch. */
export const ALONGSIDE = ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9'] as const

/** Tripping characteristic of a breaker outside North America. @source [IEC-60898] */
export const BREAKER_TYPES = ['B', 'C', 'D'] as const
export type BreakerType = (typeof BREAKER_TYPES)[number]

/** How the installation is earthed. @source [IEC-60364-1] (from memory) */
export const EARTHINGS = ['TN-S', 'TN-C-S', 'TT'] as const
export type Earthing = (typeof EARTHINGS)[number]
