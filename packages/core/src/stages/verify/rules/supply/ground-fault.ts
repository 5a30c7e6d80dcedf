import { atLeast, atMost } from '../../../../base/compare.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, SupplyEvidence } from '../../supply/evidence.ts'
import type { About, SupplyRule } from '../../supply/rule.ts'
import { conclude, fact, notCovered, within } from '../../supply/rule.ts'
import { PROBE, tripOf, watchedBy, watchersOf } from '../../supply/solved.ts'

const nameOf = ({ survey, devices }: SupplyEvidence, id: string): string =>
  survey.supply.devices.find(each => each.id === id)?.label ?? devices.get(id)?.label ?? id

function inTime({ book }: SupplyEvidence, about: About, trips: readonly number[]): CodeFinding {
  const limit = book?.groundFault
  const [least] = trips.toSorted((a, b) => a - b)
  if (least === undefined)
    return conclude(about, {}, () => fact(false, { message: 'no-ground-fault', clause: limit?.by }))
  return conclude(about, {}, () =>
    limit
      ? within(least, limit.value, { message: 'ground-fault-trip', clause: limit.by })
      : notCovered('ground-fault'),
  )
}

/** Each device with the tub's loads on, and with one to neutral more. */
function landed(evidence: SupplyEvidence, own: About): readonly CodeFinding[] {
  const alone = evidence.network()
  if (!alone) return []
  const after = watchedBy(alone, new Map([[PROBE, 1]]))
  return watchedBy(alone).map(({ device, amps, isAwake }, index) => {
    const { from, to } = tripOf(device)
    const about = {
      ...own,
      topic: device.device,
      params: { device: nameOf(evidence, device.device) },
    }
    if (!isAwake) return conclude(about, {}, () => fact(false, { message: 'ground-fault-asleep' }))
    const withProbe = after[index]?.amps ?? 0
    if (atLeast(withProbe, to))
      return conclude(about, {}, () =>
        fact(false, {
          message: atLeast(amps, to) ? 'ground-fault-trips' : 'ground-fault-blind-neutral',
          params: { is: atLeast(amps, to) ? amps : withProbe, may: to },
        }),
      )
    return conclude({ ...about, severity: atMost(amps, from) ? 'notice' : 'warning' }, {}, () =>
      within(amps, from, { message: 'ground-fault-leakage' }),
    )
  })
}

function judge(evidence: SupplyEvidence, circuit: CircuitEvidence): readonly CodeFinding[] {
  const { device } = circuit.circuit
  const parts = watchersOf(evidence, circuit)
  const about = { rule: groundFault.id, subjects: [device], severity: 'danger' as const }
  const row: readonly CodeFinding[] =
    parts.length > 1
      ? [
          conclude({ ...about, topic: 'row', severity: 'notice' }, {}, () =>
            fact(true, { message: 'ground-faults-in-row', params: { count: parts.length } }),
          ),
        ]
      : []
  return [
    inTime(
      evidence,
      about,
      parts.map(each => each.trip.to.si),
    ),
    ...landed(evidence, about),
    ...row,
  ]
}

/** A ground-fault device protects people, is awake, and every conductor lands where it watches it. */
export const groundFault: SupplyRule = {
  id: 'SUPPLY-12',
  title: 'The ground-fault device and what lands on it',
  about: 'circuit',
  source:
    'NEC 680.44; UL 943 class A; CE Code 68-068; BS 7671 415.1; HD 60364-7-702; AS/NZS 3000 2.6.3',
  check: evidence => evidence.circuits.flatMap(circuit => judge(evidence, circuit)),
}
