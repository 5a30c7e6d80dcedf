import type { Diagnostic } from '../../base/diagnostic.ts'
import { boardOf, type Job } from '../job.ts'
import { isPowered } from '../load/load.ts'
import { idsOf, named } from '../names.ts'
import type { Landing } from './landing.ts'
import { OFF } from './landing.ts'

function checkEnds(job: Job, landing: Landing): readonly Diagnostic[] {
  const known = idsOf(job.ends)
  const unknown = Object.keys(landing.ends).flatMap(id =>
    named(['ends', id], id, known, 'an end of this job'),
  )
  const wrong = job.ends.flatMap(end => {
    const at = landing.ends[end.id]
    if (at === undefined)
      return [
        {
          code: 'missing-key' as const,
          path: ['ends', end.id],
          is: `no word of "${end.id}"`,
          may: `a terminal, or ${OFF.join(', or ')}`,
        },
      ]
    const terminals = (boardOf(job, end.board)?.terminals ?? []).map(t => `${end.board}.${t.id}`)
    return named(['ends', end.id], at, [...OFF, ...terminals], `a terminal of ${end.board}`)
  })
  return [...unknown, ...wrong]
}

function checkJumpers(job: Job, landing: Landing): readonly Diagnostic[] {
  const jumpers = job.box.board.jumpers
  return Object.entries(landing.jumpers).flatMap(([id, position]) => {
    const jumper = jumpers.find(each => each.id === id)
    return jumper
      ? named(['jumpers', id], position, idsOf(jumper.positions), 'a position')
      : named(['jumpers', id], id, idsOf(jumpers), 'a jumper of this box')
  })
}

function checkStraps(job: Job, landing: Landing): readonly Diagnostic[] {
  return Object.entries(landing.straps).flatMap(([id, position]) => {
    const strapped = job.loads.filter(load => isPowered(load) && load.straps !== undefined)
    const load = strapped.find(each => each.id === id)
    return load && isPowered(load) && load.straps
      ? named(['straps', id], position, Object.keys(load.straps.positions), 'a strap position')
      : named(['straps', id], id, idsOf(strapped), 'a load with a strap')
  })
}

/** A landing of another tub or box; none of its ends is then worth a word. */
function checkJob({ tub, box }: Job, landing: Landing): readonly Diagnostic[] {
  if (landing.survey === tub.id && landing.box === box.id) return []
  return [
    {
      code: 'other-job',
      path: [landing.survey === tub.id ? 'box' : 'survey'],
      is: `survey "${landing.survey}" on box "${landing.box}"`,
      may: `survey "${tub.id}" and box "${box.id}"`,
    },
  ]
}

/** What a schema cannot say of a landing: it must speak of every end of its job, and of no other. */
export function checkLanding(job: Job, landing: Landing): readonly Diagnostic[] {
  const other = checkJob(job, landing)
  if (other.length > 0) return other
  return [
    ...checkEnds(job, landing),
    ...checkJumpers(job, landing),
    ...checkStraps(job, landing),
    ...named(
      ['settings', 'profile'],
      landing.settings.profile,
      idsOf(job.box.profiles),
      'a profile of this box',
    ),
  ]
}
