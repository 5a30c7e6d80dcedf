import type { CodeFinding } from '../../supply/artifact.ts'
import type {
  CableConductor,
  CircuitEvidence,
  Segment,
  SupplyEvidence,
} from '../../supply/evidence.ts'
import { fixed } from '../../supply/evidence.ts'
import { laidInputs, laidOf } from '../../supply/laid.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, notCovered, within } from '../../supply/rule.ts'

/**
 * One conductor of each size that carries current; a neutral between two lines carries their
 * difference and is judged where it is solved.
 */
function conductorsOf({ lines, neutral, loaded }: Segment): readonly CableConductor[] {
  const isLoaded = loaded > lines.length
  const carrying = [...lines, ...(neutral && isLoaded ? [neutral] : [])]
  return carrying.filter(
    (each, index) => carrying.findIndex(other => other.size.text === each.size.text) === index,
  )
}

function judge(
  { book }: SupplyEvidence,
  { breaker }: CircuitEvidence,
  segment: Segment,
  { size }: CableConductor,
): CodeFinding {
  const about = {
    rule: breakerBeforeConductor.id,
    subjects: [segment.cable.id],
    topic: size.text,
    severity: 'danger' as const,
    params: { cable: segment.cable.label, size: size.text, unit: 'A' },
  }
  return conclude(about, { ...laidInputs(segment), breaker }, point => {
    const laid = laidOf(segment, size, point)
    const carries = book?.ampacity(laid)
    const may = carries && book?.greatestBreaker(carries.amps, laid)
    return carries && may
      ? within(point.breaker, may.value, {
          message: 'breaker-before-conductor',
          clause: may.by,
          params: { carries: carries.amps },
        })
      : notCovered('ampacity')
  })
}

/** The breaker opens before any piece of the run is too hot; a listed cord was judged with its tub. */
export const breakerBeforeConductor: SupplyRule = {
  id: 'SUPPLY-2',
  title: 'The breaker protects the conductor',
  about: 'segment',
  source: 'NEC 240.4, 240.5(B)(1) (from memory), 240.6(A); BS 7671 433.1.1; HD 60364-4-43',
  check: evidence =>
    evidence.circuits.flatMap(circuit =>
      fixed(circuit).flatMap(segment =>
        conductorsOf(segment).map(conductor => judge(evidence, circuit, segment, conductor)),
      ),
    ),
}
