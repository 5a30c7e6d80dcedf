import { atMost } from '../../../../base/compare.ts'
import type { Ampacity, Codebook } from '../../../../domain/codebook/book.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, Segment, SupplyEvidence } from '../../supply/evidence.ts'
import { judged } from '../../supply/evidence.ts'
import { laidInputs, laidOf } from '../../supply/laid.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { conclude, notCovered, within } from '../../supply/rule.ts'

/** Each size among the lines once: a run is as good as its thinnest. */
const thinnest = ({ lines }: Segment) => lines.toSorted((a, b) => a.size.mm2 - b.size.mm2)[0]

/** A load that lasts counts for more; experts differ on whether a tub is one. */
function judgePoint(
  { lasting }: Codebook,
  draws: number,
  { amps, printed, limitedBy, by }: Ampacity,
): PointFinding {
  const strict = lasting.value * draws
  const found = within(strict, amps, {
    message: 'conductor-carries',
    saysTight: true,
    clause: by,
    params: { draws, printed, limitedBy },
  })
  if (found.verdict === 'holds' || !lasting.isDisputed || !atMost(draws, amps)) return found
  const readings = { strict, lenient: draws, decides: 'authority' as const }
  return { ...found, verdict: 'experts-differ', readings }
}

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
      const carries = book?.ampacity(laidOf(segment, line.size, point))
      return book && carries ? judgePoint(book, point.draws, carries) : notCovered('ampacity')
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
      judged(evidence, circuit).flatMap(segment => judge(evidence, circuit, segment)),
    ),
}
