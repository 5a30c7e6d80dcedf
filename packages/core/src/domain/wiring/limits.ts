import { EXTRA_LOW_VOLTS } from '../load/load.ts'

/**
 * Words that need numbers have them here. Trade judgement, common practice, no source, unless one
 * is named.
 */
export const LIMITS = {
  /** A fuse or breaker that carries so many times its rating clears, cleanly and certainly. */
  certainTrip: 3,
  /** From so many times its rating on, a trip is spoken of as a dead short. */
  short: 5,
  /** A ground-fault device is awake above these volts across its electronics [V]. */
  awakeVolts: 85,
  /** The box's electronics work above this share of their volts; below, no contact closes. */
  controlAwake: 0.5,
  /** A circuit counts as energised above this share of its plate volts. */
  energised: 0.1,
  /** Most and least volts of a load, as a share of its plate. */
  most: 1.1,
  leastMotor: 0.85,
  /** A load that gets less is weak: it works below its purpose, without danger. */
  weak: 0.9,
  /** Energised though nothing commands it, as a share of its plate volts. */
  onWhenOff: 0.25,
  /** Extra-low voltage to earth, alternating [V]. @source [IEC-61140] (from memory) */
  extraLowVolts: EXTRA_LOW_VOLTS,
  /** Exposed metal to earth [V]. */
  metalVolts: 5,
  /** Earth current where no ground-fault device watches [A]. */
  earthAmps: 0.01,
  /** What a person could be given through 2 kΩ [A]. @source [IEC-60990] (from memory) */
  touchAmps: 0.0005,
  /** A sensor may read this much low [K]. */
  sensedLow: 1,
  /** Beyond these the box sees an open or a shorted probe [°C]. */
  sensedOpen: -10,
  sensedShort: 120,
  /** Water at the sensor check [°C]. */
  sensedAt: 40,
  /** Share of the breaker that the current limit may reach. */
  continuous: 0.8,
} as const
