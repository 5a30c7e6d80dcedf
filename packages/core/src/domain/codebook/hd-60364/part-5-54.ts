import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'HD 60364-5-54',
  edition: '2011',
  clause: 'table 54.2 and annex A',
  read: 'page',
}

/**
 * Least copper protective conductor by the line conductor, with no adiabatic sum.
 *
 * @param line - cross-section of the line conductor [mm²]
 * @returns [mm²]: the same to 16, then 16 to 35, then half
 * @source [HD60364-54] table 54.2
 */
export function leastProtective(line: number): number {
  if (line <= 16) return line
  return line <= 35 ? 16 : line / 2
}

/**
 * Least copper protective conductor outside the cable [mm²], by whether it is protected.
 *
 * @source [HD60364-54] 543.1.3
 */
export const LEAST_SEPARATE = { protected: 2.5, unprotected: 4 } as const

/** Conductor temperature before a fault and at its end [°C]. */
export interface FaultHeat {
  readonly from: number
  readonly to: number
  readonly k: number
}

/**
 * k of copper by insulation, up to 300 mm²: the temperatures it stands on, and the figure.
 *
 * @source [HD60364-54] annex A, by the formula of IEC 60949
 */
export const K_COPPER: Readonly<
  Record<
    'pvc 70' | 'pvc 90' | 'xlpe 90' | 'rubber 60' | 'separate pvc' | 'separate xlpe',
    FaultHeat
  >
> = {
  'pvc 70': { from: 70, to: 160, k: 115 },
  'pvc 90': { from: 90, to: 160, k: 100 },
  'xlpe 90': { from: 90, to: 250, k: 143 },
  'rubber 60': { from: 60, to: 200, k: 141 },
  'separate pvc': { from: 30, to: 160, k: 143 },
  'separate xlpe': { from: 30, to: 250, k: 176 },
}
