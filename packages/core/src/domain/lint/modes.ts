import type { ControlBox, Feed, Profile } from '../box/control-box.ts'
import type { State } from '../wiring/states.ts'
import { statesOf } from '../wiring/states.ts'
import { benchJob, benchLanding } from './bench.ts'

type Limit = ControlBox['currentLimit']['offered'][number]

/** A mode by its commands, in one order, so that equal ones are equal texts. */
export const keyOf = ({ commands }: State): string => [...commands].sort().join('+')

/** The greatest and the least current limit that the box offers. */
export const greatestLimit = ({ currentLimit: { offered, factory } }: ControlBox): Limit =>
  offered.reduce((most, each) => (each.si > most.si ? each : most), factory)
export const leastLimit = ({ currentLimit: { offered, factory } }: ControlBox): Limit =>
  offered.reduce((least, each) => (each.si < least.si ? each : least), factory)

/**
 * Every mode of one profile on one feed under one current limit.
 *
 * @returns undefined where the profile has more commands than can be gone through
 */
export function modesOf(
  box: ControlBox,
  feed: Feed,
  profile: Profile,
  currentLimit: Limit,
): readonly State[] | undefined {
  const job = benchJob(box, feed)
  const states = statesOf(job, benchLanding(job, feed, {}, { profile: profile.id, currentLimit }))
  return states.ok ? states.value.filter(each => each.kind === 'mode') : undefined
}

/** The modes of all profiles on one feed, and whether each profile could be gone through. */
export interface AllModes {
  /** Each once, those with few commands first. */
  readonly modes: readonly State[]
  readonly isAll: boolean
}

export function allModes(box: ControlBox, feed: Feed): AllModes {
  const limit = greatestLimit(box)
  const found = new Map<string, State>()
  let isAll = true
  for (const profile of box.profiles) {
    const modes = modesOf(box, feed, profile, limit)
    if (!modes) isAll = false
    for (const mode of modes ?? []) found.set(keyOf(mode), mode)
  }
  const modes = [...found.values()].sort((a, b) => a.commands.size - b.commands.size)
  return { modes, isAll }
}
