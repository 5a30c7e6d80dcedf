import type { WireLanding } from '@tubwright/formats'

/** What is really there, where it differs from the plan: by end and by jumper. */
export interface AsBuilt {
  readonly ends: Readonly<Record<string, string>>
  readonly jumpers: Readonly<Record<string, string>>
}

export const NOTHING_MOVED: AsBuilt = { ends: {}, jumpers: {} }

/** Only what a plan knows may lie over it: an end that left the survey since is no end of this job. */
const over = (
  planned: Readonly<Record<string, string>>,
  found: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> => {
  const known = Object.entries(found).filter(([id]) => Object.hasOwn(planned, id))
  return { ...planned, ...Object.fromEntries(known) }
}

/** The landing that is looked at: the plan, with what was found or moved laid over it. */
export const laidOver = (planned: WireLanding, { ends, jumpers }: AsBuilt): WireLanding => ({
  ...planned,
  ends: over(planned.ends, ends),
  jumpers: over(planned.jumpers, jumpers),
})

/** Whether everything sits where the plan has it. */
export const isAsPlannedIn = (planned: WireLanding, asBuilt: AsBuilt): boolean =>
  differing(planned.ends, asBuilt.ends).length === 0 &&
  differing(planned.jumpers, asBuilt.jumpers).length === 0

/** Ids that sit elsewhere than planned. */
export const differing = (
  planned: Readonly<Record<string, string>>,
  found: Readonly<Record<string, string>>,
): readonly string[] =>
  Object.keys(found).filter(id => Object.hasOwn(planned, id) && found[id] !== planned[id])
