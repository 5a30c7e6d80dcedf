import { readQuantity } from './quantities.ts'
import type { RawFeed, RawLanding, RawProfile } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'
import type { SourceLine } from './source-lines.ts'

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

/** The contacts that a state closes, and those it opens, by part id; limit contacts are apart. */
export function contactsMoved(
  job: OracleJob,
  state: State,
): { readonly closed: ReadonlySet<string>; readonly opened: ReadonlySet<string> } {
  const commands = job.box.commands.filter(each => state.includes(each.id))
  return {
    closed: new Set(commands.flatMap(each => each.closes ?? [])),
    opened: new Set(commands.flatMap(each => each.opens ?? [])),
  }
}

function modeTest(
  job: OracleJob,
  profile: RawProfile,
  limit: number,
): (commands: State) => boolean {
  const { box, feed } = job
  const sums = assumedSums(job.feed)
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
    return sums.every(amps => {
      const sum = commands.reduce((total, id) => total + (amps.get(id) ?? 0), 0)
      return sum <= allowed + 1e-9
    })
  }
}

const LINES: readonly SourceLine[] = ['leg1', 'leg2', 'leg3']

/** What a feed counts, by command: one sum, or one for each line; none where it does not count. */
function assumedSums({ assumes, assumesOn }: RawFeed): ReadonlyMap<string, number>[] {
  if (!assumes) return []
  const all = Object.entries(assumes).map(([id, amps]): [string, number] => [
    id,
    readQuantity(amps),
  ])
  if (!assumesOn) return [new Map(all)]
  return LINES.map(line => new Map(all.filter(([id]) => (assumesOn[id] ?? line) === line)))
}
