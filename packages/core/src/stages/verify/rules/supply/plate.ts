import type { Entered } from '../../../../base/entered.ts'
import type { Known } from '../../../../base/known.ts'
import { numberOf } from '../../../../base/possible.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, SupplyEvidence } from '../../supply/evidence.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, reaches, within } from '../../supply/rule.ts'

const PLATES = { from: 5, to: 125 } // [A] of a tub; common practice, no source

const asked = (known: Known<Entered<'A'>> | undefined, key: string) =>
  numberOf(known, PLATES, `plate.${key}`)

function judge(
  { survey }: SupplyEvidence,
  { circuit, breaker }: CircuitEvidence,
): readonly CodeFinding[] {
  const { minimumCircuit, maximumProtection } = survey.plate ?? {}
  const about = { rule: plate.id, subjects: [circuit.device], params: { unit: 'A' } }
  return [
    conclude(
      { ...about, topic: 'least', severity: 'warning' },
      { breaker, least: asked(minimumCircuit, 'minimumCircuit') },
      point => reaches(point.breaker, point.least, { message: 'least-circuit' }),
    ),
    conclude(
      { ...about, topic: 'most', severity: 'danger' },
      { breaker, most: asked(maximumProtection, 'maximumProtection') },
      point => within(point.breaker, point.most, { message: 'largest-breaker' }),
    ),
  ]
}

/** The plate of the appliance names its least circuit and its largest breaker: each is a gate of its own. */
export const plate: SupplyRule = {
  id: 'SUPPLY-4',
  title: 'The breaker between what the plate asks and allows',
  about: 'circuit',
  source: 'the plate of the appliance; NEC 110.3(B) (from memory)',
  // Where two circuits feed a tub its plate says what each is; a survey has one plate.
  check: evidence =>
    evidence.circuits.length > 1 ? [] : evidence.circuits.flatMap(each => judge(evidence, each)),
}
