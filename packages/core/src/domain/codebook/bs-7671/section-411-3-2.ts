import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'BS 7671',
  edition: '2018',
  clause: '411.3.2 with table 41.1',
  read: 'page',
}

/** How the installation is earthed: by the supply, or by an electrode of its own. */
export type Earthing = 'TN' | 'TT'

/**
 * Up to which rating a final circuit counts as one that must be off fast [A].
 *
 * @source [BS7671-411.3.2]
 */
export const FAST_UP_TO = { 'with sockets': 63, 'fixed equipment only': 32 } as const

/**
 * Longest time a fault may last at 230 V to earth [s].
 *
 * @source [BS7671-411.3.2] tables 41.1, 411.3.2.3, .4
 */
export const DISCONNECT_SECONDS: Readonly<
  Record<Earthing, { readonly fast: number; readonly other: number }>
> = {
  TN: { fast: 0.4, other: 5 },
  TT: { fast: 0.2, other: 1 },
}

/**
 * Longest time a fault may last in a final circuit, 230 V to earth.
 *
 * @param rating - of its breaker [A]
 * @returns [s]
 * @source [BS7671-411.3.2] table 41.1
 */
export const disconnectSeconds = (
  earthing: Earthing,
  serves: keyof typeof FAST_UP_TO,
  rating: number,
): number => DISCONNECT_SECONDS[earthing][rating <= FAST_UP_TO[serves] ? 'fast' : 'other']
