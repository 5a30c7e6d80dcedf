import type { Possible } from '../../../base/possible.ts'
import { choiceOf, numberOf } from '../../../base/possible.ts'
import { conductorResistance } from '../../../domain/conductor.ts'
import type { BreakerType, Earthing } from '../../../domain/supply/run-words.ts'
import { BREAKER_TYPES, EARTHINGS } from '../../../domain/supply/run-words.ts'
import type { CircuitEvidence, Segment, SupplyEvidence } from './evidence.ts'

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

/** Line and earth of one segment, hot [Ω]. */
const loopOf = ({ cable, lines, earth }: Segment): number => {
  const [line] = lines.toSorted((a, b) => a.size.mm2 - b.size.mm2)
  const out = line ? conductorResistance(line.size, cable.length.si) : 0
  return out + (earth ? conductorResistance(earth.size, cable.length.si) : 0)
}

/** Line and earth of the whole run, hot [Ω]. */
export const runLoop = ({ segments }: Pick<CircuitEvidence, 'segments'>): number =>
  segments.reduce((sum, each) => sum + loopOf(each), 0)
