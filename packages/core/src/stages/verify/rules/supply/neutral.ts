import { isPowered } from '../../../../domain/load/load.ts'
import { WITHOUT_NEUTRAL } from '../../../../domain/wiring/figures.ts'
import { COMMON_PRACTICE } from '../../rule.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, SupplyEvidence } from '../../supply/evidence.ts'
import { isAmerican } from '../../supply/evidence.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, fact } from '../../supply/rule.ts'

const TO_NEUTRAL_MOST = 160 // [V] a plate up to here is for one leg and neutral; common practice, no source

/** Loads that take one leg and neutral, on a supply whose two legs give twice as much. */
const toNeutral = ({ survey }: SupplyEvidence): readonly string[] =>
  survey.loads.flatMap(load => {
    const volts = isPowered(load) ? load.volts?.si : undefined
    return volts !== undefined && volts > 50 && volts < TO_NEUTRAL_MOST ? [load.label] : []
  })

function judge(
  evidence: SupplyEvidence,
  { segments, lineCount }: CircuitEvidence,
): readonly CodeFinding[] {
  const needed = toNeutral(evidence)
  const { system } = evidence.survey.supply
  const isNeeded = lineCount === 1 || needed.length > 0
  return segments.flatMap(({ cable, neutral, earth }) => {
    const about = {
      rule: neutralConductor.id,
      subjects: [cable.id],
      severity: 'danger' as const,
      params: { cable: cable.label, loads: needed.join(', ') },
    }
    if (neutral?.colour === 'bare')
      return [conclude(about, {}, () => fact(false, { message: 'neutral-bare' }))]
    if (neutral || !isNeeded || WITHOUT_NEUTRAL.includes(system))
      return neutral ? [conclude(about, {}, () => fact(true, { message: 'neutral-there' }))] : []
    const message =
      needed.length === 0
        ? 'neutral-missing-line'
        : earth
          ? 'neutral-missing'
          : 'neutral-and-earth-missing'
    return [conclude(about, {}, () => fact(false, { message }))]
  })
}

/** A neutral arrives where a load needs one, as a conductor of its own. */
export const neutralConductor: SupplyRule = {
  id: 'SUPPLY-7',
  title: 'A neutral where one is needed',
  about: 'segment',
  source: `NEC 250.24, 250.142 (from memory): neutral and earth apart; ${COMMON_PRACTICE}`,
  check: evidence =>
    isAmerican(evidence.survey.region) || evidence.circuits.some(each => each.lineCount === 1)
      ? evidence.circuits.flatMap(each => judge(evidence, each))
      : [],
}
