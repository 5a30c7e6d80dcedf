import { atMost } from '../../../base/compare.ts'
import type { Cited } from '../book.ts'
import type { Nearest, YardBook } from '../yard-book.ts'
import { BONDED_METAL, POOL_ZONE_METRES, PRINTED } from './pools.ts'

const POOL_ZONES: Cited<number> = {
  value: POOL_ZONE_METRES.first + POOL_ZONE_METRES.second,
  by: { ...PRINTED, clause: '6.3.2' },
}

/** Outside the zones of a pool it is outside those of a tub; nearer, nobody found what counts. */
const OUTSIDE: Nearest = { kind: 'pool', holdsFrom: POOL_ZONES, between: 'not-covered' }

/**
 * The place around a tub in Australia and New Zealand.
 *
 * The zones of a small spa of its own were not found, nor heights, nor what may stand in zone 2.
 *
 * @source [ASNZS3000-6.3] 6.3.2 and 5.6.2.6
 */
export const asYard = (): YardBook => ({
  disconnect: { near: OUTSIDE },
  receptacle: OUTSIDE,
  lights: {
    turnsAt: { distance: [POOL_ZONES.value], height: [] },
    at: ({ distance }) => ({
      isClear: !atMost(distance, POOL_ZONES.value),
      asks: 'pool',
      over: undefined,
      within: POOL_ZONES.value,
      below: 0,
      by: POOL_ZONES.by,
    }),
  },
  wallSwitch: OUTSIDE,
  metal: {
    value: BONDED_METAL.level,
    by: { ...PRINTED, clause: '5.6.2.6' },
    isForAuthority: false,
  },
})
