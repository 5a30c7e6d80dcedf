import type { Job } from '../../domain/job.ts'
import { placeOf } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import { jumperSettings, movedEnds, strapSettings } from '../../domain/landing/positions.ts'
import { feedOf } from '../../domain/wiring/states.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { Verification } from '../verify/artifact.ts'

/** A landing that somebody made or found, as the sheet is laid out from: read from where its ends sit. */
export function landedPlan(
  job: Job,
  landing: Landing,
  { findings }: Verification,
  of: Pick<WiringPlan, 'parts' | 'score'>,
): WiringPlan {
  const assignments = job.loads.flatMap(load => {
    const place = placeOf(job, landing, load)
    return place ? [{ load: load.id, place: place.id }] : []
  })
  return {
    survey: job.tub.id,
    box: job.box.id,
    feed: feedOf(job)?.id ?? '',
    landing,
    assignments,
    jumpers: jumperSettings(job, landing),
    straps: strapSettings(job, landing),
    ...of,
    changes: [],
    reidentify: findings
      .filter(each => each.message === 're-identify')
      .flatMap(each => each.subjects),
    capped: job.ends.filter(({ id }) => landing.ends[id] === 'insulated').map(({ id }) => id),
    unusedPlaces: job.box.places
      .filter(({ id }) => !assignments.some(each => each.place === id))
      .map(({ id }) => id),
    moved: movedEnds(job, landing),
    search: { considered: 0, solved: 0, boundedOut: 0 },
  }
}
