import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/** Curve of a breaker to BS EN 60898. */
export type Curve = 'B' | 'C' | 'D'

/** Time in which a fault must be off [s]. */
export type FaultSeconds = 0.4 | 5

/** Of the voltage that is counted on when a fault is fed, of 230 V. @source [BS7671-41.3] Cmin */
export const VOLTAGE_FACTOR = 0.95

/**
 * At how many times its rating a breaker is sure to trip at once; D is slower, and for 5 s needs
 * half.
 *
 * @source [BS7671-41.3] appendix 3, figures of the curves
 */
export const SURE_MULTIPLE: Readonly<Record<Curve, Readonly<Record<FaultSeconds, number>>>> = {
  B: { '0.4': 5, '5': 5 },
  C: { '0.4': 10, '5': 10 },
  D: { '0.4': 20, '5': 10 },
}

/**
 * Greatest impedance of the loop through line and earth, at the conductor's full temperature, 230
 * V.
 *
 * For B and C both times are printed alike.
 *
 * @source [BS7671-41.3] breakers of curve B, C and D
 */
export const TABLE_41_3: PrintedTable<`${Curve} ${FaultSeconds}`> = {
  standard: 'BS 7671',
  edition: '2018',
  clause: 'table 41.3',
  read: 'page',
  unit: 'Ω',
  columns: ['B 0.4', 'B 5', 'C 0.4', 'C 5', 'D 0.4', 'D 5'],
  rows: {
    '6': [7.28, 7.28, 3.64, 3.64, 1.82, 3.64],
    '10': [4.37, 4.37, 2.19, 2.19, 1.09, 2.19],
    '16': [2.73, 2.73, 1.37, 1.37, 0.68, 1.37],
    '20': [2.19, 2.19, 1.09, 1.09, 0.55, 1.09],
    '25': [1.75, 1.75, 0.87, 0.87, 0.44, 0.87],
    '32': [1.37, 1.37, 0.68, 0.68, 0.34, 0.68],
    '40': [1.09, 1.09, 0.55, 0.55, 0.27, 0.55],
    '50': [0.87, 0.87, 0.44, 0.44, 0.22, 0.44],
    '63': [0.69, 0.69, 0.35, 0.35, undefined, undefined],
  },
}

/**
 * Greatest loop impedance behind a breaker.
 *
 * @param rating - of the breaker [A]
 * @returns [Ω], undefined for a breaker that is not printed
 * @source [BS7671-41.3] breakers of curve B, C and D
 */
export const greatestLoop = (
  rating: number,
  curve: Curve,
  seconds: FaultSeconds,
): number | undefined => cellOf(TABLE_41_3, String(rating), `${curve} ${seconds}`)

/**
 * What may be measured on a cold circuit, of what is allowed on a hot one.
 *
 * @source [BS7671-41.3] appendix 3
 */
export const COLD_FACTOR = 0.8

/**
 * How long a circuit may be before its loop, measured cold, is too great.
 *
 * @param loop - greatest, hot, behind the breaker [Ω]
 * @param external - of the supply [Ω]
 * @param milliohmsPerMetre - of line and protective conductor together, at 20 °C
 * @returns [m], negative where the supply alone is too much
 * @source [BS7671-41.3] with the factor for a cold circuit
 */
export const greatestRun = (loop: number, external: number, milliohmsPerMetre: number): number =>
  (1000 * (COLD_FACTOR * loop - external)) / milliohmsPerMetre
