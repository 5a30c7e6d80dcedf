import type { Banded } from '../nec/banded.ts'
import { bandIn } from '../nec/banded.ts'
import type { Metal } from '../nec/table-310-16.ts'

type BondingBand = { readonly upTo: number } & Readonly<Record<Metal, string>>

/**
 * The smallest bonding conductor by the breaker ahead of it, as far as 600 A.
 *
 * Up to 30 A two pages are a gauge apart: one gives the figures of the NEC for 15 and 20 A.
 */
export const CE_TABLE_16: Banded<BondingBand> = {
  standard: 'CE Code',
  edition: '2018 or 2021',
  clause: 'table 16',
  read: 'page',
  bandUnit: 'A',
  unit: 'AWG',
  bands: [
    { upTo: 20, copper: '14 AWG', aluminium: '12 AWG' },
    { upTo: 30, copper: '12 AWG', aluminium: '10 AWG' },
    { upTo: 60, copper: '10 AWG', aluminium: '8 AWG' },
    { upTo: 100, copper: '8 AWG', aluminium: '6 AWG' },
    { upTo: 200, copper: '6 AWG', aluminium: '4 AWG' },
    { upTo: 300, copper: '4 AWG', aluminium: '2 AWG' },
    { upTo: 400, copper: '3 AWG', aluminium: '1 AWG' },
    { upTo: 500, copper: '2 AWG', aluminium: '1/0 AWG' },
    { upTo: 600, copper: '1 AWG', aluminium: '2/0 AWG' },
  ],
}

/**
 * The smallest bonding conductor behind a breaker.
 *
 * Where the circuit was made larger against volt drop, by what its conductors carry instead.
 *
 * @param amps - rating of the breaker, or ampacity of the larger conductors [A], up to 600
 * @returns a size as the tables write it; undefined past the table
 * @source [CEC-T16] table 16, rule 10-616
 */
export const ceBondingConductor = (amps: number, metal: Metal): string | undefined =>
  bandIn(CE_TABLE_16, amps)?.[metal]
