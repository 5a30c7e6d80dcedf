import type { WEB_EN } from '../../en/web/index.ts'
import type { Table } from '../../words.ts'
import { DESCRIBE_WEB_ES } from './describe.ts'
import { FIELD_NAME_ES } from './field-names.ts'
import { FINDINGS_ES } from './findings.ts'
import { JOBS_ES } from './jobs.ts'
import { MATCH_WEB_ES } from './match.ts'
import { OPTION_ES } from './options.ts'
import { PHOTOS_ES } from './photos.ts'
import { SHEET_WEB_ES } from './sheet.ts'
import { SHELL_ES } from './shell.ts'
import { SUPPLY_WEB_ES } from './supply.ts'
import { SURVEY_ES } from './survey.ts'
import { SURVEY_RUN_ES } from './survey-run.ts'
import { SURVEY_SUPPLY_ES } from './survey-supply.ts'
import { WIRING_ES } from './wiring.ts'

/** The same in Spanish: a screen or a sentence that is missing here does not compile. */
export const WEB_ES: Table<typeof WEB_EN> = {
  ...SHELL_ES,
  ...JOBS_ES,
  ...FINDINGS_ES,
  ...SHEET_WEB_ES,
  ...MATCH_WEB_ES,
  ...SURVEY_ES,
  ...SURVEY_RUN_ES,
  ...SURVEY_SUPPLY_ES,
  ...OPTION_ES,
  ...FIELD_NAME_ES,
  ...SUPPLY_WEB_ES,
  ...WIRING_ES,
  ...DESCRIBE_WEB_ES,
  ...PHOTOS_ES,
}
