import { atMost } from '../../../base/compare.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import { elementOfEnd } from '../../../domain/wiring/wire.ts'
import type { Evidence, Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf, standing, worst } from '../rule.ts'

/** The least current at which a ground-fault device of this supply may trip [A]. */
export function lowestTrip({ plant }: Evidence): number | undefined {
  const trips = plant.parts.flatMap(({ part }) =>
    part.kind === 'ground-fault' ? [part.trip.from.si] : [],
  )
  return trips.length > 0 ? Math.min(...trips) : undefined
}

/** No earth conductor carries load current. */
export const earthCurrent: Rule = {
  id: 'VERIFY-5',
  title: 'Earth conductors carry no load current',
  source: COMMON_PRACTICE,
  check: evidence => {
    const limit = lowestTrip(evidence) ?? LIMITS.earthAmps
    const earths = evidence.job.ends.filter(end => end.function === 'earth')
    const seen = new Set<string>()
    const conductors = earths.filter(end => {
      const element = elementOfEnd(end)
      return seen.has(element) ? false : seen.add(element)
    })
    return worst(standing(evidence), conductors, (end, at) => at.solved.amps(elementOfEnd(end)))
      .filter(({ value }) => !atMost(value, limit))
      .map(({ thing, value, at }) => ({
        rule: earthCurrent.id,
        message: 'earth-carries-current',
        verdict: 'breaks',
        severity: 'danger',
        subjects: [thing.id],
        params: { conductor: thing.id, amps: value, limit },
        on: commandsOf(at.state),
      }))
  },
}
