import type { Printed } from '../../engines/circuit/support/printed.ts'

/** Printed: 75.111 % and 4131 W; amps and ohms follow from them. */
export const DOWN_RATED: Printed & {
  readonly watts: number
  readonly percent: number
  readonly amps: number
  readonly ohms: number
} = {
  id: 'heater-5500-208',
  found: 'page',
  why: 'the usual heater on two legs of a wye',
  watts: 4131,
  percent: 75.111,
  amps: 19.86,
  ohms: 10.47,
}
