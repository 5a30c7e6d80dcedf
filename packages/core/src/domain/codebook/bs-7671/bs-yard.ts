import type { Cited } from '../book.ts'
import type { Printed } from '../printed.ts'
import type { Nearest, YardBook, YardPlace } from '../yard-book.ts'
import type { Zones } from '../zones.ts'
import { lightsByZone, outsideFirst } from '../zones.ts'
import { EARTH_QUESTION, PRINTED, ZONE_METRES } from './section-702.ts'

const at = (clause: string): Printed => ({ ...PRINTED, clause })
const reach = (value: number, clause: string): Cited<number> => ({ value, by: at(clause) })

const INNER = ZONE_METRES.first
const OUTER = ZONE_METRES.first + ZONE_METRES.second

const ZONES: Zones = {
  first: reach(INNER, '702.32'),
  both: reach(OUTER, '702.32'),
  height: ZONE_METRES.height,
}

/** In a room another section counts, which was not read: what is too near here is so there too. */
const IN_A_ROOM: Nearest = { kind: 'zone', breaksBelow: ZONES.first, between: 'not-covered' }

/**
 * The place around a tub in the United Kingdom: outdoors by the zones of a basin.
 *
 * Whether that section is meant for tubs is disputed; guidance says so outdoors. Not found: how far a
 * switch may be, an outlet that has to be there, cords, the bonding conductor, ground, a stop.
 *
 * @source [BS7671-702] 702.32, 702.53, 702.415.2
 */
export function bsYard({ setting }: YardPlace): YardBook {
  const isOutdoors = setting === 'outdoors'
  const nearest = isOutdoors ? outsideFirst(ZONES) : IN_A_ROOM
  return {
    disconnect: { near: nearest },
    receptacle: nearest,
    receptacleProtected: isOutdoors ? reach(OUTER, '702.410.3.4, 702.53') : undefined,
    lights: isOutdoors ? lightsByZone(ZONES) : undefined,
    wallSwitch: nearest,
    metal: isOutdoors ? { ...reach(OUTER, '702.415.2'), isForAuthority: false } : undefined,
    combinedEarth: EARTH_QUESTION['TN-C-S'] && {
      value: EARTH_QUESTION['TN-C-S'].electrodeOhms,
      by: at('702.410.3.4.3, note'),
    },
  }
}
