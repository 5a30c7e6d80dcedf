import type { ConductorSize } from '../../conductor.ts'
import { sizeFrom } from '../../conductor.ts'
import type { Ampacity, Cited, Codebook, EarthAsk, FaultLimits, LaidConductor } from '../book.ts'
import { BREAKER_RATINGS, PRINTED as RATINGS } from '../bs-7671/ratings-60898.ts'
import { SURE_MULTIPLE } from '../bs-7671/table-41-3.ts'
import type { MetricTable } from '../metric-ampacity.ts'
import { metricAmpacity } from '../metric-ampacity.ts'
import type { Printed } from '../printed.ts'
import type { ReferenceMethod } from './b-52-2.ts'
import { ampsB522, TABLE_B_52_2 } from './b-52-2.ts'
import { ampsB523, TABLE_B_52_3 } from './b-52-3.ts'
import { ampsB524, TABLE_B_52_4 } from './b-52-4.ts'
import { ampsB525, TABLE_B_52_5 } from './b-52-5.ts'
import { ambientFactorB5214 } from './b-52-14.ts'
import { groupFactorB5217 } from './b-52-17.ts'
import { PRINTED as DROP, DROP_PERCENT } from './g-52-1.ts'
import {
  FAST_UP_TO,
  greatestElectrode,
  greatestLoopAt,
  LOOP_TN,
  LOOP_TT,
  PRINTED as TIMES,
} from './part-4-41.ts'
import { leastProtective, PRINTED as PROTECTIVE } from './part-5-54.ts'

type Insulation = '70 °C' | '90 °C'

/** Reference methods of the standard; what is buried or a cord asks more than a survey tells. */
const METHODS: Readonly<Partial<Record<LaidConductor['method'], ReferenceMethod>>> = {
  conduit: 'B1',
  'flexible-conduit': 'B1',
  'cable-in-conduit': 'B2',
  'sheathed-cable': 'C',
  'armoured-cable': 'C',
  'sheathed-cable-in-insulation': 'A2',
}

function tableFor(
  method: LaidConductor['method'],
  insulation: Insulation,
): MetricTable | undefined {
  const column = METHODS[method]
  if (!column) return undefined
  return insulation === '70 °C'
    ? {
        by: TABLE_B_52_2,
        amps: (mm2, loaded) => (loaded === 2 ? ampsB522(mm2, column) : ampsB524(mm2, column)),
      }
    : {
        by: TABLE_B_52_3,
        amps: (mm2, loaded) => (loaded === 2 ? ampsB523(mm2, column) : ampsB525(mm2, column)),
      }
}

const withLoaded = (laid: LaidConductor, found: Ampacity | undefined): Ampacity | undefined => {
  if (!found || laid.loaded !== 3) return found
  return { ...found, by: found.by === TABLE_B_52_2 ? TABLE_B_52_4 : TABLE_B_52_5 }
}

const ampacity = (laid: LaidConductor): Ampacity | undefined =>
  withLoaded(
    laid,
    metricAmpacity(
      {
        table: tableFor,
        ambientFactor: (celsius, insulation) =>
          ambientFactorB5214(celsius, insulation === '70 °C' ? 'thermoplastic' : 'thermosetting'),
        groupFactor: circuits => groupFactorB5217(circuits, 'bunched'),
      },
      laid,
    ),
  )

function earth({ line }: EarthAsk): Cited<ConductorSize> | undefined {
  const size = sizeFrom(`${leastProtective(line.mm2)} mm²`)
  return size && { value: size, by: PROTECTIVE }
}

/** The breakers are those of the same European standard as in the United Kingdom. */
const FAULT: FaultLimits = {
  behindBreaker: (breaker, type) => {
    const seconds = breaker <= FAST_UP_TO['fixed equipment only'] ? '0.4' : '5'
    return { value: greatestLoopAt(SURE_MULTIPLE[type][seconds] * breaker), by: LOOP_TN }
  },
  behindDevice: amps => ({ value: greatestElectrode(1000 * amps), by: LOOP_TT }),
  steadyElectrode: undefined,
}

const OVERLOAD: Printed = {
  standard: 'HD 60364-4-43',
  edition: '2010',
  clause: '433.1',
  read: 'memory',
}

/** Europe in general; countries differ, and their own rules win. */
export const HD_60364: Codebook = {
  id: 'hd-60364',
  name: 'HD 60364',
  ratings: { value: BREAKER_RATINGS, by: RATINGS },
  ampacity,
  greatestBreaker: (amps): Cited<number> => ({ value: amps, by: OVERLOAD }),
  lasting: { value: 1, by: OVERLOAD, isDisputed: false },
  largestMotor: undefined,
  earth,
  neutral: earth,
  copperEarth: undefined,
  byFaultHeat: undefined,
  drop: { value: DROP_PERCENT.public.other / 100, by: DROP, isLaw: false },
  fault: FAULT,
  groundFault: { value: 0.03, by: TIMES },
}
