/**
 * Every number of the cold model that is in no file. Common practice, no source.
 * `docs/electrical-model.md` states the same list for people.
 */
export const COLD = {
  /** Copper where nothing runs [°C]. */
  copperCelsius: 20,
  /** 0 to 40 °C makes 8 %, stranding 2 %. */
  copperTolerance: 0.1,
  /** One landed end: a screw, a tab or a plug pin [Ω]. */
  joint: { expected: 0.002, greatest: 0.01 },
  /** The worst closed contact, pole or switch, and the worst jumper [Ω]. */
  closedGreatest: 0.05,
  jumperGreatest: 0.02,
  /** A fuse drops so much at its rated current [V]: a small one has more ohms. */
  fuseVolts: 0.2,
  /** The star point behind a neutral or an earth that stays connected [Ω]. */
  tieGreatest: 1,
  /** The least of an open contact, and of a semiconductor that is off [Ω]. */
  openLeast: 100e6,
  semiconductorLeast: 1e6,
  /** How far an element may lie from its plate. */
  elementTolerance: 0.1,
  /** A winding read again: 25 K of its copper, another motor of the same plate. */
  windingTolerance: 0.1,
  /** A probe: 1 K, and 1 % of its curve. */
  probeTolerance: 0.05,
  /** The least of sound insulation, as a share of the model's ohms. */
  insulationLeast: 0.5,
  /** What nobody knows lies from here [Ω] to open. */
  unknownLeast: 0.1,
  /** From here on an ohmmeter says open [Ω]. */
  opensAt: 1e6,
  /** An ohmmeter with its leads zeroed is out by this share and so many ohms [Ω]. */
  meterShare: 0.01,
  meterOhms: 0.2,
  /** Copper without a length: so little that no meter shows it [Ω]. */
  nothing: 1e-6,
} as const

/** What is asked of cold readings. Common practice, no source. */
export const COLD_LIMITS = {
  /** Most ohms of earth inside the tub, and end to end of the run to it [Ω]. */
  earthOhms: 0.1,
  runOhms: 1,
  /** Direct volts of an insulation test [V]. */
  testVolts: 500,
  /** Insulation: a good part, what will do, and what is suspect [Ω]. */
  goodInsulation: 10e6,
  leastInsulation: 1e6,
  suspectInsulation: 0.5e6,
} as const
