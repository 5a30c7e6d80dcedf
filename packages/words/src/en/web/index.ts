import { DESCRIBE_WEB_EN } from './describe.ts'
import { FIELD_NAME_EN } from './field-names.ts'
import { FINDINGS_EN } from './findings.ts'
import { JOBS_EN } from './jobs.ts'
import { MATCH_WEB_EN } from './match.ts'
import { OPTION_EN } from './options.ts'
import { PHOTOS_EN } from './photos.ts'
import { SHEET_WEB_EN } from './sheet.ts'
import { SHELL_EN } from './shell.ts'
import { SUPPLY_WEB_EN } from './supply.ts'
import { SURVEY_EN } from './survey.ts'
import { SURVEY_RUN_EN } from './survey-run.ts'
import { SURVEY_SUPPLY_EN } from './survey-supply.ts'
import { WIRING_EN } from './wiring.ts'

/** The words of the web app, one file a screen; no two screens share a key. */
export const WEB_EN = {
  ...SHELL_EN,
  ...JOBS_EN,
  ...FINDINGS_EN,
  ...SHEET_WEB_EN,
  ...MATCH_WEB_EN,
  ...SURVEY_EN,
  ...SURVEY_RUN_EN,
  ...SURVEY_SUPPLY_EN,
  ...OPTION_EN,
  ...FIELD_NAME_EN,
  ...SUPPLY_WEB_EN,
  ...WIRING_EN,
  ...DESCRIBE_WEB_EN,
  ...PHOTOS_EN,
} as const
