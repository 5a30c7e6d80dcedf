/** Distances [m], and the feet that the NEC has for a like thing, where it has one. */
export const DISTANCES = [
  { name: 'scopeWithin', metres: 3 },
  { name: 'groundFaultDeviceLeast', metres: 3 },
  { name: 'bathtubGroundFaultDeviceLeast', metres: 1.5 },
  { name: 'luminaireGroundFaultWithin', metres: 3 },
  { name: 'receptacleLeast', metres: 1.5 },
  { name: 'receptacleGroundFaultWithin', metres: 3 },
  { name: 'controlsLeast', metres: 1 },
  { name: 'disconnectMost', metres: 9 },
] as const

/** From memory, not from a page. */
export const FROM_MEMORY = ['receptacleLeast', 'receptacleGroundFaultWithin'] as const

export const CLASS = 'A'
