/** Breaker and the most for three hours [A]. */
export const EIGHTY_PERCENT = [
  { breaker: 15, most: 12 },
  { breaker: 20, most: 16 },
  { breaker: 30, most: 24 },
  { breaker: 40, most: 32 },
  { breaker: 50, most: 40 },
  { breaker: 60, most: 48 },
] as const

/** A load of 24 A asks 30 A of breaker and conductor: 10 AWG at 75 °C. */
export const LIGHTING = { load: 24, least: 30, size: '10 AWG' } as const

/** Continuous from so many hours on. */
export const HOURS = 3

/** 5500 W at 240 V, by the forum, which rounds first. */
export const WATER_HEATER = {
  watts: 5500,
  volts: 240,
  at125: 28.75,
  at150: 34.5,
  least: 30,
  most: 35,
} as const

/** Heaters: kW, V, A, 125 %, the next standard breaker; ours. */
export const HEATERS = [
  { kilowatts: 4.0, volts: 240, amps: 16.67, at125: 20.83, breaker: 25 },
  { kilowatts: 5.5, volts: 240, amps: 22.92, at125: 28.65, breaker: 30 },
  { kilowatts: 6.0, volts: 240, amps: 25.0, at125: 31.25, breaker: 35 },
  { kilowatts: 3.0, volts: 240, amps: 12.5, at125: 15.62, breaker: 20 },
  { kilowatts: 1.0, volts: 120, amps: 8.33, at125: 10.42, breaker: 15 },
  { kilowatts: 5.5, volts: 208, amps: 26.44, at125: 33.05, breaker: 35 },
] as const
