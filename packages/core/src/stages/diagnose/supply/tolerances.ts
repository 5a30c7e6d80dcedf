/** How far a real supply may lie from its description. Common practice, no source. */
export const TOLERANCES = {
  /** Amps of a load from its plate, either way. */
  load: 0.1,
  /** Copper, poles and a surveyed source: 0 °C to 75 °C with stranding, and sound joints. */
  wiring: { least: 0.75, greatest: 1.25 },
  /** A source that nobody surveyed, of the usual 25 mΩ: 10 to 100 mΩ. */
  source: { least: 0.4, greatest: 4 },
  /** Ohms of a ground-fault device's electronics, as a share of the usual: at most twice their power. */
  electronics: 0.5,
  /** What no run or load ties by so many ohms hangs on insulation: its volts are a ghost [Ω]. */
  tieOhms: 20_000,
  /** The most of its neighbours' volts that a conductor on nothing takes; makers of meters say 80 to 85 %. */
  ghostShare: 0.85,
  /** A capacitance beside electronics turns what they tie aside: by a fifth at a right angle, 2 % more. */
  ghostGrows: 1.03,
  /** What it may show beside anything [V]. */
  strayVolts: 10,
  /** A box of phasors is widened by this share of its diagonal, for the bow between its corners. */
  bow: 0.05,
} as const

/** Poor joints and neutrals that are looked at [Ω]: doubled from the least, 20 times. */
export const POOR_OHMS = { least: 0.01, doublings: 20 } as const

/** How many times the cells of that grid are halved, by √: to 4 %. */
export const HALVINGS = 4

/** A joint that takes no more of the leg volts, with everything on, is as good as sound. */
export const NEGLIGIBLE_SHARE = 0.05

/** From so many ohms on a joint lets through no more than an open conductor would [Ω]. */
export const AS_OPEN_OHMS = 100

/** Loads that may lie off their plates each for itself. */
export const LOADS_MAX = 6

/** Most volts from neutral to earth under load [V]. */
export const NEUTRAL_VOLTS = 2
