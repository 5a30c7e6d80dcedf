import type { Job } from '../../domain/job.ts'
import { BOX, placeOf } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import { isPowered } from '../../domain/load/load.ts'
import { feedOf } from '../../domain/wiring/states.ts'
import type { JumperSetting, StrapSetting, WiringPlan } from '../plan/artifact.ts'
import type { Verification } from '../verify/artifact.ts'

function jumpersOf({ box }: Job, landing: Landing): readonly JumperSetting[] {
  return box.board.jumpers.map(({ id, label, factory, positions }) => {
    const to = landing.jumpers[id] ?? factory
    const labelOf = (position: string) =>
      positions.find(each => each.id === position)?.label ?? position
    return {
      jumper: id,
      label,
      from: factory,
      to,
      fromLabel: labelOf(factory),
      toLabel: labelOf(to),
      moves: to !== factory,
    }
  })
}

const strapsOf = (job: Job, landing: Landing): readonly StrapSetting[] =>
  job.loads.flatMap(load => {
    if (!isPowered(load) || !load.straps) return []
    const from = load.straps.found
    const to = landing.straps[load.id] ?? from
    return [{ load: load.id, label: load.label, from, to, moves: from !== to }]
  })

/** Ends upstream that are elsewhere than they were found. */
const movedOf = (job: Job, landing: Landing): WiringPlan['moved'] =>
  job.ends.flatMap(({ id, board, found }) => {
    const to = landing.ends[id]
    return board !== BOX && found !== undefined && to !== undefined && to !== found
      ? [{ end: id, from: found, to }]
      : []
  })

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
    jumpers: jumpersOf(job, landing),
    straps: strapsOf(job, landing),
    ...of,
    changes: [],
    reidentify: findings
      .filter(each => each.message === 're-identify')
      .flatMap(each => each.subjects),
    capped: job.ends.filter(({ id }) => landing.ends[id] === 'insulated').map(({ id }) => id),
    unusedPlaces: job.box.places
      .filter(({ id }) => !assignments.some(each => each.place === id))
      .map(({ id }) => id),
    moved: movedOf(job, landing),
    search: { considered: 0, solved: 0, boundedOut: 0 },
  }
}
