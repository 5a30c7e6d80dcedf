import type { ConductorSize } from '../../conductor.ts'
import { sizeFrom } from '../../conductor.ts'
import { americanAmpacity } from '../american-ampacity.ts'
import type { Ampacity, Cited, Codebook, EarthAsk, LaidConductor } from '../book.ts'
import type { Printed } from '../printed.ts'
import { CONTINUOUS } from './section-210-20.ts'
import { greatestBreaker, SECTION_240_4_B } from './section-240-4-b.ts'
import { SECTION_240_4_D, smallConductorBreaker } from './section-240-4-d.ts'
import { SECTION_240_6 } from './section-240-6.ts'
import { SECTION_430_22_24 } from './section-430-22-24.ts'
import { earthConductor, TABLE_250_122 } from './table-250-122.ts'
import { ambientFactor } from './table-310-15-b-1.ts'
import { adjustmentFactor } from './table-310-15-c-1.ts'
import { necAmps, TABLE_310_16 } from './table-310-16.ts'
import { cordAmps, TABLE_400_5 } from './table-400-5.ts'

/** Sheathed cable counts at 60 °C, whatever its wires are made for. @source [NEC-334.80] from memory */
const SHEATH: Printed = {
  standard: 'NEC',
  edition: '2023',
  clause: '334.80, 340.80',
  read: 'memory',
}

const ampacity = (laid: LaidConductor): Ampacity | undefined =>
  americanAmpacity(
    {
      printed: necAmps,
      by: metal => TABLE_310_16[metal],
      ambientFactor,
      groupFactor: adjustmentFactor,
      cord: { amps: cordAmps, by: TABLE_400_5 },
      sheath: {
        // A sleeve of conduit makes no other cable of it.
        methods: [
          'sheathed-cable',
          'sheathed-cable-in-insulation',
          'buried-cable',
          'cable-in-conduit',
        ],
        by: SHEATH,
      },
    },
    laid,
  )

function breakerBefore(
  amps: number,
  { size, material }: Pick<LaidConductor, 'size' | 'material'>,
): Cited<number> | undefined {
  const small = smallConductorBreaker(material, size.text)
  const next = greatestBreaker(amps)
  if (small !== undefined && (next === undefined || small < next))
    return { value: small, by: SECTION_240_4_D }
  return next === undefined ? undefined : { value: next, by: SECTION_240_4_B }
}

/** The copper earth of a tub is never under 12 AWG. @source [NEC-680] 680.21(A)(1), from 2023 680.7(A) */
const TUB_EARTH: Printed = { standard: 'NEC', edition: '2023', clause: '680.7(A)', read: 'page' }

/** By the breaker, and never larger than the lines that it goes with. */
function byBreaker({ breaker, material, line }: EarthAsk): Cited<ConductorSize> | undefined {
  const text = earthConductor(breaker, material)
  const table = text === undefined ? undefined : sizeFrom(text)
  return table && { value: line.mm2 < table.mm2 ? line : table, by: TABLE_250_122 }
}

function earth(ask: EarthAsk): Cited<ConductorSize> | undefined {
  const own = byBreaker(ask)
  const least = sizeFrom('12 AWG')
  return own && least && own.value.mm2 < least.mm2 ? { value: least, by: TUB_EARTH } : own
}

/** United States. Volt drop is advice there; experts differ on whether a tub is a load that lasts. */
export const NEC: Codebook = {
  id: 'nec',
  name: 'NEC',
  ratings: { value: SECTION_240_6.ratings, by: SECTION_240_6 },
  ampacity,
  greatestBreaker: breakerBefore,
  lasting: { value: CONTINUOUS.share, by: CONTINUOUS, isDisputed: true },
  largestMotor: { value: SECTION_430_22_24.largest / 100 - 1, by: SECTION_430_22_24 },
  earth,
  neutral: byBreaker,
  copperEarth: TUB_EARTH,
  byFaultHeat: undefined,
  drop: {
    value: 0.03,
    by: { standard: 'NEC', edition: '2023', clause: '210.19, informational note', read: 'page' },
    isLaw: false,
  },
  fault: undefined,
  groundFault: {
    value: 0.006,
    by: { standard: 'NEC', edition: '2023', clause: '680.44', read: 'page' },
  },
}
