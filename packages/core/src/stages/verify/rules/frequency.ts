import type { Finding } from '../../../base/verdict.ts'
import type { Rule } from '../rule.ts'
import { COMMON_PRACTICE } from '../rule.ts'

/** Box and motors are made for the frequency of the supply. */
export const frequency: Rule = {
  id: 'VERIFY-21',
  title: 'Frequency',
  source: COMMON_PRACTICE,
  check: ({ job }) => {
    const hertz = job.tub.supply.frequency.si
    const finding = (subject: string, label: string, plate: number): Finding => ({
      rule: frequency.id,
      message: 'wrong-frequency',
      verdict: 'breaks',
      severity: 'warning',
      subjects: [subject],
      params: { thing: label, plate, hertz },
    })
    const box = job.box.frequencies.some(each => each.si === hertz)
      ? []
      : [finding('box', job.box.label, job.box.frequencies[0]?.si ?? 0)]
    const loads = job.loads.flatMap(load =>
      load.frequency && load.frequency.si !== hertz
        ? [finding(load.id, load.label, load.frequency.si)]
        : [],
    )
    return [...box, ...loads]
  },
}
