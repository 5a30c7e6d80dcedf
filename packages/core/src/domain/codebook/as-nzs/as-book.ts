import type { ConductorSize } from '../../conductor.ts'
import { sizeFrom } from '../../conductor.ts'
import type { Ampacity, Cited, Codebook, EarthAsk, LaidConductor } from '../book.ts'
import type { MetricTable } from '../metric-ampacity.ts'
import { metricAmpacity } from '../metric-ampacity.ts'
import type { Printed } from '../printed.ts'
import { PRINTED as BASE, BASE_CELSIUS, BREAKER_RATINGS } from './base.ts'
import { PRINTED as DROP, DROP_PERCENT } from './drop-limit.ts'
import { leastEarth3000, TABLE_5_1 } from './earth-size.ts'
import { FINAL_CIRCUIT_MILLIAMPS, PRINTED as PEOPLE } from './residual.ts'
import { ampsTable4, TABLE_4 } from './table-4.ts'
import { ampsTable5, TABLE_5 } from './table-5.ts'
import { ampsTable10, TABLE_10 } from './table-10.ts'
import { ampsTable11, TABLE_11 } from './table-11.ts'

/** Only two loaded conductors are covered: factors and tables for three were not found. */
const two = (by: Printed, amps: (mm2: number) => number | undefined): MetricTable => ({
  by,
  amps: (mm2, loaded) => (loaded === 2 ? amps(mm2) : undefined),
})

/** V-75 counts as 70 °C here, which is on the safe side of the class as surveyed. */
function tableFor(
  method: LaidConductor['method'],
  insulation: '70 °C' | '90 °C',
): MetricTable | undefined {
  const isPlain = insulation === '70 °C'
  switch (method) {
    case 'conduit':
    case 'flexible-conduit':
      return isPlain
        ? two(TABLE_4, mm2 => ampsTable4(mm2, 'enclosed'))
        : two(TABLE_5, mm2 => ampsTable5(mm2, 'enclosed'))
    case 'cable-in-conduit':
      return isPlain
        ? two(TABLE_10, mm2 => ampsTable10(mm2, 'enclosed'))
        : two(TABLE_11, mm2 => ampsTable11(mm2, 'enclosed'))
    case 'sheathed-cable':
      return isPlain
        ? two(TABLE_10, mm2 => ampsTable10(mm2, 'touching'))
        : two(TABLE_11, mm2 => ampsTable11(mm2, 'touching'))
    case 'sheathed-cable-in-insulation':
      return isPlain
        ? two(TABLE_10, mm2 => ampsTable10(mm2, 'wholly insulated'))
        : two(TABLE_11, mm2 => ampsTable11(mm2, 'wholly insulated'))
    default:
      return undefined
  }
}

/** No factor for warmer air or for more than one circuit was found: those answer "not covered". */
const ampacity = (laid: LaidConductor): Ampacity | undefined =>
  metricAmpacity(
    {
      table: tableFor,
      ambientFactor: celsius => (celsius <= BASE_CELSIUS.air ? 1 : undefined),
      groupFactor: circuits => (circuits === 1 ? 1 : undefined),
    },
    laid,
  )

function earth({ line, method }: EarthAsk): Cited<ConductorSize> | undefined {
  const isSeparate = method === 'conduit' || method === 'flexible-conduit'
  const least = leastEarth3000(line.mm2, isSeparate ? 'separate' : 'core of the cable')
  const size = least === undefined ? undefined : sizeFrom(`${least} mm²`)
  return size && { value: size, by: TABLE_5_1 }
}

const OVERLOAD: Printed = {
  standard: 'AS/NZS 3000',
  edition: '2018',
  clause: '2.5.3.1',
  read: 'memory',
}

/** Australia and New Zealand. New Zealand has an edition of 3008 of its own, which was not read. */
export const AS_NZS: Codebook = {
  id: 'as-nzs',
  name: 'AS/NZS 3000',
  ratings: { value: BREAKER_RATINGS, by: BASE },
  ampacity,
  greatestBreaker: (amps): Cited<number> => ({ value: amps, by: OVERLOAD }),
  lasting: { value: 1, by: OVERLOAD, isDisputed: false },
  largestMotor: undefined,
  earth,
  neutral: earth,
  copperEarth: undefined,
  byFaultHeat: undefined,
  drop: { value: DROP_PERCENT.network / 100, by: DROP, isLaw: true },
  fault: undefined,
  groundFault: { value: FINAL_CIRCUIT_MILLIAMPS / 1000, by: PEOPLE },
}
