const SIZES = [1, 1.5, 2.5, 4, 6, 10, 16, 25, 35]

/** Ohms per kilometre at 20 °C, from the second pages. */
export const SECOND = [
  {
    conductor: 'rigid',
    ohms: [18.1, 12.1, 7.41, 4.61, 3.08, 1.83, 1.15, 0.727, 0.524],
    sizes: SIZES,
  },
  { conductor: 'flexible', ohms: [19.5, 13.3, 7.98, 4.95, 3.3, 1.91, 1.21, 0.78], sizes: SIZES },
] as const

/** What a reading at a temperature is multiplied by to be that of 20 °C. */
export const TO_20C = [
  { celsius: 5, factor: 1.064 },
  { celsius: 10, factor: 1.042 },
  { celsius: 15, factor: 1.02 },
  { celsius: 20, factor: 1 },
  { celsius: 25, factor: 0.98 },
  { celsius: 30, factor: 0.962 },
  { celsius: 40, factor: 0.926 },
  { celsius: 50, factor: 0.893 },
  { celsius: 60, factor: 0.862 },
  { celsius: 70, factor: 0.833 },
  { celsius: 75, factor: 0.82 },
  { celsius: 80, factor: 0.806 },
  { celsius: 90, factor: 0.781 },
] as const

/** Multipliers of a second page, from 20 °C to the temperature of a full cable. */
export const MULTIPLIERS = [
  { celsius: 70, multiplier: 1.2 },
  { celsius: 90, multiplier: 1.28 },
] as const

/** A coil: ohms at its start, and hot by two rules. */
export const COIL = { from: 24.5, ohms: 28.2, to: 68.8, published: 33.248, copper: 33.02 } as const

/** Annealed copper [Ω·mm²/m at 20 °C]. */
export const RESISTIVITY = 0.017241
