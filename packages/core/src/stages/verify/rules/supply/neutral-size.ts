import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, Segment, SupplyEvidence } from '../../supply/evidence.ts'
import { fixed } from '../../supply/evidence.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, notCovered, reaches } from '../../supply/rule.ts'

function judge(
  { book }: SupplyEvidence,
  { breaker }: CircuitEvidence,
  { cable, lines, neutral, material, method }: Segment,
): readonly CodeFinding[] {
  const [line] = lines.toSorted((a, b) => b.size.mm2 - a.size.mm2)
  // With one line the neutral carries what the line does, and is judged with it.
  if (!line || !neutral || lines.length < 2) return []
  const about = {
    rule: neutralSize.id,
    subjects: [cable.id],
    severity: 'danger' as const,
    params: { cable: cable.label, size: neutral.size.text },
  }
  return [
    conclude(about, { breaker, material, method }, point => {
      const least = book?.earth({ ...point, line: line.size })
      return least
        ? reaches(neutral.size.mm2, least.value.mm2, {
            message: 'neutral-size',
            clause: least.by,
            params: { least: least.value.text, breaker: point.breaker },
          })
        : notCovered('neutral')
    }),
  ]
}

/**
 * A neutral between two lines carries their difference, and a fault: it is never smaller than the earth
 * has to be. What it carries when one line is off is seen to where the loads are landed.
 */
export const neutralSize: SupplyRule = {
  id: 'SUPPLY-18',
  title: 'The neutral is large enough',
  about: 'segment',
  source: 'NEC 215.2(A)(2), 250.122; BS 7671 524.2; HD 60364-5-52 524.2 (from memory)',
  check: evidence =>
    evidence.circuits.flatMap(circuit =>
      fixed(circuit).flatMap(segment => judge(evidence, circuit, segment)),
    ),
}
