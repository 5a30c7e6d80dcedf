import { atMost } from '../../base/compare.ts'
import type { Outcome } from '../../base/outcome.ts'
import { fail, ok } from '../../base/outcome.ts'
import type { FeedFunction } from '../board/board.ts'
import { LINES } from '../board/board.ts'
import type { ControlBox, Feed, Profile } from '../box/control-box.ts'
import type { Job } from '../job.ts'
import { BOX } from '../job.ts'
import type { Landing } from '../landing/landing.ts'

/** A set of outputs energised together that the box can reach, or passes through on the way. */
export interface State {
  readonly kind: 'mode' | 'transition'
  readonly commands: ReadonlySet<string>
}

/** Enumeration stopped: never a verdict. */
export interface StatesFailure {
  readonly reason: 'limit-reached'
  readonly limit: number
}

/** What arrives at the box by a cable conductor. */
export const arriving = (job: Job): ReadonlySet<FeedFunction> =>
  new Set(
    job.tub.supply.cables
      .filter(cable => cable.to === BOX)
      .flatMap(cable => cable.conductors.map(each => each.function)),
  )

const functionsOf = (feed: Feed): readonly FeedFunction[] =>
  Object.keys(feed.lands) as FeedFunction[]

/**
 * The feed of the box that this supply answers to, or undefined when no feed has its system.
 *
 * Of the feeds whose every function arrives, the one that uses most; else the one that asks least.
 */
export function feedOf(job: Job): Feed | undefined {
  const here = arriving(job)
  const ofSystem = job.box.feeds.filter(each => each.system === job.tub.supply.system)
  const served = ofSystem.filter(each => functionsOf(each).every(need => here.has(need)))
  const count = (feed: Feed) => functionsOf(feed).length
  const best = (feeds: readonly Feed[], better: (a: number, b: number) => boolean) =>
    feeds.reduce<Feed | undefined>(
      (kept, each) => (kept && !better(count(each), count(kept)) ? kept : each),
      undefined,
    )
  return best(served, (a, b) => a > b) ?? best(ofSystem, (a, b) => a < b)
}

export const profileOf = (box: ControlBox, landing: Landing): Profile | undefined =>
  box.profiles.find(each => each.id === landing.settings.profile)

/** What the box lets its assumed amps add up to [A]. */
export const allowedAmps = (box: ControlBox, setting: number): number =>
  box.currentLimit.names === 'breaker' ? 0.8 * setting : setting

const COMMANDS_MAX = 12

/** Commands as bits, so that some thousand landings a second can be enumerated afresh. */
interface Masks {
  readonly ids: readonly string[]
  readonly heat: number
  readonly heatsWith: number
  readonly heatYieldsTo: number
  readonly exclusive: readonly number[]
  /** Follower and leader. */
  readonly follows: readonly (readonly [number, number])[]
  /** Assumed amps by bit, once a line where they are summed so; none where the box does not shed. */
  readonly sums: readonly (readonly number[])[]
}

/** What is summed: everything, or line by line what hangs on it. */
function assumedSums(feed: Feed, ids: readonly string[]): readonly (readonly number[])[] {
  const { assumes, assumesOn } = feed
  if (!assumes) return []
  const ampsOf = (id: string) => assumes[id]?.si ?? 0
  if (!assumesOn) return [ids.map(ampsOf)]
  return LINES.map(line =>
    ids.map(id => (assumesOn[id] === undefined || assumesOn[id] === line ? ampsOf(id) : 0)),
  )
}

function masksOf(box: ControlBox, profile: Profile, feed: Feed | undefined): Masks {
  const ids = profile.commands
  const bit = (id: string): number => {
    const index = ids.indexOf(id)
    return index < 0 ? 0 : 1 << index
  }
  const bits = (all: readonly string[]): number => all.reduce((sum, id) => sum | bit(id), 0)
  return {
    ids,
    heat: bit(box.heat),
    heatsWith: bits(profile.heatsWith),
    heatYieldsTo: bits(feed?.heatYieldsTo ?? []),
    exclusive: box.exclusive.map(bits),
    follows: Object.entries(profile.follows).map(([a, b]) => [bit(a), bit(b)] as const),
    sums: feed ? assumedSums(feed, ids) : [],
  }
}

const hasTwo = (bits: number): boolean => (bits & (bits - 1)) !== 0

/** Whether profile, interlocks and shedding allow these commands together. */
function isReachable(on: number, masks: Masks, limit: number): boolean {
  if (masks.exclusive.some(set => hasTwo(on & set))) return false
  for (const [follower, leader] of masks.follows)
    if (((on & follower) !== 0) !== ((on & leader) !== 0)) return false
  const heats = (on & masks.heat) !== 0
  if (heats && ((on & masks.heatsWith) === 0 || (on & masks.heatYieldsTo) !== 0)) return false
  return masks.sums.every(all =>
    atMost(
      all.reduce((sum, amps, index) => (on & (1 << index) ? sum + amps : sum), 0),
      limit,
    ),
  )
}

/** What is on while the box goes from one mode to another: it breaks before it makes. */
const between = (a: number, b: number, masks: Masks): number =>
  (a & masks.heatsWith) === (b & masks.heatsWith) ? a & b : a & b & ~masks.heat

/**
 * Every state the box can be in with this profile and setting: modes, all-off first, then the
 * transitions between them that are no mode themselves.
 *
 * @returns fails with 'limit-reached' past 12 commands: an enumeration cut short proves nothing
 */
export function statesOf(job: Job, landing: Landing): Outcome<readonly State[], StatesFailure> {
  const { box } = job
  const profile = profileOf(box, landing)
  if (!profile) return ok([{ kind: 'mode', commands: new Set() }])
  if (profile.commands.length > COMMANDS_MAX)
    return fail({ reason: 'limit-reached', limit: COMMANDS_MAX })
  const masks = masksOf(box, profile, feedOf(job))
  const limit = allowedAmps(box, landing.settings.currentLimit.si)
  const modes: number[] = []
  for (let on = 0; on < 1 << masks.ids.length; on++)
    if (isReachable(on, masks, limit)) modes.push(on)
  const seen = new Set(modes)
  const passing: number[] = []
  for (const a of modes)
    for (const b of modes) {
      const on = between(a, b, masks)
      if (seen.has(on)) continue
      seen.add(on)
      passing.push(on)
    }
  const state = (kind: State['kind']) => (on: number) => ({
    kind,
    commands: new Set(masks.ids.filter((_, index) => on & (1 << index))),
  })
  return ok([...modes.map(state('mode')), ...passing.map(state('transition'))])
}
