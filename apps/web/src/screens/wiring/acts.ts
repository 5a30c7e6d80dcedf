import type { Act, JobState, Json } from '@tubwright/records'
import { documentOf, fieldAt, isSame } from '@tubwright/records'
import type { Taken } from './use-landing.ts'
import { endPath, jumperPath, tickPath } from './use-landing.ts'

const TICK = 'end:'

/** Where an end was when it was ticked: on another box or terminal it is not landed any more. */
const landedAt = ({ box, landing }: Taken, end: string): Json => ({
  box,
  at: landing.ends[end] ?? '',
})

/** Ends that somebody has landed and ticked where the landing has them. */
export function tickedIn(state: JobState, taken: Taken): ReadonlySet<string> {
  const said = documentOf(state, ['ticks'])
  const ticks = typeof said === 'object' && said !== null && !Array.isArray(said) ? said : {}
  return new Set(
    Object.entries(ticks).flatMap(([id, value]) => {
      const end = id.slice(TICK.length)
      return id.startsWith(TICK) && isSame(value, landedAt(taken, end)) ? [end] : []
    }),
  )
}

const isSaid = (state: JobState, path: readonly string[]): boolean =>
  fieldAt(state, path).kind !== 'empty'

const cleared = (state: JobState, path: readonly string[]): readonly Act[] =>
  isSaid(state, path) ? [{ do: 'clear', path }] : []

const isContested = (state: JobState, path: readonly string[]): boolean =>
  fieldAt(state, path).kind === 'conflict'

/** The acts by which a place is as it is found, or as planned again: said only where they differ. */
function placed(
  state: JobState,
  path: readonly string[],
  at: { readonly planned: string | undefined; readonly to: string },
): readonly Act[] {
  if (at.to === at.planned) return cleared(state, path)
  return [{ do: 'set', path, value: at.to }]
}

/** An end is somewhere else: what was ticked of it is not so any more. */
export function moveEnd(
  state: JobState,
  { planned, landing }: Taken,
  end: string,
  to: string,
): readonly Act[] {
  if (landing.ends[end] === to && !isContested(state, endPath(end))) return []
  return [
    ...placed(state, endPath(end), { planned: planned.ends[end], to }),
    ...cleared(state, tickPath(end)),
  ]
}

export function moveJumper(
  state: JobState,
  { planned, landing }: Taken,
  jumper: string,
  to: string,
): readonly Act[] {
  if (landing.jumpers[jumper] === to && !isContested(state, jumperPath(jumper))) return []
  return placed(state, jumperPath(jumper), { planned: planned.jumpers[jumper], to })
}

export const tickEnd = (
  state: JobState,
  taken: Taken,
  end: string,
  isTicked: boolean,
): readonly Act[] =>
  isTicked
    ? [{ do: 'set', path: tickPath(end), value: landedAt(taken, end) }]
    : cleared(state, tickPath(end))

/** What was done, and what takes it back. */
export interface Done {
  readonly kind: 'moved' | 'ticked' | 'unticked'
  readonly what: string
  readonly acts: readonly Act[]
  readonly back: readonly Act[]
}

type Said = Extract<Act, { do: 'set' } | { do: 'clear' }>

const isSaying = (act: Act): act is Said => act.do === 'set' || act.do === 'clear'

/** The acts that put back what a job said before some others. */
export const backTo = (before: JobState, acts: readonly Act[]): readonly Act[] =>
  acts.filter(isSaying).flatMap(({ path }): readonly Act[] => {
    const field = fieldAt(before, path)
    if (field.kind === 'set') return [{ do: 'set', path, value: field.value }]
    return field.kind === 'empty' ? [{ do: 'clear', path }] : []
  })

/** Whether a job still says what was done: what somebody said since is not taken back unseen. */
export const stillStands = (state: JobState, { acts }: Done): boolean =>
  acts.filter(isSaying).every(act => {
    const field = fieldAt(state, act.path)
    if (act.do === 'clear') return field.kind === 'empty'
    return field.kind === 'set' && isSame(field.value, act.value as Json)
  })
