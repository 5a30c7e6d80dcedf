import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'HD 60364-4-41',
  edition: '2017',
  clause: '411.3.2 with table 41.1',
  read: 'page',
}

/** How the installation is earthed: by the supply, or by an electrode of its own. */
export type Earthing = 'TN' | 'TT'

/**
 * Up to which rating a final circuit counts as one that must be off fast [A].
 *
 * @source [HD60364-41] 411.3.2.2
 */
export const FAST_UP_TO = { 'with sockets': 63, 'fixed equipment only': 32 } as const

/**
 * Longest time a fault may last at 230 V to earth [s].
 *
 * @source [HD60364-41] 411.3.2.2 to 411.3.2.4
 */
export const DISCONNECT_SECONDS: Readonly<
  Record<Earthing, { readonly fast: number; readonly other: number }>
> = {
  TN: { fast: 0.4, other: 5 },
  TT: { fast: 0.2, other: 1 },
}

/** Greatest rated residual current for additional protection [mA]. @source [HD60364-41] 415.1.1 */
export const ADDITIONAL_MILLIAMPS = 30

/**
 * Touch voltage that may stand [V]: an electrode's ohms times the rated residual current stay
 * below.
 *
 * @source [HD60364-41] 411.5.3
 */
export const TOUCH_VOLTS = 50

/** Where the loop behind a breaker, and the touch voltage behind a device, are limited. */
export const LOOP_TN: Printed = {
  standard: 'HD 60364-4-41',
  edition: '2017',
  clause: '411.4.4',
  read: 'page',
}
export const LOOP_TT: Printed = {
  standard: 'HD 60364-4-41',
  edition: '2017',
  clause: '411.5.3',
  read: 'page',
}

/** Nominal volts to earth of the supplies that are covered here [V]. */
const VOLTS_TO_EARTH = 230

/**
 * Greatest loop behind a breaker that is sure to open at once at so many amps.
 *
 * @param amps - at which it opens in time, above 0 [A]
 * @returns [Ω]
 * @source [HD60364-41] 411.4.4
 */
export const greatestLoopAt = (amps: number): number => VOLTS_TO_EARTH / amps

/**
 * Greatest resistance of an electrode behind a residual-current device.
 *
 * @param milliamps - rated residual current, above 0
 * @returns [Ω]
 * @source [HD60364-41] 411.5.3
 */
export const greatestElectrode = (milliamps: number): number => (1000 * TOUCH_VOLTS) / milliamps
