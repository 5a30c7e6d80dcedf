import type { ConductorSize } from '../conductor.ts'

/** What a copper conductor may carry, and the greatest breaker that may stand before it [A]. */
export interface ConductorAmps {
  readonly carries: number
  readonly breaker: number
}

/**
 * By size as it is written, at the best of conditions: what length, heat, bunching and terminals
 * take off is not in it.
 *
 * @source [NEC-310.16] copper at 75 °C, from 14 AWG; breaker by 240.4(D), else 240.4(B) and 240.6(A)
 * @source [NEC-400.5] flexible cord, 16 and 18 AWG (from memory); 20 and 22 AWG: common practice, no
 *   source
 * @source [IEC-60364-5-52] table B.52.2, method C, from 1.5 mm² (from memory), with the next lower
 *   standard breaker; below, flexible cord (from memory)
 */
const AMPS: Readonly<Record<string, readonly [carries: number, breaker: number]>> = {
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
  '0.5 mm²': [3, 3],
  '0.75 mm²': [6, 6],
  '1 mm²': [10, 10],
  '1.5 mm²': [19.5, 16],
  '2.5 mm²': [27, 25],
  '4 mm²': [36, 32],
  '6 mm²': [46, 40],
  '10 mm²': [63, 63],
  '16 mm²': [85, 80],
  '25 mm²': [112, 100],
}

/** Sizes of the table, as they are written. */
export const CONDUCTOR_SIZES: readonly string[] = Object.keys(AMPS)

/** The table's line for a size, or undefined for one that it does not have. */
export function conductorAmps({ text }: ConductorSize): ConductorAmps | undefined {
  const line = Object.hasOwn(AMPS, text) ? AMPS[text] : undefined
  return line && { carries: line[0], breaker: line[1] }
}
