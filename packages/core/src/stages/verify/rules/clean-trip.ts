import type { Finding } from '../../../base/verdict.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { Trip } from '../../../domain/wiring/observe.ts'
import type { Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf } from '../rule.ts'

const messageOf = ({ kind, amps, rated }: Trip): string => {
  if (kind === 'ground-fault') return 'ground-fault-trips'
  return amps >= LIMITS.short * rated ? 'dead-short' : 'overload-trips'
}

/**
 * No state trips a protection.
 *
 * A clean, certain trip is safe and the job is wrong all the same: it is told before power.
 */
export const cleanTrip: Rule = {
  id: 'VERIFY-13',
  title: 'Nothing trips',
  source: COMMON_PRACTICE,
  check: evidence => {
    const seen = new Map<string, Finding>()
    for (const { state, trip, blown } of evidence.running)
      for (const each of [...blown, ...(trip ? [trip] : [])]) {
        const message = messageOf(each)
        const key = `${each.part} ${message}`
        if (seen.has(key)) continue
        seen.set(key, {
          rule: cleanTrip.id,
          message,
          verdict: 'breaks',
          severity: 'caution',
          subjects: [each.part],
          params: { part: each.part, amps: each.amps, rated: each.rated },
          on: commandsOf(state),
        })
      }
    return [...seen.values()]
  },
}
