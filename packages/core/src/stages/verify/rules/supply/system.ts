import { atLeast, atMost } from '../../../../base/compare.ts'
import { LEG_VOLTS } from '../../../../domain/wiring/figures.ts'
import { LIMITS } from '../../../../domain/wiring/limits.ts'
import { isOnSupply } from '../../../../domain/wiring/supply-loads.ts'
import { COMMON_PRACTICE } from '../../rule.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, SupplyEvidence } from '../../supply/evidence.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { conclude, fact } from '../../supply/rule.ts'

type Powered = Extract<SupplyEvidence['survey']['loads'][number], { readonly circuits: unknown }>

/** The volts that this circuit can give a load: between its lines, and from one of them to neutral. */
function offered(
  { survey }: SupplyEvidence,
  { segments, volts }: CircuitEvidence,
): readonly number[] {
  const last = segments.filter(each => each.isLast)
  const lines = Math.max(0, ...last.map(each => each.lines.length))
  const hasNeutral = last.some(each => each.neutral !== undefined)
  const leg = LEG_VOLTS[survey.supply.system]
  return [...(lines > 1 ? [volts] : []), ...(hasNeutral ? [leg] : [])]
}

const nearest = (all: readonly number[], plate: number): number | undefined =>
  all.toSorted((a, b) => Math.abs(a - plate) - Math.abs(b - plate))[0]

/** A heater takes less than its plate without harm, and gives less; a motor stalls. */
function judgePlate(load: Powered, volts: number, plate: number): PointFinding {
  const share = volts / plate
  if (load.kind === 'heater')
    return fact(atMost(share, LIMITS.most) && atLeast(share, HEATER_LEAST), {
      message: 'heater-power',
      params: { power: share * share },
    })
  const found = fact(atMost(share, LIMITS.most) && atLeast(share, LIMITS.leastMotor), {
    message: 'plate-volts',
  })
  if (found.verdict === 'breaks' || atLeast(share, MOTOR_SURE)) return found
  const readings = { strict: MOTOR_SURE, lenient: LIMITS.leastMotor, decides: 'designer' as const }
  const params = { ...found.params, unit: '%' }
  return { ...found, params, verdict: 'experts-differ', message: 'plate-volts-low', readings }
}

/** Motors are made for a tenth less or more than their plate. @source [NEMA-MG1] 12.44, from memory */
const MOTOR_SURE = 0.9

/** Three quarters of its power at 208 V of 240 V is met; a quarter is a wrong supply. */
const HEATER_LEAST = 0.8 // common practice, no source

/** Each load by its plate, at the nominal volts that this supply gives it, and at its frequency. */
function plates(evidence: SupplyEvidence): readonly CodeFinding[] {
  const { survey, circuits } = evidence
  const all = [...new Set(circuits.flatMap(each => offered(evidence, each)))]
  const [circuit] = circuits
  if (!circuit) return []
  return survey.loads.filter(isOnSupply).flatMap(load => {
    const plate = load.straps?.positions[load.straps.found]?.volts.si ?? load.volts?.si
    const volts = plate === undefined ? undefined : nearest(all, plate)
    if (plate === undefined || volts === undefined) return []
    const about = {
      rule: system.id,
      subjects: [circuit.circuit.device],
      topic: load.id,
      severity: 'danger' as const,
      params: { load: load.label, plate, volts, share: volts / plate },
    }
    const hertz = load.frequency
    const wrong =
      hertz && hertz.si !== survey.supply.frequency.si
        ? [
            conclude({ ...about, topic: `${load.id} frequency`, severity: 'warning' }, {}, () =>
              fact(false, {
                message: 'plate-frequency',
                params: { is: survey.supply.frequency.si, may: hertz.si },
              }),
            ),
          ]
        : []
    return [conclude(about, {}, () => judgePlate(load, volts, plate)), ...wrong]
  })
}

const refused = ({ circuit }: CircuitEvidence, message: 'high-leg' | 'same-line'): CodeFinding =>
  conclude(
    { rule: system.id, subjects: [circuit.device], topic: message, severity: 'danger' },
    {},
    () => fact(false, { message }),
  )

/** The kind of supply suits the plates of what it feeds; a high leg serves no tub. */
export const system: SupplyRule = {
  id: 'SUPPLY-16',
  title: 'The kind of supply',
  about: 'circuit',
  source: COMMON_PRACTICE,
  check: evidence => {
    const { circuits, survey } = evidence
    const highLeg =
      survey.supply.system === 'high-leg-delta'
        ? circuits.slice(0, 1).map(each => refused(each, 'high-leg'))
        : []
    const sameLine = circuits.flatMap(each => {
      const lines = Object.values(each.circuit.lines)
      return new Set(lines).size < lines.length ? [refused(each, 'same-line')] : []
    })
    return [...highLeg, ...sameLine, ...plates(evidence)]
  },
}
