import type { ShelfText } from '../../store/database.ts'
import type { Problem } from './problems.ts'
import type { Writing } from './use-description.ts'
import type { LintView } from './use-lint.ts'

/** A description, with what is known of its text now. */
export interface Parts {
  readonly stored: ShelfText
  readonly writing: Writing
  readonly lint: LintView
  readonly problems: readonly Problem[]
  readonly canWrite: boolean
}
