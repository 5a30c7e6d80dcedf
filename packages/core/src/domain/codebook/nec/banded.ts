import type { Printed } from '../printed.ts'
import { bandOf } from '../printed.ts'

/** One printed table in bands, the lowest first; a value belongs to the first band that it does not pass. */
export interface Banded<Row extends { readonly upTo: number }> extends Printed {
  /** Of `upTo`. */
  readonly bandUnit: string
  /** Of every other cell. */
  readonly unit: string
  readonly bands: readonly Row[]
}

/** The band of a value; undefined past the last, or for no number. */
export const bandIn = <Row extends { readonly upTo: number }>(
  { bands }: Banded<Row>,
  value: number,
): Row | undefined => bandOf(bands, value)
