import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

export type MotorVolts = '115 V' | '200 V' | '208 V' | '230 V'

/** Rated volts of the motor; good for systems of 110 to 120 V and 220 to 240 V. */
export const TABLE_430_248: PrintedTable<MotorVolts> = {
  standard: 'NEC',
  edition: '1999 and 2020',
  clause: 'table 430.248 (430-148 in 1999)',
  read: 'page',
  unit: 'A',
  columns: ['115 V', '200 V', '208 V', '230 V'],
  rows: {
    '1/6 hp': [4.4, 2.5, 2.4, 2.2],
    '1/4 hp': [5.8, 3.3, 3.2, 2.9],
    '1/3 hp': [7.2, 4.1, 4, 3.6],
    '1/2 hp': [9.8, 5.6, 5.4, 4.9],
    '3/4 hp': [13.8, 7.9, 7.6, 6.9],
    '1 hp': [16, 9.2, 8.8, 8],
    '1-1/2 hp': [20, 11.5, 11, 10],
    '2 hp': [24, 13.8, 13.2, 12],
    '3 hp': [34, 19.6, 18.7, 17],
    '5 hp': [56, 32.2, 30.8, 28],
    '7-1/2 hp': [80, 46, 44, 40],
    '10 hp': [100, 57.5, 55, 50],
  },
}

/**
 * Full-load current of a single-phase motor, for its conductors and its breaker.
 *
 * Higher than most plates: overloads are set by the plate, not by this.
 *
 * @param power - as the table writes it, such as `1-1/2 hp`
 * @returns [A]; undefined for a motor that is not printed
 * @source [NEC-430.248] table 430.248
 */
export const motorAmps = (power: string, volts: MotorVolts): number | undefined =>
  cellOf(TABLE_430_248, power, volts)
