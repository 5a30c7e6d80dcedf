import type { Printed } from '../printed.ts'
import { CONTINUOUS } from './section-210-20.ts'

export const SECTION_430_22_24: Printed & { readonly unit: string; readonly largest: number } = {
  standard: 'NEC',
  edition: '2017',
  clause: '430.22 and 430.24',
  read: 'page',
  unit: '%',
  largest: 125,
}

const LARGEST = SECTION_430_22_24.largest / 100

/**
 * The least that conductors of one continuous motor carry.
 *
 * @param fullLoad - by table 430.248, not by the plate [A]
 * @returns [A]
 * @source [NEC-430.22] 430.22
 */
export const motorConductorAmps = (fullLoad: number): number => LARGEST * fullLoad

/**
 * The least that conductors of several motors and other loads carry.
 *
 * Loads that an interlock keeps apart are not given together.
 *
 * @param motors - full-load currents by the table [A]
 * @param continuous - other loads that last three hours [A]
 * @param other - other loads that do not [A]
 * @returns [A]
 * @source [NEC-430.22] 430.24
 */
export function motorsConductorAmps(load: {
  readonly motors: readonly number[]
  readonly continuous?: number
  readonly other?: number
}): number {
  const sum = load.motors.reduce((total, each) => total + each, 0)
  const largest = Math.max(0, ...load.motors)
  const rest = (load.continuous ?? 0) * CONTINUOUS.share + (load.other ?? 0)
  return sum + (LARGEST - 1) * largest + rest
}
