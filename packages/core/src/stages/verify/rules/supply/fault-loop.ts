import { choiceOf, numberOf } from '../../../../base/possible.ts'
import { conductorResistance } from '../../../../domain/conductor.ts'
import { BREAKER_TYPES, EARTHINGS } from '../../../../domain/supply/run-words.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, Segment, SupplyEvidence } from '../../supply/evidence.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, notCovered, within } from '../../supply/rule.ts'

const LOOPS = { from: 0.05, to: 2 } // [Ω] at the start of a run that is not TT; common practice, no source

/** Line and earth of one segment, hot [Ω]. */
const loopOf = ({ cable, lines, earth }: Segment): number => {
  const [line] = lines.toSorted((a, b) => a.size.mm2 - b.size.mm2)
  const out = line ? conductorResistance(line.size, cable.length.si) : 0
  return out + (earth ? conductorResistance(earth.size, cable.length.si) : 0)
}

function judge(
  { book, survey: { supply } }: SupplyEvidence,
  { breaker, circuit, segments }: CircuitEvidence,
): readonly CodeFinding[] {
  const greatest = book?.loop
  if (!greatest || segments.some(each => !each.earth)) return []
  const run = segments.reduce((sum, each) => sum + loopOf(each), 0)
  return [
    conclude(
      { rule: faultLoop.id, subjects: [circuit.device], severity: 'danger', params: { run } },
      {
        breaker,
        type: choiceOf(supply.breakerType, BREAKER_TYPES, 'supply.breakerType'),
        earthing: choiceOf(supply.earthing, EARTHINGS, 'supply.earthing'),
        start: numberOf(supply.earthLoop, LOOPS, 'supply.earthLoop'),
      },
      point => {
        // An earth electrode never trips a breaker: there the residual-current device does.
        if (point.earthing === 'TT') return notCovered('loop-tt')
        const may = greatest(point.breaker, point.type)
        return may
          ? within(point.start + run, may.value, {
              message: 'fault-loop',
              clause: may.by,
              params: { start: point.start, breaker: point.breaker, type: point.type },
            })
          : notCovered('loop')
      },
    ),
  ]
}

/** A fault to earth at the tub trips the breaker in time. */
export const faultLoop: SupplyRule = {
  id: 'SUPPLY-11',
  title: 'A fault to earth is off in time',
  about: 'circuit',
  source: 'BS 7671 411.3.2, table 41.3',
  check: evidence => evidence.circuits.flatMap(circuit => judge(evidence, circuit)),
}
