import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, Segment, SupplyEvidence } from '../../supply/evidence.ts'
import { fixed } from '../../supply/evidence.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, fact, notCovered, reaches } from '../../supply/rule.ts'

function judge(
  { book }: SupplyEvidence,
  { breaker }: CircuitEvidence,
  { cable, lines, earth, material, method }: Segment,
): readonly CodeFinding[] {
  const [line] = lines.toSorted((a, b) => b.size.mm2 - a.size.mm2)
  const about = {
    rule: earthSize.id,
    subjects: [cable.id],
    severity: 'danger' as const,
    params: { cable: cable.label },
  }
  if (!line) return []
  if (!earth) return [conclude(about, {}, () => fact(false, { message: 'no-earth' }))]
  return [
    conclude(about, { breaker, material, method }, point => {
      const least = book?.earth({ ...point, line: line.size })
      return least
        ? reaches(earth.size.mm2, least.value.mm2, {
            message: 'earth-size',
            clause: least.by,
            params: { size: earth.size.text, least: least.value.text, breaker: point.breaker },
          })
        : notCovered('earth')
    }),
  ]
}

/** The earth conductor is there, and carries the fault until the breaker is off. */
export const earthSize: SupplyRule = {
  id: 'SUPPLY-6',
  title: 'The earth conductor is large enough',
  about: 'segment',
  source: 'NEC 250.122, 680.7(A); CE Code table 16; BS 7671 table 54.7; HD 60364-5-54',
  check: evidence =>
    evidence.circuits.flatMap(circuit =>
      fixed(circuit).flatMap(segment => judge(evidence, circuit, segment)),
    ),
}
