import { readArea } from './quantities.ts'

/** What a copper conductor may carry, and the greatest breaker that may stand before it [A]. */
export interface ConductorLimits {
  readonly carries: number
  readonly breaker: number
}

// `DEFINITIONS.md`, "What a conductor carries": [carries, breaker]
const LIMITS: Readonly<Record<string, readonly [number, number]>> = {
  '22 AWG': [3, 3],
  '20 AWG': [5, 5],
  '18 AWG': [10, 7],
  '16 AWG': [13, 10],
  '14 AWG': [20, 15],
  '12 AWG': [25, 20],
  '10 AWG': [35, 30],
  '8 AWG': [50, 50],
  '6 AWG': [65, 70],
  '4 AWG': [85, 90],
  '3 AWG': [100, 100],
  '2 AWG': [115, 125],
  '1 AWG': [130, 150],
  '0.5 mm2': [3, 3],
  '0.75 mm2': [6, 6],
  '1 mm2': [10, 10],
  '1.5 mm2': [19.5, 16],
  '2.5 mm2': [27, 25],
  '4 mm2': [36, 32],
  '6 mm2': [46, 40],
  '10 mm2': [63, 63],
  '16 mm2': [85, 80],
  '25 mm2': [112, 100],
}

const partsOf = (size: string): readonly [number: string, unit: string] => {
  const match = /^([\d.]+)\s*(AWG|mm2|mm²)$/u.exec(size.trim())
  if (!match) throw new Error(`no conductor size: "${size}"`)
  return [match[1] ?? '', match[2] === 'AWG' ? 'AWG' : 'mm2']
}

export const isGauge = (size: string): boolean => partsOf(size)[1] === 'AWG'

export function conductorLimits(size: string): ConductorLimits {
  const limits = LIMITS[partsOf(size).join(' ')]
  if (!limits) throw new Error(`nothing is known of what ${size} carries`)
  return { carries: limits[0], breaker: limits[1] }
}

// NEC 250.122, copper: up to that breaker [A], that gauge
const EARTHS: readonly (readonly [number, string])[] = [
  [15, '14 AWG'],
  [20, '12 AWG'],
  [60, '10 AWG'],
  [100, '8 AWG'],
  [200, '6 AWG'],
]

/** Cross-section of the earth conductor that a breaker asks for [mm²]; beyond the table none is enough. */
export function earthAreaFor(breaker: number): number {
  const size = EARTHS.find(([upTo]) => breaker <= upTo)?.[1]
  return size === undefined ? Infinity : readArea(size)
}
