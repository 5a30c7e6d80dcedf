import type { Cited } from '../book.ts'
import type { YardBook } from '../yard-book.ts'
import type { Zones } from '../zones.ts'
import { lightsByZone, outsideFirst } from '../zones.ts'
import { PRINTED, ZONE_METRES } from './part-7-702.ts'

const reach = (value: number): Cited<number> => ({ value, by: PRINTED })

const BOTH = reach(ZONE_METRES.first + ZONE_METRES.second)
const ZONES: Zones = {
  first: reach(ZONE_METRES.first),
  both: BOTH,
  height: ZONE_METRES.height,
}

/**
 * The place around a tub in Europe in general, by the zones of a basin; nations deviate.
 *
 * Not found: what is joined to the bonding, how far a switch may be, an outlet that has to be there,
 * cords, the bonding conductor, ground, a stop.
 *
 * @source [HD60364-702] 702.32, 702.410.3.101
 */
export const hdYard = (): YardBook => ({
  disconnect: { near: outsideFirst(ZONES) },
  receptacle: outsideFirst(ZONES),
  receptacleProtected: BOTH,
  lights: lightsByZone(ZONES),
  wallSwitch: outsideFirst(ZONES),
})
