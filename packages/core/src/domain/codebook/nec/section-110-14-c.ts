import type { Printed } from '../printed.ts'
import type { HeatColumn } from './table-310-16.ts'

/** Columns that the terminals allow; 90 °C is for corrections only. */
export const SECTION_110_14_C: Printed & {
  readonly unit: string
  readonly upTo: number
  readonly smaller: HeatColumn
  readonly larger: HeatColumn
} = {
  standard: 'NEC',
  edition: '2023',
  clause: '110.14(C)(1)',
  read: 'page',
  unit: 'A',
  upTo: 100,
  smaller: '60 °C',
  larger: '75 °C',
}

/**
 * The column of the ampacity table that the terminals of a circuit allow.
 *
 * Equipment marked for 14 to 1 AWG counts as up to 100 A.
 *
 * @param circuit - rating of the circuit [A]
 * @param marked - what both terminals are listed and marked for, where they are
 * @source [NEC-110.14-C] 110.14(C)(1)
 */
export const terminalColumn = ({
  circuit,
  marked,
}: {
  readonly circuit: number
  readonly marked?: '60 °C' | '75 °C' | undefined
}): HeatColumn =>
  marked ?? (circuit <= SECTION_110_14_C.upTo ? SECTION_110_14_C.smaller : SECTION_110_14_C.larger)
