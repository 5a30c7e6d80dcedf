import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'HD 60364-7-702',
  edition: '2010',
  clause: '702.32 and 702.410.3.101',
  read: 'memory',
}

/**
 * How far the zones reach [m]: level from the rim, and up from where people stand.
 *
 * @source [HD60364-702]
 */
export const ZONE_METRES = { first: 2, second: 1.5, height: 2.5 } as const

/** Greatest extra-low voltage in the two inner zones [V]. @source [HD60364-702] 702.410.3.101.1 */
export const SELV_VOLTS = {
  0: { alternating: 12, direct: 30 },
  1: { alternating: 25, direct: 60 },
} as const

/**
 * Greatest rated residual current of what has full voltage in zone 2 [mA].
 *
 * @source [HD60364-702] 702.410.3.101.3
 */
export const ZONE_2_MILLIAMPS = 30

/**
 * Least degree of protection against water, by zone: indoors, outdoors, under jets.
 *
 * @source [HD60364-702] 702.512.2
 */
export const ZONE_IP = {
  0: { indoors: 'IPX8', outdoors: 'IPX8', jets: 'IPX8' },
  1: { indoors: 'IPX4', outdoors: 'IPX4', jets: 'IPX5' },
  2: { indoors: 'IPX2', outdoors: 'IPX4', jets: 'IPX5' },
} as const
