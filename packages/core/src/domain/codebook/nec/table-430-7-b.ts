import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/** Input with the rotor held, by the code letter on the plate; there is no I, O and Q. */
export const TABLE_430_7_B: PrintedTable<'least' | 'most'> = {
  standard: 'NEC',
  edition: '2017',
  clause: 'table 430.7(B)',
  read: 'page',
  unit: 'kVA/hp',
  columns: ['least', 'most'],
  rows: {
    A: [0, 3.14],
    B: [3.15, 3.54],
    C: [3.55, 3.99],
    D: [4, 4.49],
    E: [4.5, 4.99],
    F: [5, 5.59],
    G: [5.6, 6.29],
    H: [6.3, 7.09],
    J: [7.1, 7.99],
    K: [8, 8.99],
    L: [9, 9.99],
    M: [10, 11.19],
    N: [11.2, 12.49],
    P: [12.5, 13.99],
    R: [14, 15.99],
    S: [16, 17.99],
    T: [18, 19.99],
    U: [20, 22.39],
    V: [22.4, undefined],
  },
}

/**
 * Current of a motor with its rotor held, as at the start.
 *
 * @param horsepower - [hp]
 * @param volts - rated, between lines [V]
 * @returns both ends of the letter's band [A]; `most` is undefined for V; all undefined for no letter
 * @source [NEC-430.7-B] table 430.7(B)
 */
export function lockedRotorAmps(motor: {
  readonly letter: string
  readonly horsepower: number
  readonly volts: number
  readonly phases: 1 | 3
}): { readonly least: number; readonly most: number | undefined } | undefined {
  const least = cellOf(TABLE_430_7_B, motor.letter, 'least')
  const most = cellOf(TABLE_430_7_B, motor.letter, 'most')
  if (least === undefined) return undefined
  const perKva = (motor.horsepower * 1000) / (motor.volts * (motor.phases === 3 ? Math.sqrt(3) : 1))
  return { least: least * perKva, most: most === undefined ? undefined : most * perKva }
}
