import { atMost } from '../../../../base/compare.ts'
import type { FaultLimits } from '../../../../domain/codebook/book.ts'
import type {
  BreakerType,
  Earthing,
  Material,
  RatedTemperature,
} from '../../../../domain/supply/run-words.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, SupplyEvidence } from '../../supply/evidence.ts'
import { faultInputs, loopInputs, runLoop } from '../../supply/fault.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { conclude, notCovered, within } from '../../supply/rule.ts'
import { watchersOf } from '../../supply/solved.ts'

interface Point {
  readonly breaker: number
  readonly type: BreakerType
  readonly earthing: Earthing
  readonly start: number
  readonly electrode: number
  readonly metal: Material
  readonly heat: RatedTemperature
}

/** The breaker sees to it where it can; else, and wherever an electrode is in the loop, the device. */
function judgePoint(
  { behindBreaker, behindDevice, steadyElectrode }: FaultLimits,
  { breaker, type, earthing, ...loop }: Point,
  run: number,
  trip: number | undefined,
): PointFinding {
  const isElectrode = earthing === 'TT'
  const start = isElectrode ? loop.electrode : loop.start
  const greatest = behindBreaker(breaker, type)
  const byBreaker =
    greatest &&
    within(start + run, greatest.value, {
      message: 'fault-loop',
      clause: greatest.by,
      params: { start, run, breaker, type },
    })
  // An electrode is no way to open a breaker, even where it would.
  if (byBreaker?.verdict === 'holds' && !isElectrode) return byBreaker
  if (trip === undefined) {
    if (byBreaker?.verdict === 'breaks') return byBreaker
    return notCovered(isElectrode ? 'loop-tt' : 'loop')
  }
  const { value, by } = behindDevice(trip)
  const byDevice = within(start + run, value, {
    message: isElectrode ? 'fault-loop-electrode' : 'fault-loop-device',
    clause: by,
    params: { start, run, trip },
  })
  if (!isElectrode || byDevice.verdict === 'breaks' || !steadyElectrode) return byDevice
  return atMost(start, steadyElectrode.value)
    ? byDevice
    : {
        ...byDevice,
        verdict: 'experts-differ',
        message: 'electrode-unsteady',
        clause: steadyElectrode.by,
        params: { ...byDevice.params, may: steadyElectrode.value, unit: 'Ω' },
        readings: { strict: steadyElectrode.value, lenient: value, decides: 'designer' },
      }
}

function judge(evidence: SupplyEvidence, circuit: CircuitEvidence): readonly CodeFinding[] {
  const limits = evidence.book?.fault
  if (!limits || circuit.segments.some(each => !each.earth)) return []
  const trips = watchersOf(evidence, circuit).map(each => each.trip.to.si)
  const trip = trips.length > 0 ? Math.min(...trips) : undefined
  return [
    conclude(
      {
        rule: faultLoop.id,
        subjects: [circuit.circuit.device],
        severity: 'danger',
      },
      { breaker: circuit.breaker, ...faultInputs(evidence), ...loopInputs(circuit) },
      point => judgePoint(limits, point, runLoop(circuit, point), trip),
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
