import type { Printed } from '../printed.ts'

/** Heating and cooling by the share of it that counts. */
export type HeatingKind =
  | 'cooling'
  | 'heat pump'
  | 'supplementary or central heat'
  | 'fewer than four heaters'
  | 'four heaters or more'
  | 'storage heat'

/** The optional calculation of a dwelling; its service or feeder is of 100 A or more. */
export const SECTION_220_82: Printed & {
  readonly unit: string
  readonly perSquareFoot: number
  readonly perCircuit: number
  readonly first: number
  readonly restPercent: number
  readonly leastService: number
  readonly heatingPercent: Readonly<Record<HeatingKind, number>>
} = {
  standard: 'NEC',
  edition: '2005 and 2017',
  clause: '220.82',
  read: 'page',
  unit: 'VA, % and A',
  perSquareFoot: 3,
  perCircuit: 1500,
  first: 10_000,
  restPercent: 40,
  leastService: 100,
  heatingPercent: {
    cooling: 100,
    'heat pump': 100,
    'supplementary or central heat': 65,
    'fewer than four heaters': 65,
    'four heaters or more': 40,
    'storage heat': 100,
  },
}

/** What the general load of a dwelling is made of. */
export interface DwellingLoads {
  /** Outside dimensions, without garage, open porch and unfinished rooms [ft²]. */
  readonly area: number
  /** Small-appliance circuits and laundry circuits; at least two and one. */
  readonly circuits: number
  /** Every appliance on its own circuit, by its plate: range, dryer, water heater, tub [VA]. */
  readonly plates: readonly number[]
}

/**
 * General load before any demand factor.
 *
 * @returns [VA]
 * @source [NEC-220.82] 220.82(B)
 */
export const generalLoad = ({ area, circuits, plates }: DwellingLoads): number =>
  SECTION_220_82.perSquareFoot * area +
  SECTION_220_82.perCircuit * circuits +
  plates.reduce((sum, plate) => sum + plate, 0)

/** So much at 100 %, the rest at a share. */
export const stepped = (load: number, first: number, restPercent: number): number =>
  Math.min(load, first) + (Math.max(0, load - first) * restPercent) / 100

/**
 * Calculated load of a dwelling by the optional method.
 *
 * A tub is an appliance among the plates. A car charger has its own rule from 2023 on: left out.
 *
 * @param heating - units that run at one time, each choice apart: the largest choice counts [VA]
 * @returns [VA]
 * @source [NEC-220.82] 220.82(B) and (C)
 */
export function dwellingLoad(
  loads: DwellingLoads,
  heating: readonly (readonly { readonly kind: HeatingKind; readonly va: number }[])[],
): number {
  const { first, restPercent, heatingPercent } = SECTION_220_82
  const choices = heating.map(choice =>
    choice.reduce((sum, { kind, va }) => sum + (va * heatingPercent[kind]) / 100, 0),
  )
  return stepped(generalLoad(loads), first, restPercent) + Math.max(0, ...choices)
}
