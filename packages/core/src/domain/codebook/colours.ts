import type { Colour, Region } from '../described.ts'
import type { Printed } from './printed.ts'

/** Which colours stand for what in fixed wiring. */
export interface ColourCode extends Printed {
  readonly neutral: readonly Colour[]
  readonly earth: readonly Colour[]
  /**
   * In the order of the lines where the book orders them; undefined where any other colour will do.
   */
  readonly lines: readonly Colour[] | undefined
  /** Colours that stand for nothing at all. */
  readonly barred: readonly Colour[]
}

/**
 * Neutral white or grey, earth green with or without yellow, or bare.
 *
 * @source [NEC-200.6] and [NEC-250.119]
 */
const NEC: ColourCode = {
  standard: 'NEC',
  edition: '2023',
  clause: '200.6(A), 250.119',
  read: 'page',
  neutral: ['white', 'grey'],
  earth: ['green', 'green-yellow', 'bare'],
  lines: undefined,
  barred: [],
}

/**
 * Lines red, black and blue, where circuits are coded by colour.
 *
 * @source [CEC-4-036] conductor colours
 */
const CANADIAN: ColourCode = {
  standard: 'CE Code',
  edition: '2006',
  clause: '4-036',
  read: 'page',
  neutral: ['white', 'grey'],
  earth: ['green', 'green-yellow', 'bare'],
  lines: ['red', 'black', 'blue'],
  barred: [],
}

/**
 * Green alone is no earth here; the bare earth of a flat cable is sleeved at its ends.
 *
 * @source [IEC-60445]
 */
const HARMONISED: ColourCode = {
  standard: 'IEC 60445',
  edition: '2010',
  clause: '6.2 and 6.3',
  read: 'page',
  neutral: ['blue'],
  earth: ['green-yellow', 'bare'],
  lines: ['brown', 'black', 'grey'],
  barred: ['green', 'yellow'],
}

/**
 * Neutral black or light blue; any colour but those and the earth's for an active.
 *
 * @source [ASNZS3000-3.8] from memory
 */
const AUSTRALASIAN: ColourCode = {
  standard: 'AS/NZS 3000',
  edition: '2018',
  clause: '3.8 with table 3.4',
  read: 'memory',
  neutral: ['black', 'blue'],
  earth: ['green-yellow'],
  lines: undefined,
  barred: ['green', 'yellow'],
}

/** What new wiring has, by region. */
export const COLOUR_CODES: Readonly<Record<Region, ColourCode>> = {
  US: NEC,
  CA: CANADIAN,
  UK: HARMONISED,
  EU: HARMONISED,
  AU: AUSTRALASIAN,
  NZ: AUSTRALASIAN,
}

/**
 * What wiring of the United Kingdom before April 2006 may still have.
 *
 * @source [BS7671-COLOURS] appendix 7
 */
export const UK_BEFORE_2006: ColourCode = {
  standard: 'BS 7671',
  edition: '2001',
  clause: 'table 51A',
  read: 'page',
  neutral: ['black'],
  earth: ['green-yellow', 'bare'],
  lines: ['red', 'yellow', 'blue'],
  barred: ['green'],
}

/** What a colour says in a book; undefined for one that the book gives to nothing. */
export type Meaning = 'neutral' | 'earth' | 'line'

/**
 * What a colour says, the neutral and the earth first.
 *
 * @source [IEC-60445] and the other books above
 */
export function meaningOf(code: ColourCode, colour: Colour): Meaning | undefined {
  if (code.neutral.includes(colour)) return 'neutral'
  if (code.earth.includes(colour)) return 'earth'
  if (code.barred.includes(colour)) return undefined
  return (code.lines?.includes(colour) ?? true) ? 'line' : undefined
}

/**
 * Whether a colour is a line in one book and the neutral in the other: never to be trusted.
 *
 * @source [BS7671-COLOURS]
 */
export function isTurned(before: ColourCode, after: ColourCode, colour: Colour): boolean {
  const meanings = [meaningOf(before, colour), meaningOf(after, colour)]
  return meanings.includes('line') && meanings.includes('neutral')
}

/**
 * The least gauge whose neutral or earth may be given its colour at the ends only, with tape. A
 * smaller one has it along its whole length.
 *
 * @source [NEC-200.6] 200.6(A) and (B)
 * @source [NEC-250.119] 250.119(A)
 */
export const TAPED_FROM_AWG = 4

/**
 * Whether tape at the ends may make a conductor neutral or earth.
 *
 * @param awg - 0 or less for 1/0 up
 * @source [NEC-200.6]
 */
export const mayBeTaped = (awg: number): boolean => awg <= TAPED_FROM_AWG

/**
 * A white conductor of a cable as line: marked again where it is seen, never in these colours.
 *
 * @source [NEC-200.7] (C)(1)
 */
export const WHITE_AS_LINE = {
  in: 'cable assemblies',
  marked: 'at each end and wherever it is visible',
  neverMarked: ['white', 'grey', 'green'] as readonly Colour[],
} as const

/** The leg of a delta that stands at 208 V to neutral. @source [NEC-110.15] */
export const HIGH_LEG: Colour = 'orange'

/**
 * Protective earth and neutral in one: along its length and at its ends, the one way or the other.
 *
 * @source [IEC-60445] 6.3.3
 */
export const PEN_COLOURS: readonly { readonly along: Colour; readonly ends: Colour }[] = [
  { along: 'green-yellow', ends: 'blue' },
  { along: 'blue', ends: 'green-yellow' },
]

/** Least copper conductor that may be both [mm²]. @source [IEC-60445] by HD 60364-5-54, 543.4 */
export const LEAST_PEN_MM2 = 16
