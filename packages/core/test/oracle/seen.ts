import type { Findings, Level } from './findings.ts'
import { both, not, note } from './findings.ts'
import type { OracleJob } from './read-job.ts'
import type { Settled } from './settle-state.ts'

/** One settled state, and where to write what it shows. */
export interface Seen {
  readonly job: OracleJob
  readonly findings: Findings
  readonly settled: Settled
  /** For the reasons: the commands that are on. */
  readonly state: string
  /** Whether the box reaches it, it is not cleared, and no fuse is near its blow. */
  readonly holds: Level
}

export const seenState = (
  job: OracleJob,
  findings: Findings,
  settled: Settled,
  at: { readonly name: string; readonly isReached: Level },
): Seen => ({
  job,
  findings,
  settled,
  state: at.name,
  holds: both(not(settled.cleared), settled.fuse === 1 ? 1 : 2, at.isReached),
})

/** Notes what a state shows, as far as the state holds. */
export const tell = (
  seen: Seen,
  kind: string,
  subject: string,
  level: Level,
  text: () => string,
): void =>
  note(
    seen.findings,
    { kind, subject, level: both(level, seen.holds) },
    () => `${text()} in state ${seen.state}`,
  )

export const round = (figure: number): string => String(Number(figure.toPrecision(4)))
