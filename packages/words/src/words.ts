import type {
  BoxChanges,
  Change,
  CodeFinding,
  ColdPart,
  ColdReading,
  Diagnostic,
  Finding,
  InsulationTest,
  LintFinding,
  OpenQuestion,
  Printed,
  Requirement,
  Shortfall,
  SupplyCondition,
  SupplyReport,
} from '@tubwright/core'
import type {
  ANOTHER_EN,
  CHANGE_EN,
  CHANGES_EN,
  CURRENT_EN,
  PLAN_CHANGES_EN,
  SPEC_EN,
  STOPPED_EN,
  SUPPLY_EN,
  TO_GET_EN,
} from './en/changes.ts'
import type { COLD_ASK_EN, METER_EN } from './en/cold.ts'
import type { CONDITION_EN, CONDITION_PAGE_EN } from './en/condition.ts'
import type { DESCRIBE_EN, SKELETON_EN } from './en/describe.ts'
import type { ELECTRICIAN_EN } from './en/electrician.ts'
import type { FIELD_EN } from './en/fields.ts'
import type { LINT_EN, LINT_TALK_EN } from './en/lint.ts'
import type { MATCH_EN } from './en/match.ts'
import type { CANNOT_EN, SETTLED_BY_EN } from './en/plan.ts'
import type { COLOUR_EN, LINE_EN, SHEET_EN, SHEET_PAGE_EN } from './en/sheet.ts'
import type { SUPPLY_ASK_EN, SUPPLY_PAGE_EN, SUPPLY_RULE_EN, SUPPLY_SAYS_EN } from './en/supply.ts'
import type { DIAGNOSED_EN, DIAGNOSTIC_EN, REVIEW_EN, SEVERITY_EN, VERDICT_EN } from './en/terms.ts'
import type { VALUE_EN } from './en/values.ts'
import type { ROUND_EN, VERIFY_EN } from './en/verify.ts'
import type { WEB_EN } from './en/web/index.ts'

/** A language that the product speaks, as in the `lang` attribute. */
export type Language = 'en' | 'es'

/** A table of sentences in any language: the keys of the English one, all of them. */
export type Table<English> = Readonly<Record<keyof English, string>>

/** The same where an entry may have several lines. */
export type LinedTable<English> = {
  readonly [Key in keyof English]: English[Key] extends string ? string : readonly string[]
}

/** Every sentence of one language, by table and message. */
export interface Tables {
  readonly severities: Table<typeof SEVERITY_EN>
  readonly verdicts: Table<typeof VERDICT_EN>
  readonly diagnostics: Table<typeof DIAGNOSTIC_EN>
  readonly diagnosed: Table<typeof DIAGNOSED_EN>
  readonly review: Table<typeof REVIEW_EN>
  /** Words of the files, where a sentence is given one. */
  readonly values: Table<typeof VALUE_EN>
  readonly verify: Table<typeof VERIFY_EN>
  readonly round: Table<typeof ROUND_EN>
  readonly match: Table<typeof MATCH_EN>
  readonly cannot: Table<typeof CANNOT_EN>
  readonly settledBy: Table<typeof SETTLED_BY_EN>
  readonly change: Table<typeof CHANGE_EN>
  readonly spec: Table<typeof SPEC_EN>
  readonly current: Table<typeof CURRENT_EN>
  readonly another: Table<typeof ANOTHER_EN>
  readonly supply: Table<typeof SUPPLY_EN>
  readonly stopped: Table<typeof STOPPED_EN>
  readonly changes: Table<typeof CHANGES_EN>
  readonly toGet: Table<typeof TO_GET_EN>
  readonly planChanges: Table<typeof PLAN_CHANGES_EN>
  readonly changedNote: string
  readonly coldAsk: Table<typeof COLD_ASK_EN>
  readonly meter: Table<typeof METER_EN>
  readonly lint: Table<typeof LINT_EN>
  readonly lintTalk: Table<typeof LINT_TALK_EN>
  readonly fields: Table<typeof FIELD_EN>
  readonly skeleton: LinedTable<typeof SKELETON_EN>
  readonly describe: Table<typeof DESCRIBE_EN>
  readonly sheet: Table<typeof SHEET_EN>
  readonly page: Table<typeof SHEET_PAGE_EN>
  readonly colours: Table<typeof COLOUR_EN>
  readonly lines: Table<typeof LINE_EN>
  readonly condition: Table<typeof CONDITION_EN>
  readonly conditionPage: Table<typeof CONDITION_PAGE_EN>
  readonly supplyAsks: Table<typeof SUPPLY_ASK_EN>
  readonly supplyRules: Table<typeof SUPPLY_RULE_EN>
  readonly supplySays: Table<typeof SUPPLY_SAYS_EN>
  readonly supplyPage: Table<typeof SUPPLY_PAGE_EN>
  readonly electrician: Table<typeof ELECTRICIAN_EN>
  readonly web: Table<typeof WEB_EN>
}
export type TableName = keyof Tables

/** One change, as it is told. */
export interface ToldChange {
  readonly change: Change
  readonly told: string
}

/** One danger of a supply, in words. */
export interface ToldDanger {
  readonly reason: SupplyCondition['dangers'][number]['reason']
  readonly severity: SupplyCondition['dangers'][number]['severity']
  /** Beside a signal word. */
  readonly text: string
  /** On a line without one: what is shown and dangerous stops all work. */
  readonly line: string
}

/** What is made of data by the sentences of one language. */
export interface Tellers {
  /**
   * One finding, with what was on where it is worst.
   *
   * @param nameOf - what a person calls a command of the box
   */
  readonly tellFinding: (finding: Finding, nameOf?: (command: string) => string) => string
  /** Why a box cannot serve, what is open, or what a tub asks. */
  readonly tellMatch: (told: Shortfall | OpenQuestion | Requirement) => string
  /** What a code book says: figures, clause, what would settle it. */
  /** Which box was counted for a supply, and what it is set to. */
  readonly tellFitted: (fitted: NonNullable<SupplyReport['fitted']>) => string
  readonly tellCode: (finding: CodeFinding, nameOf?: (id: string) => string) => string
  /** What is dangerous about a supply by its readings. */
  readonly tellDangers: (condition: SupplyCondition) => readonly ToldDanger[]
  /** What the readings of a supply say, a line each; its dangers come first, by `tellDangers`. */
  readonly tellCondition: (
    condition: SupplyCondition,
    nameOf?: (id: string) => string,
  ) => readonly string[]
  /** Where a figure is printed. */
  readonly tellClause: (printed: Printed) => string
  /** What is asked for at a place of the survey. */
  readonly tellAsk: (at: string, nameOf?: (id: string) => string) => string
  /** What lint found. */
  readonly tellLint: (finding: LintFinding) => string
  /** What is, what may be, what was perhaps meant; a warning says it is one. */
  readonly tellDiagnostic: (diagnostic: Diagnostic) => string
  /**
   * One change.
   *
   * @param withPlate - that a blanking plate comes with a new keypad
   */
  readonly tellChange: (change: Change, withPlate?: boolean) => string
  /** Changes in their order, each with itself. */
  readonly tellChanges: (changes: readonly Change[]) => readonly ToldChange[]
  /** Which change of the supply a shortfall asks for. */
  readonly tellSupply: (shortfall: Shortfall) => string
  /** What changes would do for a box, in one line each: the changes themselves are told apart. */
  readonly tellOutcome: (changes: BoxChanges) => readonly string[]
  /** A part of the cold network as a person calls it. */
  readonly tellColdPart: (part: ColdPart) => string
  /**
   * What an ohmmeter reads, a line each.
   *
   * @param nameOf - what a person calls a load
   */
  readonly tellColdReading: (
    reading: ColdReading,
    nameOf: (load: string) => string,
  ) => readonly string[]
  /** What an insulation tester reads and what is unplugged for it, a line each. */
  readonly tellInsulation: (
    test: InsulationTest,
    nameOf: (load: string) => string,
  ) => readonly string[]
  /** What a field is for, or undefined for a name that is none. */
  readonly fieldText: (name: string) => string | undefined
}

/** What is known of how good a translation is. */
export interface Review {
  /**
   * Whether safety rests on a sentence that nobody qualified has read in this language.
   *
   * @param id - as the data names its sentence, such as `dead-short` or `caution.lock`; of two tables
   *   with one such name both count. `table/id` asks for the one.
   */
  readonly isUnreviewed: (id: string) => boolean
  readonly hasUnreviewed: boolean
  /** A word or two, beside such a sentence. */
  readonly unreviewedMark: string
  /** A whole sentence, once on a screen and at the head of a sheet. */
  readonly unreviewedNotice: string
}

/** Everything of one language. */
export interface Words extends Tables, Tellers, Review {
  readonly language: Language
}
