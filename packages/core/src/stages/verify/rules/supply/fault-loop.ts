import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, SupplyEvidence } from '../../supply/evidence.ts'
import { faultInputs, runLoop } from '../../supply/fault.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, notCovered, within } from '../../supply/rule.ts'

function judge(
  evidence: SupplyEvidence,
  { breaker, circuit, segments }: CircuitEvidence,
): readonly CodeFinding[] {
  const greatest = evidence.book?.loop
  if (!greatest || segments.some(each => !each.earth)) return []
  const run = runLoop({ segments })
  return [
    conclude(
      { rule: faultLoop.id, subjects: [circuit.device], severity: 'danger', params: { run } },
      { breaker, ...faultInputs(evidence) },
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
