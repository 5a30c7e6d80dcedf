/** Least protective conductor by line conductor [mm²]. */
export const SIZES = [
  { line: 1.5, least: 1.5 },
  { line: 10, least: 10 },
  { line: 16, least: 16 },
  { line: 16.5, least: 16 },
  { line: 25, least: 16 },
  { line: 35, least: 16 },
  { line: 35.5, least: 17.75 },
  { line: 50, least: 25 },
  { line: 95, least: 47.5 },
] as const

/** k as the second page prints it. */
export const K = [
  { lies: 'separate', insulation: 'thermoplastic', k: 143 },
  { lies: 'separate', insulation: 'thermosetting', k: 176 },
  { lies: 'core', insulation: 'thermoplastic', k: 115 },
  { lies: 'core', insulation: 'thermosetting', k: 143 },
] as const

/** k of copper by the first page. */
export const K_FIRST = [
  { insulation: 'pvc 70', k: 115 },
  { insulation: 'pvc 90', k: 100 },
  { insulation: 'xlpe 90', k: 143 },
  { insulation: 'rubber 60', k: 141 },
] as const

/** A published example, and three by hand. */
export const EXAMPLES = [
  { found: 'page', amps: 13600, seconds: 2.6, k: 143, mm2: 153.35, within: 0.5 },
  { found: 'derived', amps: 1000, seconds: 0.4, k: 115, mm2: 5.5, within: 0.01 },
  { found: 'derived', amps: 1500, seconds: 0.1, k: 115, mm2: 4.12, within: 0.01 },
  { found: 'derived', amps: 230, seconds: 0.4, k: 143, mm2: 1.02, within: 0.01 },
] as const
