import type { FaultLimits } from '../../../../domain/codebook/book.ts'
import type { BreakerType, Earthing } from '../../../../domain/supply/run-words.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, SupplyEvidence } from '../../supply/evidence.ts'
import { faultInputs, runLoop } from '../../supply/fault.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { conclude, notCovered, within } from '../../supply/rule.ts'
import { watchersOf } from '../../supply/solved.ts'

interface Point {
  readonly breaker: number
  readonly type: BreakerType
  readonly earthing: Earthing
  readonly start: number
  readonly electrode: number
}

/** The breaker sees to it where it can; else, and wherever an electrode is in the loop, the device. */
function judgePoint(
  { behindBreaker, behindDevice }: FaultLimits,
  { breaker, type, earthing, ...loop }: Point,
  run: number,
  trip: number | undefined,
): PointFinding {
  const isElectrode = earthing === 'TT'
  const start = isElectrode ? loop.electrode : loop.start
  const greatest = isElectrode ? undefined : behindBreaker(breaker, type)
  const byBreaker =
    greatest &&
    within(start + run, greatest.value, {
      message: 'fault-loop',
      clause: greatest.by,
      params: { start, breaker, type },
    })
  if (byBreaker?.verdict === 'holds') return byBreaker
  if (trip === undefined) return byBreaker ?? notCovered(isElectrode ? 'loop-tt' : 'loop')
  const { value, by } = behindDevice(trip)
  return within(start + run, value, {
    message: isElectrode ? 'fault-loop-electrode' : 'fault-loop-device',
    clause: by,
    params: { start, trip },
  })
}

function judge(evidence: SupplyEvidence, circuit: CircuitEvidence): readonly CodeFinding[] {
  const limits = evidence.book?.fault
  if (!limits || circuit.segments.some(each => !each.earth)) return []
  const run = runLoop(circuit)
  const trips = watchersOf(evidence, circuit).map(each => each.trip.to.si)
  const trip = trips.length > 0 ? Math.min(...trips) : undefined
  return [
    conclude(
      {
        rule: faultLoop.id,
        subjects: [circuit.circuit.device],
        severity: 'danger',
        params: { run },
      },
      { breaker: circuit.breaker, ...faultInputs(evidence) },
      point => judgePoint(limits, point, run, trip),
    ),
  ]
}

/** A fault to earth at the tub trips the breaker, or the residual-current device, in time. */
export const faultLoop: SupplyRule = {
  id: 'SUPPLY-11',
  title: 'A fault to earth is off in time',
  about: 'circuit',
  source: 'BS 7671 411.3.2, tables 41.3 and 41.5; HD 60364-4-41 411.4.4, 411.5.3',
  check: evidence => evidence.circuits.flatMap(circuit => judge(evidence, circuit)),
}
