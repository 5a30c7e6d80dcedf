import type { ConductorSize } from '../../conductor.ts'
import { sizeFrom } from '../../conductor.ts'
import type { BreakerType } from '../../supply/run-words.ts'
import type { Ampacity, Cited, Codebook, EarthAsk, LaidConductor } from '../book.ts'
import { greatestElectrode } from '../hd-60364/part-4-41.ts'
import type { MetricTable } from '../metric-ampacity.ts'
import { metricAmpacity } from '../metric-ampacity.ts'
import type { Printed } from '../printed.ts'
import { BREAKER_RATINGS, PRINTED as RATINGS } from './ratings-60898.ts'
import { FAST_UP_TO } from './section-411-3-2.ts'
import { PRINTED as PEOPLE } from './section-415.ts'
import { PRINTED as OVERLOAD } from './section-433.ts'
import { PRINTED as DROP, DROP_PERCENT } from './table-4ab.ts'
import { ambientFactor4B1 } from './table-4b1.ts'
import { groupFactor4C1 } from './table-4c1.ts'
import { amps4D1A, TABLE_4D1A } from './table-4d1a.ts'
import { amps4D2A, TABLE_4D2A } from './table-4d2a.ts'
import { amps4D4A, TABLE_4D4A } from './table-4d4a.ts'
import { amps4D5, TABLE_4D5 } from './table-4d5.ts'
import { amps4E1A, TABLE_4E1A } from './table-4e1a.ts'
import { amps4E4A, TABLE_4E4A } from './table-4e4a.ts'
import { greatestLoop, TABLE_41_3 } from './table-41-3.ts'
import { adiabaticSize, K_COPPER, leastProtective, PRINTED as PROTECTIVE } from './table-54-7.ts'

type Insulation = '70 °C' | '90 °C'

const SINGLES: Readonly<Record<Insulation, MetricTable>> = {
  '70 °C': { by: TABLE_4D1A, amps: (mm2, loaded) => amps4D1A(mm2, `B ${loaded}`) },
  '90 °C': { by: TABLE_4E1A, amps: (mm2, loaded) => amps4E1A(mm2, `B ${loaded}`) },
}
const ARMOURED: Readonly<Record<Insulation, MetricTable>> = {
  '70 °C': { by: TABLE_4D4A, amps: (mm2, loaded) => amps4D4A(mm2, `C ${loaded}`) },
  '90 °C': { by: TABLE_4E4A, amps: (mm2, loaded) => amps4E4A(mm2, `C ${loaded}`) },
}
const FLAT: MetricTable = {
  by: TABLE_4D5,
  amps: (mm2, loaded) => (loaded === 2 ? amps4D5(mm2, 'C') : undefined),
}
const IN_CONDUIT: MetricTable = {
  by: TABLE_4D2A,
  amps: (mm2, loaded) => amps4D2A(mm2, `B ${loaded}`),
}

/** What lies in thermal insulation, in the ground, or is a cord is left out: tables ask more of it. */
function tableFor(
  method: LaidConductor['method'],
  insulation: Insulation,
): MetricTable | undefined {
  if (method === 'conduit' || method === 'flexible-conduit') return SINGLES[insulation]
  if (method === 'armoured-cable') return ARMOURED[insulation]
  if (insulation === '90 °C') return undefined
  if (method === 'sheathed-cable') return FLAT
  return method === 'cable-in-conduit' ? IN_CONDUIT : undefined
}

const ampacity = (laid: LaidConductor): Ampacity | undefined =>
  metricAmpacity(
    {
      table: tableFor,
      ambientFactor: (celsius, insulation) =>
        ambientFactor4B1(celsius, insulation === '70 °C' ? 'thermoplastic' : 'thermosetting'),
      groupFactor: circuits => groupFactor4C1(circuits, 'bunched'),
    },
    laid,
  )

function earth({ line }: EarthAsk): Cited<ConductorSize> | undefined {
  const size = sizeFrom(`${leastProtective(line.mm2)} mm²`)
  return size && { value: size, by: PROTECTIVE }
}

const loop = (breaker: number, type: BreakerType): Cited<number> | undefined => {
  const seconds = breaker <= FAST_UP_TO['fixed equipment only'] ? 0.4 : 5
  const value = greatestLoop(breaker, type, seconds)
  return value === undefined ? undefined : { value, by: TABLE_41_3 }
}

/** @source [BS7671-41.5] */
const BY_DEVICE: Printed = {
  standard: 'BS 7671',
  edition: '2018',
  clause: '411.5.3, table 41.5',
  read: 'page',
}

const behindDevice = (amps: number): Cited<number> => ({
  value: greatestElectrode(1000 * amps),
  by: BY_DEVICE,
})

const FAULT_HEAT: Printed = {
  standard: 'BS 7671',
  edition: '2018',
  clause: '543.1.3, table 54.3',
  read: 'page',
}

/** United Kingdom. */
export const BS_7671: Codebook = {
  id: 'bs-7671',
  name: 'BS 7671',
  ratings: { value: BREAKER_RATINGS, by: RATINGS },
  ampacity,
  greatestBreaker: amps => ({ value: amps, by: OVERLOAD }),
  lasting: { value: 1, by: OVERLOAD, isDisputed: false },
  largestMotor: undefined,
  earth,
  neutral: earth,
  copperEarth: undefined,
  byFaultHeat: (amps, seconds, insulation) => ({
    value: adiabaticSize(
      amps,
      seconds,
      K_COPPER.core[insulation === '90 °C' ? 'thermosetting' : 'thermoplastic'],
    ),
    by: FAULT_HEAT,
  }),
  drop: { value: DROP_PERCENT.public.other / 100, by: DROP, isLaw: true },
  fault: {
    behindBreaker: loop,
    behindDevice,
    // Note 2 to the table.
    steadyElectrode: { value: 200, by: { ...BY_DEVICE, read: 'memory' } },
  },
  groundFault: { value: 0.03, by: PEOPLE },
}
