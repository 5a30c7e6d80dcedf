/**
 * A hand-held meter at mains volts, and a clamp meter. Common practice, no source: 1 % and 3 digits
 * of 0.1 V, 2 % and 3 digits of 0.1 A, 10 MΩ across its tips.
 */
export const VOLT_METER = {
  /** Out by this share of the reading and so many volts [V]. */
  share: 0.01,
  volts: 0.3,
  /** [Ω] */
  inputOhms: 10e6,
  clampShare: 0.02,
  /** [A] */
  clampAmps: 0.3,
} as const

/** How far a reading of so many volts may lie from the truth [V]. */
export const voltAccuracy = (volts: number): number => VOLT_METER.share * volts + VOLT_METER.volts

/** How far a clamp that reads so many amps may lie from the truth [A]. */
export const clampAccuracy = (amps: number): number =>
  VOLT_METER.clampShare * amps + VOLT_METER.clampAmps
