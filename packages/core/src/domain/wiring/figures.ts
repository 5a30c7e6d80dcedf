/**
 * Every number of the electrical model that is in no file. Common practice, no source, unless one
 * is named. `docs/electrical-model.md` states the same list for people.
 */
export const FIGURES = {
  /** Source, neutral and earth impedance where the survey gives none [Ω]. */
  sourceOhms: 0.025,
  /** A closed contact, pole, switch or fuse [Ω]. */
  closedOhms: 0.002,
  /** An open contact [Ω]. */
  openOhms: 1e9,
  jumperOhms: 0.001,
  /** Length of a lead inside the equipment bay [m]. */
  leadLength: 1,
  tailLength: 0.5,
  loadInsulationOhms: 20e6,
  boardInsulationOhms: 50e6,
  lowVoltageInsulationOhms: 5e6,
  /** A ground-fault device's own electronics: 1 W at 120 V [Ω]. */
  groundFaultElectronicsOhms: 14_400,
  /** Series impedance of a small transformer, share of its rated impedance. */
  transformerSeries: 0.1,
  /** Magnetising volt-amperes of a small transformer, share of its rating. */
  transformerMagnetising: 0.2,
  /** Body of a person who touches a loose end [Ω]. */
  touchOhms: 2000,
} as const

/** Volts of one leg to neutral, by system [V]. */
export const LEG_VOLTS = {
  'split-phase': 120,
  'single-leg': 120,
  'single-phase-230': 230,
} as const

/**
 * How far the supply may lie from nominal, as factors.
 *
 * @source [ANSI-C84.1] range A, utilisation minimum and service maximum (from memory)
 * @source [IEC-60038] 230 V ±10 %; United Kingdom −6 % (from memory)
 */
export const BANDS = {
  US: { low: 110 / 120, high: 126 / 120 },
  CA: { low: 110 / 120, high: 126 / 120 },
  UK: { low: 0.94, high: 1.1 },
  EU: { low: 0.9, high: 1.1 },
  AU: { low: 0.9, high: 1.1 },
  NZ: { low: 0.9, high: 1.1 },
} as const
