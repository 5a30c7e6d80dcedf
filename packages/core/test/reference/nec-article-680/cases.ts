/** Second pages: the figure, and the editions of our table that it is compared with. */
export const FIGURES = [
  { name: 'disconnectLeast', value: 5, unit: 'ft', editions: ['2017', '2020', '2023'] },
  { name: 'disconnectReachRoundBarrier', value: 5, unit: 'ft', editions: ['2017', '2020', '2023'] },
  { name: 'withinSightMost', value: 50, unit: 'ft', editions: ['2017', '2020', '2023'] },
  { name: 'emergencySwitchLeast', value: 5, unit: 'ft', editions: ['2017', '2020', '2023'] },
  { name: 'outdoorReceptacleLeast', value: 6, unit: 'ft', editions: ['2017', '2020', '2023'] },
  { name: 'outdoorReceptacleMost', value: 20, unit: 'ft', editions: ['2017', '2020', '2023'] },
  { name: 'outdoorReceptacleHeightMost', value: 6.5, unit: 'ft', editions: ['2017', '2020'] },
  { name: 'indoorReceptacleLeast', value: 6, unit: 'ft', editions: ['2017', '2020', '2023'] },
  { name: 'indoorReceptacleMost', value: 10, unit: 'ft', editions: ['2017', '2020', '2023'] },
  { name: 'circulationReceptacleLeast', value: 6, unit: 'ft', editions: ['2017', '2020'] },
  { name: 'otherReceptacleLeast', value: 6, unit: 'ft', editions: ['2017', '2020'] },
  { name: 'outdoorGroundFaultWithin', value: 20, unit: 'ft', editions: ['2017', '2020', '2023'] },
  { name: 'outdoorGroundFaultAmps', value: 20, unit: 'A', editions: ['2017', '2020'] },
  { name: 'outdoorGroundFaultVolts', value: 125, unit: 'V', editions: ['2017', '2020'] },
  { name: 'luminaireWithin', value: 5, unit: 'ft', editions: ['2017', '2020', '2023'] },
  { name: 'outdoorLuminaireHeight', value: 12, unit: 'ft', editions: ['2017', '2020'] },
  { name: 'indoorLuminaireHeight', value: 12, unit: 'ft', editions: ['2017', '2020'] },
  { name: 'indoorLuminaireHeightGroundFault', value: 7.5, unit: 'ft', editions: ['2017', '2020'] },
  { name: 'switchLeast', value: 5, unit: 'ft', editions: ['2017', '2020', '2023'] },
  { name: 'outdoorCordMost', value: 15, unit: 'ft', editions: ['2017', '2020'] },
  { name: 'indoorCordedUnitMost', value: 20, unit: 'A', editions: ['2017', '2020'] },
  { name: 'poolCordMost', value: 3, unit: 'ft', editions: ['2017', '2020'] },
  { name: 'bondWithin', value: 5, unit: 'ft', editions: ['2017', '2020', '2023'] },
  { name: 'bondingConductor', value: 8, unit: 'AWG', editions: ['2017', '2020', '2023'] },
  { name: 'rimAboveSurfaces', value: 28, unit: 'in', editions: ['2017', '2020'] },
  { name: 'rimSurfacesWithin', value: 30, unit: 'in', editions: ['2017', '2020'] },
  { name: 'earthConductorLeast', value: 12, unit: 'AWG', editions: ['2017', '2020', '2023'] },
  { name: 'heaterPartMost', value: 48, unit: 'A', editions: ['2017', '2020', '2023'] },
  { name: 'heaterBreakerMost', value: 60, unit: 'A', editions: ['2017', '2020', '2023'] },
  { name: 'heaterBranchPercent', value: 125, unit: '%', editions: ['2017', '2020', '2023'] },
  { name: 'fieldHeaterExemptAbove', value: 50, unit: 'A', editions: ['2017', '2020'] },
  { name: 'fieldVoltsExemptAbove', value: 250, unit: 'V', editions: ['2017', '2020'] },
  { name: 'classAToEarthMost', value: 150, unit: 'V', editions: ['2023'] },
  { name: 'classABreakerMost', value: 60, unit: 'A', editions: ['2023'] },
  { name: 'specialPurposeVoltsMost', value: 480, unit: 'V', editions: ['2023'] },
  { name: 'specialPurposeTripMost', value: 20, unit: 'mA', editions: ['2023'] },
  { name: 'junctionBoxAboveDeck', value: 4, unit: 'in', editions: ['2017', '2020'] },
  { name: 'junctionBoxAboveWater', value: 8, unit: 'in', editions: ['2017', '2020'] },
  { name: 'junctionBoxLeast', value: 4, unit: 'ft', editions: ['2017', '2020'] },
  { name: 'bathtubGroundFaultWithin', value: 6, unit: 'ft', editions: ['2017'] },
  { name: 'bathtubReceptacleMost', value: 30, unit: 'A', editions: ['2017'] },
  { name: 'flexibleConduitMost', value: 6, unit: 'ft', editions: ['2011'] },
] as const

/** Figures that an edition does not have. */
export const ABSENT = [
  { name: 'flexibleConduitMost', editions: ['2017', '2020', '2023'] },
  { name: 'fieldHeaterExemptAbove', editions: ['2011', '2023'] },
  { name: 'fieldVoltsExemptAbove', editions: ['2011', '2023'] },
  { name: 'classAToEarthMost', editions: ['2017', '2020'] },
  { name: 'indoorGroundFaultAmps', editions: ['2023'] },
] as const

/** Metres that pages print beside the feet. */
export const METRES = [
  { name: 'disconnectLeast', metres: 1.5 },
  { name: 'outdoorCordMost', metres: 4.6 },
  { name: 'withinSightMost', metres: 15 },
  { name: 'outdoorReceptacleMost', metres: 6 },
] as const

/** A 240 V tub with a heater of 23 A behind 50 A, unless a case says otherwise. */
export const PLAIN = {
  edition: '2020',
  unit: 'listed',
  phases: 1,
  volts: 240,
  voltsToEarth: 120,
  heater: 23,
  breaker: 50,
} as const

/** 680.44, from 2023 with 680.5. */
export const PROTECTION = [
  { what: 'a listed tub', change: {}, expected: 'class A' },
  {
    what: 'a listed tub with its own protection, marked so',
    change: { unit: 'listed, protection integral and marked' },
    expected: 'none more',
  },
  { what: 'built in the field', change: { unit: 'field-assembled' }, expected: 'class A' },
  {
    what: 'built in the field, heater of exactly 50 A',
    change: { unit: 'field-assembled', heater: 50, breaker: 70 },
    expected: 'class A',
  },
  {
    what: 'built in the field, heater over 50 A',
    change: { unit: 'field-assembled', heater: 50.1, breaker: 70 },
    expected: 'none more',
  },
  {
    what: 'built in the field, three phases',
    change: { unit: 'field-assembled', phases: 3, volts: 208 },
    expected: 'none more',
  },
  {
    what: 'built in the field, over 250 V',
    change: { unit: 'field-assembled', volts: 277, voltsToEarth: 277 },
    expected: 'none more',
  },
  { what: 'listed, three phases', change: { phases: 3, volts: 208 }, expected: 'class A' },
  { what: 'listed, heater over 50 A', change: { heater: 60, breaker: 80 }, expected: 'class A' },
  { what: '2023, listed', change: { edition: '2023' }, expected: 'class A' },
  {
    what: '2023, three phases no longer exempt',
    change: { edition: '2023', unit: 'field-assembled', phases: 3, volts: 208 },
    expected: 'class A',
  },
  {
    what: '2023, 277 V to earth',
    change: { edition: '2023', phases: 3, volts: 480, voltsToEarth: 277 },
    expected: 'special purpose',
  },
  {
    what: '2023, over 60 A at 120 V to earth',
    change: { edition: '2023', breaker: 70 },
    expected: undefined,
  },
  {
    what: '2023, 600 V',
    change: { edition: '2023', phases: 3, volts: 600, voltsToEarth: 347 },
    expected: undefined,
  },
] as const

/** Earth by the breaker: table 250.122, not under 12 AWG. */
export const EARTH = [
  { breaker: 15, earth: '12 AWG' },
  { breaker: 20, earth: '12 AWG' },
  { breaker: 30, earth: '10 AWG' },
  { breaker: 40, earth: '10 AWG' },
  { breaker: 50, earth: '10 AWG' },
  { breaker: 60, earth: '10 AWG' },
] as const

/** Amps of a heater and the parts it is divided into. */
export const PARTS = [
  { amps: 23, parts: 1 },
  { amps: 48, parts: 1 },
  { amps: 48.1, parts: 2 },
  { amps: 96, parts: 2 },
  { amps: 100, parts: 3 },
] as const
