import type { Possible } from '../../../base/possible.ts'
import { choiceOf, given, numberOf } from '../../../base/possible.ts'
import { ohmsAt20C, warmed } from '../../../domain/codebook/iec-60228.ts'
import type { ConductorSize } from '../../../domain/conductor.ts'
import { conductorResistance } from '../../../domain/conductor.ts'
import type {
  BreakerType,
  Earthing,
  Material,
  RatedTemperature,
} from '../../../domain/supply/run-words.ts'
import { BREAKER_TYPES, EARTHINGS } from '../../../domain/supply/run-words.ts'
import type { CircuitEvidence, Segment, SupplyEvidence } from './evidence.ts'
import { ALUMINIUM } from './solved.ts'

const LOOPS = { from: 0.05, to: 2 } // [Ω] at the start of a run that is not TT; common practice, no source
const ELECTRODES = { from: 1, to: 5000 } // [Ω] dry ground included; common practice, no source

/** What a fault to earth hangs on, besides the breaker. */
export const faultInputs = ({
  survey: { supply },
}: SupplyEvidence): {
  readonly type: Possible<BreakerType>
  readonly earthing: Possible<Earthing>
  readonly start: Possible<number>
  /** The same reading, where an electrode is in the loop. */
  readonly electrode: Possible<number>
} => ({
  type: choiceOf(supply.breakerType, BREAKER_TYPES, 'supply.breakerType'),
  earthing: choiceOf(supply.earthing, EARTHINGS, 'supply.earthing'),
  start: numberOf(supply.earthLoop, LOOPS, 'supply.earthLoop'),
  electrode: numberOf(supply.earthLoop, ELECTRODES, 'supply.earthLoop'),
})

/** What the ohms of a run hang on; what is open counts for all its pieces, the longest is asked about. */
export const loopInputs = ({
  segments,
}: Pick<CircuitEvidence, 'segments'>): {
  readonly metal: Possible<Material>
  readonly heat: Possible<RatedTemperature>
} => ({
  metal: openest(segments, 'material', given<Material>('copper')),
  heat: openest(segments, 'insulation', given<RatedTemperature>('70 °C')),
})

type Asked = 'material' | 'insulation'

function openest<Name extends Asked>(
  segments: readonly Segment[],
  name: Name,
  none: Segment[Name],
): Segment[Name] {
  const open = segments.filter(each => each[name].values.length > 1)
  const [longest] = open.toSorted((a, b) => b.cable.length.si - a.cable.length.si)
  return longest?.[name] ?? none
}

/** Of one conductor, as hot as its insulation lets it be [Ω]; areas by the standard that they are made to. */
function hotOhms(size: ConductorSize, metres: number, heat: RatedTemperature): number {
  const cold = size.text.endsWith('mm²') ? ohmsAt20C(size.mm2, metres, 'rigid') : undefined
  return cold === undefined
    ? conductorResistance(size, metres)
    : cold * warmed(Number.parseInt(heat, 10))
}

const only = <Value>({ values }: Possible<Value>, otherwise: Value): Value =>
  values.length === 1 ? (values[0] ?? otherwise) : otherwise

/** Line and earth of the whole run, hot, at one point of its inputs [Ω]. */
export const runLoop = (
  { segments }: Pick<CircuitEvidence, 'segments'>,
  { metal, heat }: { readonly metal: Material; readonly heat: RatedTemperature },
): number =>
  segments.reduce((sum, { cable, lines, earth, material, insulation }) => {
    const [line] = lines.toSorted((a, b) => a.size.mm2 - b.size.mm2)
    const share = only(material, metal) === 'aluminium' ? ALUMINIUM : 1
    const own = [line, earth].flatMap(each =>
      each ? hotOhms(each.size, cable.length.si, only(insulation, heat)) : [],
    )
    return sum + share * own.reduce((all, each) => all + each, 0)
  }, 0)
