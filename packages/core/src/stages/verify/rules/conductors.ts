import type { Finding } from '../../../base/verdict.ts'
import { isEarth } from '../../../domain/board/board.ts'
import type { Undersized } from '../../../domain/wiring/undersized.ts'
import { undersized } from '../../../domain/wiring/undersized.ts'
import type { Evidence, Rule } from '../rule.ts'

const messageFor = ({ why, conductor }: Undersized): string => {
  if (why.kind === 'behind-breaker') return 'conductor-behind-breaker'
  if (why.kind === 'earth-not-shown') return 'earth-size-not-shown'
  return isEarth(conductor.function) ? 'earth-too-small' : 'neutral-too-small'
}

/** The earth lead of a load carries the fault that its thickest live lead feeds. */
const thinEarths = ({ loads }: Evidence['job']): readonly Finding[] =>
  loads.flatMap(load => {
    const earth = load.leads.find(each => each.function === 'earth')
    const live = load.leads.filter(each => each !== earth).map(each => each.size)
    const thickest = live.reduce((a, b) => (b.mm2 > a.mm2 ? b : a), live[0] ?? { mm2: 0, text: '' })
    return earth && earth.size.mm2 < thickest.mm2
      ? [
          {
            rule: conductors.id,
            message: 'lead-earth-thin',
            verdict: 'not-shown' as const,
            severity: 'caution' as const,
            subjects: [`${load.id}.${earth.id}`],
            params: { load: load.label, size: earth.size.text, live: thickest.text },
          },
        ]
      : []
  })

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
  check: ({ job }) => [...undersized(job.tub).map(finding), ...thinEarths(job)],
}
