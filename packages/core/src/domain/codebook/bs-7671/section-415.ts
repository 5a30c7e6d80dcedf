import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'BS 7671',
  edition: '2018',
  clause: '415.1.1',
  read: 'page',
}

/**
 * What a residual-current device for additional protection is: rating, and time at a test multiple.
 *
 * @source [BS7671-415]
 */
export const ADDITIONAL_PROTECTION = {
  milliampsAtMost: 30,
  milliseconds: 40,
  atMultiple: 5,
} as const

/**
 * Whether a rated residual current counts as additional protection.
 *
 * @source [BS7671-415] 415.1.1
 */
export const isAdditionalProtection = (milliamps: number): boolean =>
  milliamps <= ADDITIONAL_PROTECTION.milliampsAtMost
