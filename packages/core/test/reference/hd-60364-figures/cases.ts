/** Limit of the drop at a length, from the second page's rule [%]. */
export const DROP = [
  { supply: 'public', use: 'other', metres: 0, percent: 5 },
  { supply: 'public', use: 'other', metres: 100, percent: 5 },
  { supply: 'public', use: 'other', metres: 150, percent: 5.25 },
  { supply: 'public', use: 'other', metres: 200, percent: 5.5 },
  { supply: 'public', use: 'other', metres: 1000, percent: 5.5 },
  { supply: 'public', use: 'lighting', metres: 150, percent: 3.25 },
  { supply: 'private', use: 'other', metres: 100, percent: 8 },
  { supply: 'private', use: 'lighting', metres: 120, percent: 6.1 },
] as const

/** Nominal volts, volts of the test, least megohms. */
export const INSULATION = [
  { volts: 12, test: 250, megohms: 0.5 },
  { volts: 50, test: 250, megohms: 0.5 },
  { volts: 230, test: 500, megohms: 1 },
  { volts: 400, test: 500, megohms: 1 },
  { volts: 500, test: 500, megohms: 1 },
  { volts: 690, test: 1000, megohms: 1 },
] as const

/** What older editions asked for, at extra-low voltage and to 500 V [MΩ]. */
export const OLDER_MEGOHMS = [0.25, 0.5] as const

/** Greatest electrode behind a device [Ω], rounded to whole ohms. */
export const ELECTRODES = [
  { milliamps: 30, ohms: 1667 },
  { milliamps: 100, ohms: 500 },
  { milliamps: 300, ohms: 167 },
  { milliamps: 500, ohms: 100 },
] as const

/** Longest time of a fault at 230 V [s]. */
export const TIMES = { TN: { fast: 0.4, other: 5 }, TT: { fast: 0.2, other: 1 } } as const

/** Protective conductor outside the cable [mm²]. */
export const SEPARATE = { protected: 2.5, unprotected: 4 } as const

/** Up to which rating a final circuit has to be off fast [A]. */
export const FAST = { 'with sockets': 63, 'fixed equipment only': 32 } as const
