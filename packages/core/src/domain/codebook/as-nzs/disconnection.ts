import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'AS/NZS 3000',
  edition: '2018',
  clause: '5.7.2',
  read: 'memory',
}

/**
 * Longest time a fault may last at 230 V to earth [s]; sockets up to 63 A and what is held count as
 * fast.
 *
 * @source [ASNZS3000-5.7] 5.7.2
 */
export const DISCONNECT_SECONDS = { fast: 0.4, other: 5 } as const

/** Up to which rating a socket counts as fast [A]. @source [ASNZS3000-5.7] 5.7.2 */
export const FAST_SOCKET_AMPS = 63
