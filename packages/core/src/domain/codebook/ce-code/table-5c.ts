import type { Banded } from '../nec/banded.ts'
import { bandIn } from '../nec/banded.ts'

/** By the number of insulated conductors in one run of raceway or cable. */
export const CE_TABLE_5C: Banded<{ readonly upTo: number; readonly factor: number }> = {
  standard: 'CE Code',
  edition: '2024',
  clause: 'table 5C',
  read: 'page',
  bandUnit: 'conductors',
  unit: '1',
  bands: [
    { upTo: 3, factor: 1 },
    { upTo: 6, factor: 0.8 },
    { upTo: 24, factor: 0.7 },
    { upTo: 42, factor: 0.6 },
    { upTo: Number.POSITIVE_INFINITY, factor: 0.5 },
  ],
}

/**
 * Share of the ampacity that is left where several conductors share a raceway or a cable.
 *
 * @param conductors - 1 or more
 * @returns [1], 0.5 to 1
 * @source [CEC-T5C] table 5C
 */
export const ceAdjustmentFactor = (conductors: number): number | undefined =>
  bandIn(CE_TABLE_5C, conductors)?.factor
