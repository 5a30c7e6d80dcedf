import { wordsOf } from '../words-of.ts'
import {
  ANOTHER_EN,
  CHANGE_EN,
  CHANGED_NOTE_EN,
  CHANGES_EN,
  CURRENT_EN,
  PLAN_CHANGES_EN,
  SPEC_EN,
  STOPPED_EN,
  SUPPLY_EN,
  TO_GET_EN,
} from './changes.ts'
import { COLD_ASK_EN, METER_EN } from './cold.ts'
import { CONDITION_EN, CONDITION_PAGE_EN } from './condition.ts'
import { DESCRIBE_EN, SKELETON_EN } from './describe.ts'
import { ELECTRICIAN_EN } from './electrician.ts'
import { FIELD_EN } from './fields.ts'
import { LINT_EN, LINT_TALK_EN } from './lint.ts'
import { MATCH_EN } from './match.ts'
import { CANNOT_EN, SETTLED_BY_EN } from './plan.ts'
import { COLOUR_EN, LINE_EN, SHEET_EN, SHEET_PAGE_EN } from './sheet.ts'
import { SUPPLY_ASK_EN, SUPPLY_PAGE_EN, SUPPLY_RULE_EN, SUPPLY_SAYS_EN } from './supply.ts'
import { DIAGNOSED_EN, DIAGNOSTIC_EN, REVIEW_EN, SEVERITY_EN, VERDICT_EN } from './terms.ts'
import { VALUE_EN } from './values.ts'
import { ROUND_EN, VERIFY_EN } from './verify.ts'
import { WEB_EN } from './web/index.ts'

/** Everything in English: the language that the others are translated from. */
export const ENGLISH = wordsOf(
  'en',
  {
    severities: SEVERITY_EN,
    verdicts: VERDICT_EN,
    diagnostics: DIAGNOSTIC_EN,
    diagnosed: DIAGNOSED_EN,
    review: REVIEW_EN,
    values: VALUE_EN,
    verify: VERIFY_EN,
    round: ROUND_EN,
    match: MATCH_EN,
    cannot: CANNOT_EN,
    settledBy: SETTLED_BY_EN,
    change: CHANGE_EN,
    spec: SPEC_EN,
    current: CURRENT_EN,
    another: ANOTHER_EN,
    supply: SUPPLY_EN,
    stopped: STOPPED_EN,
    changes: CHANGES_EN,
    toGet: TO_GET_EN,
    planChanges: PLAN_CHANGES_EN,
    changedNote: CHANGED_NOTE_EN,
    coldAsk: COLD_ASK_EN,
    meter: METER_EN,
    lint: LINT_EN,
    lintTalk: LINT_TALK_EN,
    fields: FIELD_EN,
    skeleton: SKELETON_EN,
    describe: DESCRIBE_EN,
    sheet: SHEET_EN,
    page: SHEET_PAGE_EN,
    colours: COLOUR_EN,
    lines: LINE_EN,
    condition: CONDITION_EN,
    conditionPage: CONDITION_PAGE_EN,
    supplyAsks: SUPPLY_ASK_EN,
    supplyRules: SUPPLY_RULE_EN,
    supplySays: SUPPLY_SAYS_EN,
    supplyPage: SUPPLY_PAGE_EN,
    electrician: ELECTRICIAN_EN,
    web: WEB_EN,
  },
  'all',
)

/** The functions of English by their own names. */
export const {
  tellFinding,
  tellMatch,
  tellLint,
  tellDiagnostic,
  tellChange,
  tellChanges,
  tellSupply,
  tellOutcome,
  tellColdPart,
  tellColdReading,
  tellInsulation,
  fieldText,
} = ENGLISH

export * from './changes.ts'
export * from './cold.ts'
export * from './describe.ts'
export * from './electrician.ts'
export * from './fields.ts'
export * from './ladder.ts'
export * from './lint.ts'
export * from './match.ts'
export * from './plan.ts'
export * from './sheet.ts'
export * from './terms.ts'
export * from './values.ts'
export * from './verify.ts'
export * from './web/index.ts'
