import { LIMITS } from '../../../../domain/wiring/limits.ts'
import { isOnSupply, ONE_LEG_MOST } from '../../../../domain/wiring/supply-loads.ts'
import { COMMON_PRACTICE } from '../../rule.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { SupplyEvidence } from '../../supply/evidence.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, fact, reaches, within } from '../../supply/rule.ts'

/** Each load by the plate, at the nominal volts that this supply gives it. */
function plates({ survey, circuits }: SupplyEvidence): readonly CodeFinding[] {
  const [circuit] = circuits
  if (circuit?.lineCount !== 2) return []
  return survey.loads.filter(isOnSupply).flatMap(load => {
    const plate = load.straps?.positions[load.straps.found]?.volts.si ?? load.volts?.si
    if (plate === undefined || plate < ONE_LEG_MOST) return []
    const share = circuit.volts / plate
    const about = {
      rule: system.id,
      subjects: [circuit.circuit.device],
      topic: load.id,
      severity: 'warning' as const,
      params: { load: load.label, plate, volts: circuit.volts, share },
    }
    if (load.kind === 'heater')
      return [
        conclude({ ...about, severity: 'notice' }, {}, () =>
          fact(share <= LIMITS.most, { message: 'heater-power', params: { power: share * share } }),
        ),
      ]
    return [
      conclude(about, {}, () =>
        share > 1
          ? within(circuit.volts, LIMITS.most * plate, { message: 'plate-volts' })
          : reaches(circuit.volts, LIMITS.leastMotor * plate, { message: 'plate-volts' }),
      ),
    ]
  })
}

/** The kind of supply suits the plates of what it feeds; a high leg serves no tub. */
export const system: SupplyRule = {
  id: 'SUPPLY-16',
  title: 'The kind of supply',
  about: 'circuit',
  source: COMMON_PRACTICE,
  check: evidence => {
    const { system: kind } = evidence.survey.supply
    const [circuit] = evidence.circuits
    const refused: readonly CodeFinding[] =
      kind === 'high-leg-delta' && circuit
        ? [
            conclude(
              { rule: system.id, subjects: [circuit.circuit.device], severity: 'danger' },
              {},
              () => fact(false, { message: 'high-leg' }),
            ),
          ]
        : []
    return [...refused, ...plates(evidence)]
  },
}
