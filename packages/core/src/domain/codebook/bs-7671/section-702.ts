import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'BS 7671',
  edition: '2018',
  clause: 'section 702',
  read: 'page',
}

/** 0 the basin itself, 1 around it, 2 around that. */
export type PoolZone = 0 | 1 | 2

/**
 * How far the zones reach [m]: level from the rim, and up from where people stand.
 *
 * @source [BS7671-702] 702.32
 */
export const ZONE_METRES = { first: 2, second: 1.5, height: 2.5 } as const

/** Where something is by a basin [m]. */
export interface ByBasin {
  /** Level from the rim, 0 or less inside. */
  readonly fromRim: number
  /** Over the floor on which people stand. */
  readonly above: number
  /** Of the rim over that floor: 0 for a sunken basin, the wall of a tub that stands. */
  readonly rim: number
}

/**
 * The zone of a point by a basin; a border belongs to the inner zone.
 *
 * Without diving boards or chutes, and without partitions that would end a zone.
 *
 * @returns undefined outside all zones
 * @source [BS7671-702] 702.32
 */
export function zoneAt({ fromRim, above, rim }: ByBasin): PoolZone | undefined {
  if (fromRim <= 0 && above <= rim) return 0
  if (above > ZONE_METRES.height) return undefined
  if (fromRim <= ZONE_METRES.first) return 1
  return fromRim <= ZONE_METRES.first + ZONE_METRES.second ? 2 : undefined
}

/** What may stand in one zone. */
export interface ZoneRule {
  /**
   * Greatest extra-low voltage where nothing else is allowed [V]; undefined where it is one of
   * several.
   */
  readonly selv: { readonly alternating: number; readonly direct: number } | undefined
  /** Greatest rated residual current where a supply of full voltage is allowed [mA]. */
  readonly residualMilliamps: number | undefined
  readonly sockets: boolean
  /**
   * Least degree of protection against water: indoors, outdoors, and where jets are used to clean.
   */
  readonly ip: { readonly indoors: string; readonly outdoors: string; readonly jets: string }
}

/**
 * By zone. The source of the extra-low voltage stands outside all of them; in zone 2 it may stand
 * where a 30 mA device protects its supply.
 *
 * Equipment made for the place, behind its own cover (702.55.4), is not in this table.
 *
 * @source [BS7671-702] 702.410.3.4, 702.512.2, 702.53
 */
export const ZONE_RULES: Readonly<Record<PoolZone, ZoneRule>> = {
  0: {
    selv: { alternating: 12, direct: 30 },
    residualMilliamps: undefined,
    sockets: false,
    ip: { indoors: 'IPX8', outdoors: 'IPX8', jets: 'IPX8' },
  },
  1: {
    selv: { alternating: 25, direct: 60 },
    residualMilliamps: undefined,
    sockets: false,
    ip: { indoors: 'IPX4', outdoors: 'IPX4', jets: 'IPX5' },
  },
  2: {
    selv: undefined,
    residualMilliamps: 30,
    sockets: true,
    ip: { indoors: 'IPX2', outdoors: 'IPX4', jets: 'IPX5' },
  },
}

/**
 * Zones whose metal is joined, all that people can touch, with the protective conductors.
 *
 * @source [BS7671-702] 702.415.2
 */
export const BONDED_ZONES: readonly PoolZone[] = [0, 1, 2]

/** How a supply is earthed. */
export type SupplyEarthing = 'TN-S' | 'TN-C-S' | 'TT'

/**
 * Whether the designer has to decide on the earth of the supply: a broken neutral of the network
 * lifts it where neutral and earth are one (PME). Recommended there: an electrode of so few ohms on
 * the bonding.
 *
 * @source [BS7671-702] note to 702.410.3.4.3
 */
export const EARTH_QUESTION: Readonly<
  Record<SupplyEarthing, { readonly electrodeOhms: number } | undefined>
> = {
  'TN-S': undefined,
  'TN-C-S': { electrodeOhms: 20 },
  TT: undefined,
}

/**
 * Which section a tub falls under by where it stands.
 *
 * @source [BS7671-702] as the guidance on special locations has it
 */
export const SECTION_OF_PLACE = { outdoors: 702, 'in a room': 701 } as const
