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

/**
 * A load that lasts counts for more; experts differ on whether a tub is one. Where it is none its
 * largest motor counts for more all the same.
 */
function judgePoint(
  { lasting, largestMotor }: Codebook,
  { draws, motor }: { readonly draws: number; readonly motor: number },
  { amps, printed, limitedBy, by }: Ampacity,
): PointFinding {
  const strict = lasting.value * draws
  const found = within(strict, amps, {
    message: lasting.value > 1 ? 'conductor-carries' : 'conductor-carries-plain',
    saysTight: true,
    clause: by,
    params: { draws, printed, limitedBy },
  })
  const lenient = draws + (largestMotor?.value ?? 0) * Math.min(motor, draws)
  if (found.verdict === 'holds' || !lasting.isDisputed || !atMost(lenient, amps)) return found
  const readings = { strict, lenient, decides: 'authority' as const }
  return { ...found, verdict: 'experts-differ', readings }
}

function judge(
  { book }: SupplyEvidence,
  { draws, largestMotor: motor }: CircuitEvidence,
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
    conclude(about, { ...laidInputs(segment), draws, motor }, point => {
      const carries = book?.ampacity(laidOf(segment, line.size, point))
      return book && carries ? judgePoint(book, point, carries) : notCovered('ampacity')
    }),
  ]
}

/** Every piece of the run carries what the tub takes, where it lies. */
export const conductorCarries: SupplyRule = {
  id: 'SUPPLY-1',
  title: 'The conductor carries the tub',
  about: 'segment',
  source:
    'NEC 310.16, 310.15(B), 310.15(C), 110.14(C), 430.24; CE Code 28-108; BS 7671 appendix 4; HD 60364-5-52',
  check: evidence =>
    evidence.circuits.flatMap(circuit =>
      judged(evidence, circuit).flatMap(segment => judge(evidence, circuit, segment)),
    ),
}
