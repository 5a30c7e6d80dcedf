import { atMost } from '../../../../base/compare.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, SupplyEvidence } from '../../supply/evidence.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { conclude, notCovered, within } from '../../supply/rule.ts'

function judgePoint({ book }: SupplyEvidence, draws: number, breaker: number): PointFinding {
  if (!book) return notCovered('load')
  const { value, by, isDisputed } = book.lasting
  // The figure is not rounded on the way: 22.92 A counts 28.65 A, not 28.75 A.
  const strict = value * draws
  const found = within(strict, breaker, {
    message: value > 1 ? 'breaker-for-load' : 'breaker-for-load-plain',
    saysTight: true,
    clause: by,
    params: { draws, factor: value },
  })
  if (found.verdict === 'holds' || !isDisputed || !atMost(draws, breaker)) return found
  const readings = { strict, lenient: draws, decides: 'authority' as const }
  return { ...found, verdict: 'experts-differ', readings }
}

const judge = (evidence: SupplyEvidence, circuit: CircuitEvidence): CodeFinding =>
  conclude(
    {
      rule: breakerForLoad.id,
      subjects: [circuit.circuit.device],
      severity: 'caution',
      params: { unit: 'A' },
    },
    { draws: circuit.draws, breaker: circuit.breaker },
    ({ draws, breaker }) => judgePoint(evidence, draws, breaker),
  )

/** The breaker lets everything run at once, for hours. Less is no hazard: the box is then set lower. */
export const breakerForLoad: SupplyRule = {
  id: 'SUPPLY-3',
  title: 'The breaker for everything at once',
  about: 'circuit',
  source: 'NEC 210.20(A), 680.10; CE Code 8-104; elsewhere the load itself',
  check: evidence => evidence.circuits.map(circuit => judge(evidence, circuit)),
}
