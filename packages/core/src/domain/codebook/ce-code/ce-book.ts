import type { ConductorSize } from '../../conductor.ts'
import { sizeFrom } from '../../conductor.ts'
import { americanAmpacity } from '../american-ampacity.ts'
import type { Ampacity, Cited, Codebook, EarthAsk, LaidConductor } from '../book.ts'
import { CE_RULE_8_104 } from './rule-8-104.ts'
import { CE_SECTION_68 } from './section-68.ts'
import { CE_TABLE_2, ceAmps } from './table-2.ts'
import { CE_TABLE_4 } from './table-4.ts'
import { ceAmbientFactor } from './table-5a.ts'
import { ceAdjustmentFactor } from './table-5c.ts'
import { CE_RULE_14_104, CE_TABLE_13, ceGreatestBreaker } from './table-13.ts'
import { CE_TABLE_16, ceBondingConductor } from './table-16.ts'

const ampacity = (laid: LaidConductor): Ampacity | undefined =>
  americanAmpacity(
    {
      printed: ceAmps,
      by: metal => (metal === 'copper' ? CE_TABLE_2 : CE_TABLE_4),
      ambientFactor: ceAmbientFactor,
      groupFactor: ceAdjustmentFactor,
    },
    laid,
  )

function greatestBreaker(
  amps: number,
  { size, material }: Pick<LaidConductor, 'size' | 'material'>,
): Cited<number> | undefined {
  const value = ceGreatestBreaker({ metal: material, size: size.text, amps })
  if (value === undefined) return undefined
  return { value, by: CE_RULE_14_104.rows[size.text] ? CE_RULE_14_104 : CE_TABLE_13 }
}

function earth({ breaker, material, line }: EarthAsk): Cited<ConductorSize> | undefined {
  const text = ceBondingConductor(breaker, material)
  const size = text === undefined ? undefined : sizeFrom(text)
  return size && { value: line.mm2 < size.mm2 ? line : size, by: CE_TABLE_16 }
}

/** Canada. Experts differ on whether a tub is a load that lasts, as in the United States. */
export const CE_CODE: Codebook = {
  id: 'ce-code',
  name: 'CE Code',
  ratings: {
    value: [...new Set(CE_TABLE_13.bands.map(each => each.breaker))],
    by: CE_TABLE_13,
  },
  ampacity,
  greatestBreaker,
  // A breaker without a mark carries 80 % continuously.
  lasting: { value: 1.25, by: CE_RULE_8_104, isDisputed: true },
  largestMotor: {
    value: 0.25,
    by: { standard: 'CE Code', edition: '2021', clause: 'rule 28-108', read: 'memory' },
  },
  earth,
  neutral: earth,
  copperEarth: undefined,
  byFaultHeat: undefined,
  drop: {
    value: 0.03,
    by: { standard: 'CE Code', edition: '2021', clause: 'rule 8-102', read: 'memory' },
    isLaw: true,
  },
  fault: undefined,
  groundFault: { value: 0.006, by: CE_SECTION_68.groundFaultDeviceLeast },
}
