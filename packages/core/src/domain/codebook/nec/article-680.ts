import type { Printed } from '../printed.ts'
import { circularMils } from './chapter-9-table-8.ts'
import { earthConductor } from './table-250-122.ts'

/** Editions whose figures for tubs are told apart. */
export type TubEdition = '2011' | '2017' | '2020' | '2023'

/** One figure of the article, by edition; an edition that was not found is absent. */
export interface TubFigure {
  readonly clause: string
  readonly unit: 'ft' | 'in' | 'A' | 'V' | '%' | 'AWG' | 'mA'
  readonly by: Readonly<
    Partial<Record<TubEdition, readonly [value: number, read: Printed['read']]>>
  >
}

const since2017 = (
  clause: string,
  unit: TubFigure['unit'],
  value: number,
  read: readonly [in2017: Printed['read'], in2020: Printed['read'], in2023: Printed['read']],
): TubFigure => ({
  clause,
  unit,
  by: { '2017': [value, read[0]], '2020': [value, read[1]], '2023': [value, read[2]] },
})

/**
 * Distances from the inside wall of the tub along the floor, heights above the highest water, unless
 * the name says otherwise.
 *
 * 2020 was read whole, in a state's reprint; of 2017 and 2023 the parts that are marked so.
 *
 * @source [NEC-680] 680.5 to 680.44; [NEC-680.26] bonding
 */
export const ARTICLE_680 = {
  disconnectLeast: since2017('680.13', 'ft', 5, ['memory', 'page', 'memory']),
  disconnectReachRoundBarrier: since2017('680.13', 'ft', 5, ['memory', 'page', 'memory']),
  withinSightMost: since2017('article 100, from 2023 110.29', 'ft', 50, ['page', 'page', 'page']),
  emergencySwitchLeast: since2017('680.41', 'ft', 5, ['page', 'page', 'page']),
  outdoorReceptacleLeast: since2017('680.22(A)(1) by 680.42', 'ft', 6, [
    'memory',
    'page',
    'memory',
  ]),
  outdoorReceptacleMost: since2017('680.22(A)(1) by 680.42', 'ft', 20, [
    'memory',
    'page',
    'memory',
  ]),
  outdoorReceptacleHeightMost: since2017('680.22(A)(1), above the floor', 'ft', 6.5, [
    'memory',
    'page',
    'memory',
  ]),
  indoorReceptacleLeast: since2017('680.43(A)', 'ft', 6, ['page', 'page', 'memory']),
  indoorReceptacleMost: since2017('680.43(A)', 'ft', 10, ['page', 'page', 'memory']),
  circulationReceptacleLeast: since2017('680.22(A)(2)', 'ft', 6, ['page', 'page', 'memory']),
  otherReceptacleLeast: since2017('680.22(A)(3), 680.43(A)(1)', 'ft', 6, [
    'page',
    'page',
    'memory',
  ]),
  outdoorGroundFaultWithin: since2017('680.22(A)(4)', 'ft', 20, ['memory', 'page', 'memory']),
  indoorGroundFaultWithin: since2017('680.43(A)(2)', 'ft', 10, ['memory', 'page', 'memory']),
  outdoorGroundFaultAmps: {
    clause: '680.22(A)(4)',
    unit: 'A',
    by: { '2017': [20, 'memory'], '2020': [20, 'page'], '2023': [60, 'memory'] },
  },
  outdoorGroundFaultVolts: {
    clause: '680.22(A)(4)',
    unit: 'V',
    by: { '2017': [125, 'memory'], '2020': [125, 'page'], '2023': [250, 'memory'] },
  },
  indoorGroundFaultAmps: {
    clause: '680.43(A)(2)',
    unit: 'A',
    by: { '2017': [30, 'memory'], '2020': [30, 'page'] },
  },
  luminaireWithin: since2017('680.22(B)(1), 680.43(B)(1)', 'ft', 5, ['page', 'page', 'memory']),
  outdoorLuminaireHeight: since2017('680.22(B)(1)', 'ft', 12, ['page', 'page', 'memory']),
  indoorLuminaireHeight: since2017('680.43(B)(1)(a)', 'ft', 12, ['page', 'page', 'memory']),
  indoorLuminaireHeightGroundFault: since2017('680.43(B)(1)(b)', 'ft', 7.5, [
    'page',
    'page',
    'memory',
  ]),
  switchLeast: since2017('680.22(C), 680.43(C)', 'ft', 5, ['memory', 'page', 'memory']),
  outdoorCordMost: since2017('680.42(A)(2)', 'ft', 15, ['memory', 'page', 'memory']),
  indoorCordedUnitMost: since2017('680.43 exception 1', 'A', 20, ['memory', 'page', 'memory']),
  poolCordMost: since2017('680.8(A)', 'ft', 3, ['memory', 'page', 'memory']),
  /** Gone from the edition of 2014 on: later ones allow liquidtight conduit of any length. */
  flexibleConduitMost: { clause: '680.42(A)(1)', unit: 'ft', by: { '2011': [6, 'page'] } },
  bondWithin: since2017('680.43(D), 680.26(B)(7)', 'ft', 5, ['memory', 'page', 'memory']),
  bondingConductor: since2017('680.26(B), 680.43(E)(3)', 'AWG', 8, ['memory', 'page', 'page']),
  rimAboveSurfaces: since2017('680.42(B)', 'in', 28, ['page', 'page', 'memory']),
  rimSurfacesWithin: since2017('680.42(B)', 'in', 30, ['page', 'page', 'memory']),
  earthConductorLeast: since2017('680.21(A)(1), from 2023 680.7(A)', 'AWG', 12, [
    'memory',
    'page',
    'page',
  ]),
  heaterPartMost: since2017('680.10', 'A', 48, ['memory', 'page', 'page']),
  heaterBreakerMost: since2017('680.10', 'A', 60, ['memory', 'page', 'page']),
  heaterBranchPercent: since2017('680.10', '%', 125, ['memory', 'page', 'page']),
  fieldHeaterExemptAbove: {
    clause: '680.44(B)',
    unit: 'A',
    by: { '2017': [50, 'memory'], '2020': [50, 'page'] },
  },
  fieldVoltsExemptAbove: {
    clause: '680.44(B)',
    unit: 'V',
    by: { '2017': [250, 'memory'], '2020': [250, 'page'] },
  },
  classAToEarthMost: { clause: '680.5(B)', unit: 'V', by: { '2023': [150, 'page'] } },
  classABreakerMost: { clause: '680.5(B)', unit: 'A', by: { '2023': [60, 'page'] } },
  specialPurposeVoltsMost: { clause: '680.5(C)', unit: 'V', by: { '2023': [480, 'page'] } },
  specialPurposeTripMost: { clause: '680.5(C)', unit: 'mA', by: { '2023': [20, 'page'] } },
  junctionBoxAboveDeck: since2017('680.24(A)(2)', 'in', 4, ['memory', 'page', 'memory']),
  junctionBoxAboveWater: since2017('680.24(A)(2)', 'in', 8, ['memory', 'page', 'memory']),
  junctionBoxLeast: since2017('680.24(A)(2)', 'ft', 4, ['memory', 'page', 'memory']),
  /** Of a bathtub that is emptied after each use: not of a tub. */
  bathtubGroundFaultWithin: { clause: '680.71', unit: 'ft', by: { '2017': [6, 'page'] } },
  bathtubReceptacleMost: { clause: '680.71', unit: 'A', by: { '2017': [30, 'page'] } },
} as const satisfies Readonly<Record<string, TubFigure>>

export type TubFigureName = keyof typeof ARTICLE_680

/**
 * One figure in one edition.
 *
 * @returns in the unit of the figure; undefined where the edition has none, or it was not found
 * @source [NEC-680] article 680
 */
export const tubFigure = (name: TubFigureName, edition: TubEdition): number | undefined =>
  (ARTICLE_680[name] as TubFigure).by[edition]?.[0]

/** Whether users need a switch that stops the pumps; a one-family dwelling does not. @source [NEC-680] 680.41 */
export const emergencySwitchNeeded = (place: 'one-family dwelling' | 'other'): boolean =>
  place === 'other'

/** The supply of a tub, as its ground-fault rule asks. */
export interface TubSupply {
  readonly edition: '2017' | '2020' | '2023'
  readonly unit: 'listed, protection integral and marked' | 'listed' | 'field-assembled'
  readonly phases: 1 | 3
  /** Between lines [V]. */
  readonly volts: number
  readonly voltsToEarth: number
  /** Of the heater alone [A]. */
  readonly heater: number
  readonly breaker: number
}

export type TubProtection = 'none more' | 'class A' | 'special purpose'

const before2023 = ({ unit, phases, volts, heater }: TubSupply): TubProtection =>
  unit === 'field-assembled' && (phases === 3 || volts > 250 || heater > 50)
    ? 'none more'
    : 'class A'

/**
 * Ground-fault protection that the outlet of a tub needs.
 *
 * Up to 2020 a tub assembled in the field is free with three phases, over 250 V or with a heater of
 * more than 50 A; from 2023 it is not.
 *
 * @returns undefined for what was not found: from 2023, over 60 A up to 150 V to earth, and over 480 V
 * @source [NEC-680] 680.44, from 2023 with 680.5(B) and (C)
 */
export function tubProtection(supply: TubSupply): TubProtection | undefined {
  if (supply.unit === 'listed, protection integral and marked') return 'none more'
  if (supply.edition !== '2023') return before2023(supply)
  if (supply.voltsToEarth > 150) return supply.volts <= 480 ? 'special purpose' : undefined
  return supply.breaker <= 60 ? 'class A' : undefined
}

/**
 * Parts into which the elements of a heater are divided, each with its own breaker.
 *
 * @param amps - of the whole heater by its plate [A]
 * @source [NEC-680] 680.10
 */
export const heaterParts = (amps: number): number => Math.max(1, Math.ceil(amps / 48 - 1e-9))

// The figure `earthConductorLeast`, as the tables write a size.
const LEAST_EARTH = '12 AWG'

/**
 * The smallest earth conductor to the equipment of a tub, copper and insulated.
 *
 * @param breaker - [A], up to 1200
 * @returns a size as the tables write it; undefined past table 250.122
 * @source [NEC-680] 680.21(A)(1), from 2023 680.7(A); [NEC-250.122] table 250.122
 */
export function tubEarthConductor(breaker: number): string | undefined {
  const printed = earthConductor(breaker, 'copper')
  if (printed === undefined) return undefined
  const least = circularMils(LEAST_EARTH) ?? Number.POSITIVE_INFINITY
  return (circularMils(printed) ?? 0) < least ? LEAST_EARTH : printed
}
