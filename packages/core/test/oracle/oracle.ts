/**
 * The oracle: a second reading of `docs/electrical-model.md` and `DEFINITIONS.md`, from the files
 * to the verdict. It shares no code with what it judges.
 */
export type { ResetJudgement } from './judge-after-reset.ts'
export { judgeAfterReset } from './judge-after-reset.ts'
export type { Judgement } from './judge-landing.ts'
export { judgeLanding } from './judge-landing.ts'
export type { Overrides, RawLanding } from './raw-files.ts'
export type { OracleJob } from './read-job.ts'
export { readJob } from './read-job.ts'
export type { State, States } from './states.ts'
export { statesOf } from './states.ts'
export type { WrongLanding } from './wrong-landings.ts'
export { wrongLandings } from './wrong-landings.ts'
