import type { Finding } from '../../../base/verdict.ts'
import type { Undersized } from '../../../domain/wiring/undersized.ts'
import { undersized } from '../../../domain/wiring/undersized.ts'
import type { Rule } from '../rule.ts'

const messageFor = ({ why }: Undersized): string => {
  if (why.kind === 'behind-breaker') return 'conductor-behind-breaker'
  return why.kind === 'earth' ? 'earth-too-small' : 'earth-size-not-shown'
}

function finding(found: Undersized): Finding {
  const { cable, conductor, breaker, why } = found
  const isShown = why.kind !== 'earth-not-shown'
  return {
    rule: conductors.id,
    message: messageFor(found),
    verdict: isShown ? 'breaks' : 'not-shown',
    severity: isShown ? 'danger' : 'caution',
    subjects: [`${cable.id}.${conductor.id}`],
    params: {
      cable: cable.label,
      conductor: conductor.id,
      size: conductor.size.text,
      breaker,
      ...(why.kind === 'behind-breaker' ? { most: why.most } : {}),
      ...(why.kind === 'earth' ? { least: why.least } : {}),
    },
  }
}

/** No conductor of the supply is too small for the breaker it stands behind. */
export const conductors: Rule = {
  id: 'VERIFY-23',
  title: 'Conductors behind their breaker',
  source: 'NEC 2023 240.4, 310.16, 250.122; IEC 60364-5-52 table B.52.2 (from memory)',
  check: ({ job: { tub } }) => undersized(tub).map(finding),
}
