import type { Act } from './entry.ts'
import type { Fork } from './job-state.ts'

/** The act by which somebody says that he looked at every entry under a forked id. */
export const settleOf = ({ id, variants }: Fork): Act => ({ do: 'settle', fork: id, variants })
