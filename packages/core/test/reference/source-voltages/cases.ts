/** Volts between two lines, or from a line to the star point, as printed. */
export const BETWEEN = [
  { system: 'split-phase', from: 'leg1', to: 'leg2', volts: 240 },
  { system: 'two-legs-of-wye', from: 'leg1', to: 'leg2', volts: 207.85 },
  { system: 'two-legs-of-wye', from: 'leg1', to: undefined, volts: 120 },
  { system: 'three-phase-230-400', from: 'leg1', to: 'leg2', volts: 398.37 },
  { system: 'three-phase-230-400', from: 'leg2', to: 'leg3', volts: 398.37 },
  { system: 'three-phase-230-400', from: 'leg3', to: 'leg1', volts: 398.37 },
  { system: 'two-lives-230', from: 'leg1', to: 'leg2', volts: 230 },
  { system: 'high-leg-delta', from: 'leg2', to: undefined, volts: 207.8 },
  { system: 'high-leg-delta', from: 'leg1', to: 'leg2', volts: 240 },
] as const

/** How far a source of so many volts may lie. */
export const BAND = [
  { region: 'US', nominal: 120, least: 110, most: 126 },
  { region: 'CA', nominal: 120, least: 110, most: 126 },
  { region: 'US', nominal: 208, least: 191, most: 218 },
  { region: 'EU', nominal: 230, least: 207, most: 253 },
  { region: 'UK', nominal: 230, least: 216.2, most: 253 },
  { region: 'AU', nominal: 230, least: 216.2, most: 253 },
  { region: 'NZ', nominal: 230, least: 216.2, most: 243.8 },
] as const
