import { wordsOf } from '../words-of.ts'
import {
  ANOTHER_ES,
  CHANGE_ES,
  CHANGED_NOTE_ES,
  CHANGES_ES,
  CURRENT_ES,
  PLAN_CHANGES_ES,
  SPEC_ES,
  STOPPED_ES,
  SUPPLY_ES,
  TO_GET_ES,
} from './changes.ts'
import { COLD_ASK_ES, METER_ES } from './cold.ts'
import { CONDITION_ES, CONDITION_PAGE_ES } from './condition.ts'
import { DESCRIBE_ES, SKELETON_ES } from './describe.ts'
import { ELECTRICIAN_ES } from './electrician.ts'
import { FIELD_ES } from './fields.ts'
import { LINT_ES, LINT_TALK_ES } from './lint.ts'
import { MATCH_ES } from './match.ts'
import { CANNOT_ES, SETTLED_BY_ES } from './plan.ts'
import { REVIEWED_ES } from './reviewed.ts'
import { COLOUR_ES, LINE_ES, SHEET_ES, SHEET_PAGE_ES } from './sheet.ts'
import { SUPPLY_ASK_ES, SUPPLY_PAGE_ES, SUPPLY_RULE_ES, SUPPLY_SAYS_ES } from './supply.ts'
import { DIAGNOSED_ES, DIAGNOSTIC_ES, REVIEW_ES, SEVERITY_ES, VERDICT_ES } from './terms.ts'
import { VALUE_ES } from './values.ts'
import { ROUND_ES, VERIFY_ES } from './verify.ts'
import { WEB_ES } from './web/index.ts'

/** Everything in Spanish, for Latin America and Spain alike. */
export const SPANISH = wordsOf(
  'es',
  {
    severities: SEVERITY_ES,
    verdicts: VERDICT_ES,
    diagnostics: DIAGNOSTIC_ES,
    diagnosed: DIAGNOSED_ES,
    review: REVIEW_ES,
    values: VALUE_ES,
    verify: VERIFY_ES,
    round: ROUND_ES,
    match: MATCH_ES,
    cannot: CANNOT_ES,
    settledBy: SETTLED_BY_ES,
    change: CHANGE_ES,
    spec: SPEC_ES,
    current: CURRENT_ES,
    another: ANOTHER_ES,
    supply: SUPPLY_ES,
    stopped: STOPPED_ES,
    changes: CHANGES_ES,
    toGet: TO_GET_ES,
    planChanges: PLAN_CHANGES_ES,
    changedNote: CHANGED_NOTE_ES,
    coldAsk: COLD_ASK_ES,
    meter: METER_ES,
    lint: LINT_ES,
    lintTalk: LINT_TALK_ES,
    fields: FIELD_ES,
    skeleton: SKELETON_ES,
    describe: DESCRIBE_ES,
    sheet: SHEET_ES,
    page: SHEET_PAGE_ES,
    colours: COLOUR_ES,
    lines: LINE_ES,
    condition: CONDITION_ES,
    conditionPage: CONDITION_PAGE_ES,
    supplyAsks: SUPPLY_ASK_ES,
    supplyRules: SUPPLY_RULE_ES,
    supplySays: SUPPLY_SAYS_ES,
    supplyPage: SUPPLY_PAGE_ES,
    electrician: ELECTRICIAN_ES,
    web: WEB_ES,
  },
  REVIEWED_ES,
)
