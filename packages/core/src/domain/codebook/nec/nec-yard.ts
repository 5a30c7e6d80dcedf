import { atLeast, atMost } from '../../../base/compare.ts'
import { metres, metresFromFeet } from '../../../base/quantity.ts'
import { sizeFrom } from '../../conductor.ts'
import type { Cited } from '../book.ts'
import type { Printed } from '../printed.ts'
import type { LightBook, Nearest, YardBook, YardPlace } from '../yard-book.ts'
import type { TubFigureName } from './article-680.ts'
import { ARTICLE_680 } from './article-680.ts'

type Edition = YardPlace['edition']

/** Exact by definition. @source [NIST-SP811] app. B.8 */
const METRES_OF = {
  ft: metresFromFeet,
  in: (inches: number) => metres(inches * 0.0254),
} as const

/** A figure of the article in metres. */
function figure(name: TubFigureName, edition: Edition): Cited<number> | undefined {
  const { clause, unit, by } = ARTICLE_680[name]
  const found = (by as Readonly<Partial<Record<Edition, readonly [number, Printed['read']]>>>)[
    edition
  ]
  if (!found || (unit !== 'ft' && unit !== 'in')) return undefined
  const [value, read] = found
  // The edition of 2020 moved what was 680.12.
  const printed = edition === '2017' && clause === '680.13' ? '680.12' : clause
  return { value: METRES_OF[unit](value), by: { standard: 'NEC', edition, clause: printed, read } }
}

const atLeastFar = (name: TubFigureName, edition: Edition): Nearest | undefined => {
  const found = figure(name, edition)
  return found && { kind: 'distance', breaksBelow: found, holdsFrom: found, between: 'not-covered' }
}

function convenience({ edition, setting }: YardPlace): YardBook['convenience'] {
  const least = figure(
    setting === 'indoors' ? 'indoorReceptacleLeast' : 'outdoorReceptacleLeast',
    edition,
  )
  const most = figure(
    setting === 'indoors' ? 'indoorReceptacleMost' : 'outdoorReceptacleMost',
    edition,
  )
  return least && most && { least, most }
}

/**
 * Nothing near the tub below 12 ft outdoors; indoors less, down to 7 ft 6 in with protection, and
 * below that only fittings sealed for it.
 *
 * Left out: outdoors, lights that were there before the tub, and protection from 5 to 10 ft, which no
 * page gave; lights at extra-low voltage.
 *
 * @source [NEC-680] 680.22(B), 680.43(B)
 */
function lights({ edition, setting }: YardPlace): LightBook | undefined {
  const within = figure('luminaireWithin', edition)
  const isIndoors = setting === 'indoors'
  const free = figure(isIndoors ? 'indoorLuminaireHeight' : 'outdoorLuminaireHeight', edition)
  const low = isIndoors ? figure('indoorLuminaireHeightGroundFault', edition) : free
  if (!within || !free || !low) return undefined
  return {
    turnsAt: { distance: [within.value], height: [low.value, free.value] },
    at: ({ distance, height }) => {
      const isNear = atMost(distance, within.value)
      const most = { over: 'water', within: within.value, below: free.value, by: free.by } as const
      const isClear = !isNear || atLeast(height, free.value)
      if (!isIndoors) return { isClear, asks: 'absence', ...most }
      return isClear || atLeast(height, low.value)
        ? { isClear, asks: 'protection', ...most }
        : { isClear, asks: 'sealed', ...most, below: low.value, by: low.by }
    },
  }
}

function ground({ edition }: YardPlace): YardBook['ground'] {
  const rim = figure('rimAboveSurfaces', edition)
  const near = figure('rimSurfacesWithin', edition)
  // The edition of 2011 has it too, which a page of its editors names.
  const indoors: Printed = {
    standard: 'NEC',
    edition,
    clause: '680.43, exception 2',
    read: 'memory',
  }
  return rim && near && { rim, surfacesWithin: near.value, indoors }
}

function bond(edition: Edition): YardBook['bond'] {
  const { clause, by } = ARTICLE_680.bondingConductor
  const [gauge, read] = by[edition] ?? []
  const size = gauge === undefined ? undefined : sizeFrom(`${gauge} AWG`)
  return size && read && { value: size, by: { standard: 'NEC', edition, clause, read } }
}

/**
 * The place around a tub in the United States.
 *
 * Of outlets those of 15 and 20 A at 125 V are meant: 2023 has the same for larger ones outdoors.
 * Indoors the length of a cord is that of cords outdoors, as listed tubs are made.
 *
 * @source [NEC-680] 680.13, 680.22, 680.41 to 680.43; [NEC-680.26] bonding
 */
export function necYard(place: YardPlace): YardBook {
  const { edition, setting } = place
  const sight = figure('withinSightMost', edition)
  const metal = figure('bondWithin', edition)
  const stop = figure('emergencySwitchLeast', edition)
  return {
    disconnect: {
      near: atLeastFar('disconnectLeast', edition),
      sight: sight && { ...sight, isExcusedByLock: false },
    },
    convenience: convenience(place),
    receptacle: atLeastFar('otherReceptacleLeast', edition),
    receptacleProtected: figure(
      setting === 'indoors' ? 'indoorGroundFaultWithin' : 'outdoorGroundFaultWithin',
      edition,
    ),
    cord: figure('outdoorCordMost', edition),
    lights: lights(place),
    wallSwitch: atLeastFar('switchLeast', edition),
    metal: metal && { ...metal, isForAuthority: false },
    bond: bond(edition),
    ground: ground(place),
    emergencyStop: stop && { least: stop.value, by: stop.by },
  }
}
