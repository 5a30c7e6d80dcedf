import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'AS/NZS 3000',
  edition: '2018',
  clause: '2.6.3',
  read: 'page',
}

/**
 * Greatest rated residual current of a final circuit that is new or altered, a tub's too [mA].
 *
 * @source [ASNZS3000-2.6] 2.6.3
 */
export const FINAL_CIRCUIT_MILLIAMPS = 30
