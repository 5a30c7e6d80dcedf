import { atMost } from '../../../base/compare.ts'
import { isEarth } from '../../../domain/board/board.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import { elementOfEnd, sourceEarths } from '../../../domain/wiring/wire.ts'
import type { Evidence, Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf, standing, worst } from '../rule.ts'

/** The least current at which a ground-fault device of this supply may trip [A]. */
export function lowestTrip({ plant }: Evidence): number | undefined {
  const trips = plant.parts.flatMap(({ part }) =>
    part.kind === 'ground-fault' ? [part.trip.from.si] : [],
  )
  return trips.length > 0 ? Math.min(...trips) : undefined
}

/** The conductor's own name, without the kind of its element. */
const nameOf = (element: string): string => element.slice(element.indexOf(':') + 1)

/** No earth conductor carries load current. */
export const earthCurrent: Rule = {
  id: 'VERIFY-5',
  title: 'Earth conductors carry no load current',
  source: COMMON_PRACTICE,
  check: evidence => {
    const limit = lowestTrip(evidence) ?? LIMITS.earthAmps
    const earths = evidence.job.ends.filter(end => isEarth(end.function))
    const conductors = [
      ...new Set([...earths.map(elementOfEnd), ...sourceEarths(evidence.job.tub)]),
    ]
    return worst(standing(evidence), conductors, (element, at) => at.solved.amps(element))
      .filter(({ value }) => !atMost(value, limit))
      .map(({ thing, value, at }) => ({
        rule: earthCurrent.id,
        message: 'earth-carries-current',
        verdict: 'breaks',
        severity: 'danger',
        subjects: [nameOf(thing)],
        params: { conductor: nameOf(thing), amps: value, limit },
        on: commandsOf(at.state),
      }))
  },
}
