import type { Printed, PrintedTable } from './printed.ts'
import { bandOf, cellOf } from './printed.ts'

export const PRINTED: Printed = {
  standard: 'UL 943',
  edition: '2006',
  clause: 'class A, trip time',
  read: 'page',
}

/** What a device does at a residual current: it holds, it may or may not, it trips. */
export type Answer = 'holds' | 'may trip' | 'trips'

/** Where a kind of device is sure to hold, and sure to trip [mA]. */
export interface TripBand {
  /** Undefined where no source says from where on it may trip. */
  readonly holdsBelow: number | undefined
  readonly tripsFrom: number
}

/**
 * By kind: class A for people, class B of old pool luminaires, devices for equipment, and the 30 mA
 * device of the other books, which holds at half its rating.
 *
 * @source [UL-943] class A and B
 * @source [IEC-61008] 5.3.4, half of the rating
 */
export const TRIP_BANDS = {
  'class A': { holdsBelow: 4, tripsFrom: 6 },
  'class B': { holdsBelow: undefined, tripsFrom: 20 },
  equipment: { holdsBelow: undefined, tripsFrom: 30 },
  '30 mA': { holdsBelow: 15, tripsFrom: 30 },
} as const satisfies Readonly<Record<string, TripBand>>

/**
 * What a device does at a residual current that stays.
 *
 * At the lower border itself "may trip": the sources differ on which side it lies.
 *
 * @param milliamps - effective, 0 or more
 * @source [UL-943] class A
 * @source [IEC-61008] 5.3.4
 */
export function answerTo(device: keyof typeof TRIP_BANDS, milliamps: number): Answer {
  const { holdsBelow, tripsFrom }: TripBand = TRIP_BANDS[device]
  if (milliamps >= tripsFrom) return 'trips'
  return milliamps < (holdsBelow ?? 0) || milliamps === 0 ? 'holds' : 'may trip'
}

/** Limit of the residual current [mA], and the longest time until the device is open there [s]. */
export interface TripTime {
  readonly upTo: number
  readonly seconds: number
}

/**
 * Longest time of a class A device by residual current; a table, since circuit figures use no
 * powers.
 *
 * @source [UL-943] class A, 6 to 264 mA, to three digits
 */
export const CLASS_A_SECONDS: readonly TripTime[] = [
  { upTo: 6, seconds: 5.59 },
  { upTo: 7, seconds: 4.49 },
  { upTo: 8, seconds: 3.71 },
  { upTo: 10, seconds: 2.69 },
  { upTo: 15, seconds: 1.51 },
  { upTo: 20, seconds: 1 },
  { upTo: 30, seconds: 0.56 },
  { upTo: 50, seconds: 0.27 },
  { upTo: 100, seconds: 0.1 },
  { upTo: 150, seconds: 0.0561 },
  { upTo: 264, seconds: 0.025 },
]

/**
 * Longest time until a class A device is open: of the next greater printed current, so never too
 * long.
 *
 * @param milliamps - residual current; below 6 the device need not trip
 * @returns [s], undefined below 6 mA; above 264 mA the last line holds
 * @source [UL-943] class A
 */
export const classASeconds = (milliamps: number): number | undefined =>
  milliamps < TRIP_BANDS['class A'].tripsFrom
    ? undefined
    : bandOf(CLASS_A_SECONDS, Math.min(milliamps, 264))?.seconds

/**
 * A device without delay, and a selective one (S): the longest time, and the shortest it must wait.
 */
export type DelayColumn = 'general' | 'selective' | 'selective, at least'

/**
 * Times by the multiple of the rated residual current, for devices above 10 mA.
 *
 * The two waits beside 60 ms were read; 60 ms is from memory, and one instrument prints 50.
 *
 * @source [IEC-61008] table 1, alternating current
 */
export const BREAK_TIMES: PrintedTable<DelayColumn> = {
  standard: 'IEC 61008-1',
  edition: '2010',
  clause: 'table 1',
  read: 'page',
  unit: 'ms',
  columns: ['general', 'selective', 'selective, at least'],
  rows: {
    '1': [300, 500, 130],
    '2': [150, 200, 60],
    '5': [40, 150, 50],
  },
}

/**
 * Limit of the break time at a multiple of the rating.
 *
 * @returns [ms]
 * @source [IEC-61008] table 1, alternating current
 */
export const breakMilliseconds = (multiple: 1 | 2 | 5, column: DelayColumn): number | undefined =>
  cellOf(BREAK_TIMES, String(multiple), column)
