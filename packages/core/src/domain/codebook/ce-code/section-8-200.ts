import type { Printed } from '../printed.ts'

/** The calculated load of a single dwelling [W], its areas [m²]. */
export const CE_RULE_8_200: Printed & {
  readonly basic: number
  readonly basicArea: number
  readonly perFurtherArea: number
  readonly range: number
  readonly rangeUpTo: number
  readonly rangeOverPercent: number
  readonly otherAbove: number
  readonly otherPercent: number
  readonly otherFirstWithoutRange: number
  readonly leastLarge: number
  readonly leastSmall: number
  readonly leastSplit: number
} = {
  standard: 'CE Code',
  edition: '2021 and 2024',
  clause: 'rule 8-200 1)',
  read: 'page',
  basic: 5000,
  basicArea: 90,
  perFurtherArea: 1000,
  range: 6000,
  rangeUpTo: 12_000,
  rangeOverPercent: 40,
  otherAbove: 1500,
  otherPercent: 25,
  otherFirstWithoutRange: 6000,
  leastLarge: 24_000,
  leastSmall: 14_400,
  leastSplit: 80,
}

/** What a dwelling has [W]. */
export interface CeDwelling {
  /** Living area by rule 8-110: basements above 1.8 m at 75 % [m²]. */
  readonly area: number
  /** Floor area without the basement [m²], for the least load. */
  readonly floorArea: number
  /** The larger of heating, its demand factor taken already, and cooling. */
  readonly heatingOrCooling: number
  /** Rating of a single range; 0 for none. */
  readonly range: number
  /** Tankless water heaters, heaters of pools and tubs, steamers, car chargers: all of each. */
  readonly whole: readonly number[]
  /** Other loads; those up to 1500 W are in the basic load. */
  readonly others: readonly number[]
}

const sum = (loads: readonly number[]): number => loads.reduce((total, each) => total + each, 0)

/** 5000 W for the first 90 m², 1000 W for each 90 m² more or part of it. @source [CEC-8-200] i) and ii) */
export function ceBasicLoad(area: number): number {
  const { basic, basicArea, perFurtherArea } = CE_RULE_8_200
  const further = Math.ceil(Math.max(0, area - basicArea) / basicArea - 1e-9)
  return basic + perFurtherArea * Math.max(0, further)
}

/** A single range; nothing for none. @source [CEC-8-200] iv) */
export const ceRangeLoad = (rating: number): number =>
  rating <= 0
    ? 0
    : CE_RULE_8_200.range +
      (Math.max(0, rating - CE_RULE_8_200.rangeUpTo) * CE_RULE_8_200.rangeOverPercent) / 100

/** Loads above 1500 W that are named nowhere else. @source [CEC-8-200] vii) */
export function ceOtherLoads(others: readonly number[], range: number): number {
  const { otherAbove, otherPercent, otherFirstWithoutRange } = CE_RULE_8_200
  const combined = sum(others.filter(each => each > otherAbove))
  const first = range > 0 ? 0 : Math.min(combined, otherFirstWithoutRange)
  return first + ((combined - first) * otherPercent) / 100
}

/**
 * Calculated load of the service of a single dwelling, before its least load.
 *
 * @returns [W]
 * @source [CEC-8-200] rule 8-200 1) a)
 */
export const ceItemisedLoad = (dwelling: CeDwelling): number =>
  ceBasicLoad(dwelling.area) +
  dwelling.heatingOrCooling +
  ceRangeLoad(dwelling.range) +
  sum(dwelling.whole) +
  ceOtherLoads(dwelling.others, dwelling.range)

/**
 * Calculated load of the service of a single dwelling.
 *
 * The heater of a tub counts whole. Row houses and chargers under an energy manager are left out.
 *
 * @returns [W], not less than 24 kW, or 14.4 kW below 80 m² of floor
 * @source [CEC-8-200] rule 8-200 1) a) and b)
 */
export const ceDwellingLoad = (dwelling: CeDwelling): number =>
  Math.max(
    ceItemisedLoad(dwelling),
    dwelling.floorArea >= CE_RULE_8_200.leastSplit
      ? CE_RULE_8_200.leastLarge
      : CE_RULE_8_200.leastSmall,
  )
