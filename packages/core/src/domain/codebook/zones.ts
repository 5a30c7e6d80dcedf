import { atMost } from '../../base/compare.ts'
import type { Cited } from './book.ts'
import type { LightBook, Nearest } from './yard-book.ts'

/** How far the two zones around a basin reach, level and one after the other, and how high [m]. */
export interface Zones {
  readonly first: Cited<number>
  readonly both: Cited<number>
  readonly height: number
}

const FREEBOARD = 0.15 // [m] of the rim over the highest water; common practice, no source
const RIM_MOST = 1.5 // [m] over where people stand: what is higher counts as this; common practice, no source

/** Outside the inner zone; the border belongs to it. */
export const outsideFirst = ({ first }: Zones): Nearest => ({
  kind: 'zone',
  breaksBelow: first,
  holdsFrom: first,
  between: 'not-covered',
})

/** Full voltage not in the inner zone, and behind a 30 mA device in the outer one. */
export function lightsByZone({ first, both, height: top }: Zones): LightBook {
  return {
    turnsAt: { distance: [first.value, both.value], height: [top] },
    at: ({ distance, height, rim }) => {
      const above = height + Math.max(0, Math.min(rim, RIM_MOST) - FREEBOARD)
      const isUnder = atMost(above, top)
      const isInner = isUnder && atMost(distance, first.value)
      const { value: within, by } = isInner ? first : both
      return {
        isClear: !isUnder || !atMost(distance, both.value),
        asks: isInner ? 'absence' : 'protection',
        over: 'floor',
        within,
        below: top,
        by,
      }
    },
  }
}
