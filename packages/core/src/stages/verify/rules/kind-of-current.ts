import { placeOf } from '../../../domain/job.ts'
import { suitsCurrent } from '../../../domain/wiring/fits.ts'
import type { Rule } from '../rule.ts'
import { COMMON_PRACTICE } from '../rule.ts'

/** A light gets the kind of current that it is made for: of the wrong kind it stays dark or dies. */
export const kindOfCurrent: Rule = {
  id: 'VERIFY-27',
  title: 'Light on its kind of current',
  source: COMMON_PRACTICE,
  check: ({ job, landing }) =>
    job.loads.flatMap(load => {
      const place = load.kind === 'light' ? placeOf(job, landing, load) : undefined
      return load.kind !== 'light' || !place || suitsCurrent(place, load)
        ? []
        : [
            {
              rule: kindOfCurrent.id,
              message: 'light-on-wrong-current',
              verdict: 'breaks' as const,
              severity: 'caution' as const,
              subjects: [load.id],
              params: { load: load.label, needs: load.current, gives: place.gives ?? '' },
            },
          ]
    }),
}
