import { readQuantity } from './quantities.ts'
import type { RawLanding, RawProfile } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'

/** The commands that are on. */
export type State = readonly string[]

/** The modes of a landing's settings, and modes and transitions together; all-off is the first. */
export interface States {
  readonly modes: readonly State[]
  readonly all: readonly State[]
}

/** Every set of commands that the box can reach with the settings of a landing. */
export function statesOf(job: OracleJob, settings: RawLanding['settings']): States {
  const profile = job.box.profiles.find(each => each.id === settings.profile)
  if (!profile) throw new Error(`no profile "${settings.profile}"`)
  const { commands } = profile
  const bit = (command: string): number => {
    const at = commands.indexOf(command)
    return at < 0 ? 0 : 1 << at
  }
  const bits = (all: readonly string[]): number => all.reduce((sum, each) => sum | bit(each), 0)
  const isMode = modeTest(job, profile, readQuantity(settings.currentLimit))
  const named = (set: number): State => commands.filter((_, at) => (set >> at) & 1)
  const modes: number[] = []
  for (let set = 0; set < 1 << commands.length; set++) if (isMode(named(set))) modes.push(set)
  const heat = bit(job.box.heat)
  const heatsWith = bits(profile.heatsWith)
  const all = new Set(modes)
  for (const a of modes)
    for (const b of modes) all.add((a & heatsWith) === (b & heatsWith) ? a & b : a & b & ~heat)
  return { modes: modes.map(named), all: [...all].sort((a, b) => a - b).map(named) }
}

/** The contacts that a state closes, by part id; limit contacts are apart. */
export function contactsClosed(job: OracleJob, state: State): ReadonlySet<string> {
  const on = new Set(state)
  return new Set(job.box.commands.filter(each => on.has(each.id)).flatMap(each => each.closes))
}

function modeTest(
  job: OracleJob,
  profile: RawProfile,
  limit: number,
): (commands: State) => boolean {
  const { box, feed } = job
  const assumed = new Map(
    Object.entries(feed.assumes ?? {}).map(([id, amps]) => [id, readQuantity(amps)]),
  )
  const follows = Object.entries(profile.follows ?? {}).filter(([a]) =>
    profile.commands.includes(a),
  )
  const allowed = box.currentLimit.names === 'draw' ? limit : 0.8 * limit
  return commands => {
    const on = new Set(commands)
    const isExclusive = (box.exclusive ?? []).some(set => set.filter(id => on.has(id)).length > 1)
    const isFollowing = follows.every(([a, b]) => on.has(a) === on.has(b))
    if (isExclusive || !isFollowing) return false
    if (on.has(box.heat) && !profile.heatsWith.some(id => on.has(id))) return false
    if (on.has(box.heat) && (feed.heatYieldsTo ?? []).some(id => on.has(id))) return false
    const sum = commands.reduce((total, id) => total + (assumed.get(id) ?? 0), 0)
    return feed.assumes === undefined || sum <= allowed + 1e-9
  }
}
