import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, Segment, SupplyEvidence } from '../../supply/evidence.ts'
import { fixed } from '../../supply/evidence.ts'
import { laidInputs, laidOf } from '../../supply/laid.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, notCovered, within } from '../../supply/rule.ts'

/** Each size among the lines once: a run is as good as its thinnest. */
const thinnest = ({ lines }: Segment) => lines.toSorted((a, b) => a.size.mm2 - b.size.mm2)[0]

function judge(
  { book }: SupplyEvidence,
  { draws }: CircuitEvidence,
  segment: Segment,
): readonly CodeFinding[] {
  const line = thinnest(segment)
  if (!line) return []
  const about = {
    rule: conductorCarries.id,
    subjects: [segment.cable.id],
    severity: 'danger' as const,
    params: { cable: segment.cable.label, size: line.size.text, unit: 'A' },
  }
  return [
    conclude(about, { ...laidInputs(segment), draws }, point => {
      const may = book?.ampacity(laidOf(segment, line.size, point))
      return may
        ? within(point.draws, may.amps, {
            message: 'conductor-carries',
            saysTight: true,
            clause: may.by,
            params: { printed: may.printed, limitedBy: may.limitedBy },
          })
        : notCovered('ampacity')
    }),
  ]
}

/** Every piece of the run carries what the tub takes, where it lies. */
export const conductorCarries: SupplyRule = {
  id: 'SUPPLY-1',
  title: 'The conductor carries the tub',
  about: 'segment',
  source: 'NEC 310.16, 310.15(B), 310.15(C), 110.14(C); BS 7671 appendix 4; HD 60364-5-52',
  check: evidence =>
    evidence.circuits.flatMap(circuit =>
      fixed(circuit).flatMap(segment => judge(evidence, circuit, segment)),
    ),
}
