import type { Printed } from '../../engines/circuit/support/printed.ts'

export const ELEMENT: Printed & {
  readonly ratedAmps: number
  readonly amps: number
  readonly watts: number
  readonly ohms: number
} = {
  id: 'heater-4500-208',
  found: 'page',
  why: 'power, amps and ohms of one element in print',
  ratedAmps: 18.75,
  amps: 16.25,
  watts: 3380,
  ohms: 12.8,
}

export const PAIR: Printed & { readonly bothOhms: number; readonly oneOpenOhms: number } = {
  id: 'elem-2-parallel',
  found: 'derived',
  why: 'one of two elements open doubles the reading',
  bothOhms: 6.4,
  oneOpenOhms: 12.8,
}
