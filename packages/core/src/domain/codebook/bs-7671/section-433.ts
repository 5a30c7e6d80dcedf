import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'BS 7671',
  edition: '2018',
  clause: '433.1.1',
  read: 'page',
}

/**
 * Of its rating, at what a device is sure to open in time; and the most a cable may be asked to
 * bear.
 *
 * @source [BS7671-433]
 */
export const OVERLOAD = { breakerOpensAt: 1.45, cableBears: 1.45 } as const

/** Currents of one circuit [A]: load, rating of the device, cable as installed. */
export interface OverloadCase {
  readonly load: number
  readonly device: number
  readonly cable: number
  /** Sure to open the device, in its conventional time; a breaker's by default. */
  readonly opensAt?: number
}

/**
 * Which condition of overload protection fails first, in the order of the clause.
 *
 * @returns undefined where all hold: load ≤ device ≤ cable, and opening current ≤ 1.45 × cable
 * @source [BS7671-433] 433.1.1 (i) to (iii)
 */
export function overloadFailure({
  load,
  device,
  cable,
  opensAt = OVERLOAD.breakerOpensAt * device,
}: OverloadCase): 'device-below-load' | 'cable-below-device' | 'opens-too-late' | undefined {
  const atMost = (lesser: number, greater: number): boolean => lesser <= greater * (1 + 1e-9)
  if (!atMost(load, device)) return 'device-below-load'
  if (!atMost(device, cable)) return 'cable-below-device'
  return atMost(opensAt, OVERLOAD.cableBears * cable) ? undefined : 'opens-too-late'
}

/**
 * What the rating of a cable must be so that it is enough where it lies.
 *
 * @param device - rating of the protecting device [A]
 * @param factors - each 0 to about 1.2
 * @returns [A], before any factor
 * @source [BS7671-433] with appendix 4 section 5
 */
export const requiredRating = (device: number, factors: readonly number[]): number =>
  factors.reduce((required, factor) => required / factor, device)
