import type { Printed } from '../../engines/circuit/support/printed.ts'

export const LOOP: Printed & {
  readonly volts: number
  readonly ohms: number
  readonly amps: number
} = {
  id: 'zs-formula-B32',
  found: 'page',
  why: 'a dead short at the end of the longest allowed run',
  volts: 218.5,
  ohms: 1.366,
  amps: 160,
}
