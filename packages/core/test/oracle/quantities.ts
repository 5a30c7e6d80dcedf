/** A surveyed value as the files write it. */
export type RawKnown =
  | string
  | { readonly from: string; readonly to: string }
  | { readonly oneOf: readonly string[] }
  | { readonly unknown: string }

const FACTORS: Readonly<Record<string, number>> = {
  V: 1,
  mV: 1e-3,
  kV: 1e3,
  A: 1,
  mA: 1e-3,
  ohm: 1,
  ohms: 1,
  Ω: 1,
  mohm: 1e-3,
  mΩ: 1e-3,
  kohm: 1e3,
  kΩ: 1e3,
  Mohm: 1e6,
  MΩ: 1e6,
  Hz: 1,
  W: 1,
  kW: 1e3,
  VA: 1,
  kVA: 1e3,
  m: 1,
  mm: 1e-3,
  cm: 1e-2,
  ft: 0.3048,
  in: 0.0254,
}

/** Reads a number and its unit, in SI. */
export function readQuantity(text: string): number {
  const match = /^([+-]?[\d.]+(?:[eE][+-]?\d+)?)\s*(\S+)$/u.exec(text.trim())
  const factor = FACTORS[match?.[2] ?? '']
  if (!match || factor === undefined) throw new Error(`no quantity: "${text}"`)
  return Number(match[1]) * factor
}

/** The upper end of a surveyed value, or undefined when it is unknown. */
export function readGreatest(raw: RawKnown | undefined): number | undefined {
  if (raw === undefined) return undefined
  if (typeof raw === 'string') return readQuantity(raw)
  if ('oneOf' in raw) return Math.max(...raw.oneOf.map(readQuantity))
  if ('unknown' in raw) return undefined
  return readQuantity(raw.to)
}

const AWG_MM2: Readonly<Record<string, number>> = {
  '22': 0.326,
  '20': 0.518,
  '18': 0.823,
  '16': 1.31,
  '14': 2.08,
  '12': 3.31,
  '10': 5.26,
  '8': 8.37,
  '6': 13.3,
  '4': 21.1,
  '3': 26.7,
  '2': 33.6,
  '1': 42.4,
}

/** Cross-section of a conductor size [mm²]. */
export function readArea(text: string): number {
  const match = /^([\d.]+)\s*(AWG|mm2|mm²)$/u.exec(text.trim())
  const area = match?.[2] === 'AWG' ? AWG_MM2[match[1] ?? ''] : Number(match?.[1])
  if (!match || area === undefined || !(area > 0)) throw new Error(`no conductor size: "${text}"`)
  return area
}

/** Resistance of one copper conductor at 75 °C [Ω]; length in m, area in mm². */
export const copperOhms = (wire: { readonly length: number; readonly area: number }): number =>
  (wire.length * (1 / 58e6) * (1 + 0.00393 * 55)) / (wire.area * 1e-6)

const KELVIN = 273.15

/** A probe's curve: resistance at 25 °C and beta. */
export const CURVES = {
  '10k': { ohmsAt25: 10_000, beta: 3950 },
  '30k': { ohmsAt25: 30_700, beta: 3994 },
} as const
export type CurveName = keyof typeof CURVES

/** Resistance of a probe at a temperature in °C. */
export function probeOhms(curve: CurveName, celsius: number): number {
  const { ohmsAt25, beta } = CURVES[curve]
  return ohmsAt25 * Math.exp(beta * (1 / (celsius + KELVIN) - 1 / 298.15))
}

/** What an input of that curve makes of a resistance [°C]. */
export function sensedCelsius(curve: CurveName, ohms: number): number {
  const { ohmsAt25, beta } = CURVES[curve]
  return 1 / (1 / 298.15 + Math.log(ohms / ohmsAt25) / beta) - KELVIN
}
