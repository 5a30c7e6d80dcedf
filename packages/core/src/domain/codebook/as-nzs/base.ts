import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'AS/NZS 3008.1.1',
  edition: '2017',
  clause: '3.4.4, reference conditions',
  read: 'page',
}

/**
 * What the current ratings stand on [°C]: hotter air and soil than in the other books.
 *
 * @source [ASNZS3008-BASE]
 */
export const BASE_CELSIUS = { air: 40, soil: 25 } as const

/** Ratings of breakers that are usual here [A]. @source [ASNZS3008-BASE] as the trade lists them */
export const BREAKER_RATINGS: readonly number[] = [6, 10, 16, 20, 25, 32, 40, 50, 63, 80, 100]
