import type { Finding } from '../../../base/verdict.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { Trip } from '../../../domain/wiring/observe.ts'
import type { Evidence, Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf } from '../rule.ts'

const messageOf = ({ kind, amps, rated }: Trip): string => {
  if (kind === 'ground-fault') return 'ground-fault-trips'
  return amps >= LIMITS.short * rated ? 'dead-short' : 'overload-trips'
}

/**
 * Jumpers of the box that stand otherwise than its feed needs: where to look first when it trips.
 *
 * A pointer, no judgement of its own: that the jumper is what makes it trip is not shown.
 */
function jumpersAgainstFeed({ job, landing, feed }: Evidence): readonly Finding[] {
  return job.box.board.jumpers.flatMap(jumper => {
    const needed = feed?.jumpers[jumper.id]
    const found = landing.jumpers[jumper.id] ?? jumper.factory
    if (feed === undefined || needed === undefined || found === needed) return []
    const labelOf = (id: string) => jumper.positions.find(each => each.id === id)?.label ?? id
    return [
      {
        rule: cleanTrip.id,
        message: 'jumper-against-feed',
        verdict: 'not-shown',
        severity: 'caution',
        subjects: [jumper.id],
        params: {
          jumper: jumper.id,
          label: jumper.label,
          found: labelOf(found),
          needed: labelOf(needed),
          feed: feed.label,
        },
      },
    ]
  })
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
    for (const { state, trip, blown, opened } of evidence.running)
      for (const each of [...blown, ...opened, ...(trip ? [trip] : [])]) {
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
    return seen.size > 0 ? [...seen.values(), ...jumpersAgainstFeed(evidence)] : []
  },
}
