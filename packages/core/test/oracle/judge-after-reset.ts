import type { Judgement } from './judge-landing.ts'
import { judgeLanding } from './judge-landing.ts'
import type { Overrides, RawLanding } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'

/** What a reset of the box makes of a landing. */
export interface ResetJudgement {
  /** Not counted: undecided after the reset, or hazardous before it already. */
  readonly class: 'hazardous' | 'not hazardous' | 'not counted'
  readonly reasons: readonly string[]
}

/**
 * Judges a landing with the settings that the box falls back to by itself.
 *
 * @param options.before what the landing is by itself, where that is known already
 */
export function judgeAfterReset(
  job: OracleJob,
  landing: RawLanding,
  overrides: Overrides = {},
  options: { readonly before?: Judgement; readonly first?: boolean } = {},
): ResetJudgement {
  const { resetsTo } = job.box
  if (!resetsTo) return { class: 'not hazardous', reasons: [] }
  const before = options.before ?? judgeLanding(job, landing, overrides, { first: true })
  if (before.class === 'hazardous') return { class: 'not counted', reasons: before.reasons }
  const settings = { ...landing.settings, ...resetsTo }
  const after = judgeLanding(job, { ...landing, settings }, overrides, options)
  if (after.class === 'hazardous') return { class: 'hazardous', reasons: after.reasons }
  return after.class === 'undecided'
    ? { class: 'not counted', reasons: after.reasons }
    : { class: 'not hazardous', reasons: [] }
}
