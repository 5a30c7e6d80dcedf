import type { SERVICE_LOADS } from '../supply/yard.ts'
import type { Codebook } from './book.ts'
import { CE_RULE_8_200, ceDwellingLoad } from './ce-code/section-8-200.ts'
import { existingDwellingLoad, SECTION_220_83 } from './nec/section-220-83.ts'
import type { Printed } from './printed.ts'

export type ServiceKind = (typeof SERVICE_LOADS)[number]

/** A house by what is fixed in it. */
export interface House {
  /** Living area [m²]. */
  readonly area: number
  /** Fixed loads by their plates [VA]; the tub is among them. */
  readonly loads: readonly { readonly kind: ServiceKind; readonly va: number }[]
}

/** What a house counts for [VA], by the stricter and by the more lenient reading. */
export interface HouseDemand {
  readonly strict: number
  readonly lenient: number
  readonly by: Printed
}

const SQUARE_METRES_PER_SQUARE_FOOT = 0.09290304 // exact by definition @source [NIST-SP811] app. B.8

/** Two circuits for small appliances and one for the laundry. @source [NEC-220.82] 220.82(B) */
const CIRCUITS = 3

const sum = (all: readonly number[]): number => all.reduce((total, each) => total + each, 0)

const of = ({ loads }: House, ...kinds: readonly ServiceKind[]): readonly number[] =>
  loads.flatMap(each => (kinds.includes(each.kind) ? [each.va] : []))

/** Heating and cooling never run at one time: the larger counts. */
const climate = (house: House): number =>
  Math.max(sum(of(house, 'heating')), sum(of(house, 'cooling')))

/**
 * An existing dwelling with its tub, by the optional calculation.
 *
 * The section names no place for heating and cooling that are there already, nor for car chargers:
 * the stricter reading counts them whole, the other among the rest.
 *
 * @source [NEC-220.83] 220.83(A) and (B)
 */
function necDemand(house: House): HouseDemand {
  const area = house.area / SQUARE_METRES_PER_SQUARE_FOOT
  const plates = of(house, 'range', 'dryer', 'water-heater', 'tub', 'other')
  const apart = climate(house) + sum(of(house, 'vehicle'))
  return {
    strict: existingDwellingLoad({ area, circuits: CIRCUITS, plates }, apart),
    lenient: existingDwellingLoad({ area, circuits: CIRCUITS, plates: [...plates, apart] }),
    by: SECTION_220_83,
  }
}

/**
 * A single dwelling with its tub, which counts whole, pumps and all.
 *
 * The living area stands for the floor area too. Demand factors of heating are left out: it counts
 * whole.
 *
 * @source [CEC-8-200] rule 8-200 1)
 */
function ceDemand(house: House): HouseDemand {
  const [range = 0, ...ranges] = of(house, 'range').toSorted((a, b) => b - a)
  const counts = ceDwellingLoad({
    area: house.area,
    floorArea: house.area,
    heatingOrCooling: climate(house),
    range,
    whole: of(house, 'tub', 'vehicle'),
    others: [...ranges, ...of(house, 'dryer', 'water-heater', 'other')],
  })
  return { strict: counts, lenient: counts, by: CE_RULE_8_200 }
}

const DEMANDS: Readonly<Partial<Record<Codebook['id'], (house: House) => HouseDemand>>> = {
  nec: necDemand,
  'ce-code': ceDemand,
}

/** How a book counts what a house may draw; undefined where it has no such calculation here. */
export const demandBy = ({
  id,
}: Pick<Codebook, 'id'>): ((house: House) => HouseDemand) | undefined => DEMANDS[id]
