import { atLeast, atMost } from '../../../base/compare.ts'
import type { Inputs, PointJudgement, PointOf, Settled } from '../../../base/settle.ts'
import { settle } from '../../../base/settle.ts'
import type { Severity } from '../../../base/verdict.ts'
import type { Printed } from '../../../domain/codebook/printed.ts'
import type { CodeFinding, Readings } from './artifact.ts'
import type { SupplyEvidence } from './evidence.ts'

/** One requirement on a supply, in one file. */
export interface SupplyRule {
  readonly id: string
  readonly title: string
  /** Which part of the report it belongs to. */
  readonly about: 'segment' | 'circuit' | 'yard' | 'service'
  /** Where its figures come from: the book of the region, or `common practice, no source`. */
  readonly source: string
  readonly check: (evidence: SupplyEvidence) => readonly CodeFinding[]
}

/** What a rule says where everything is known. */
export interface PointFinding extends PointJudgement {
  readonly message: string
  /** `is` and `may` with their `unit`, and whatever else the sentence names. */
  readonly params: Readonly<Record<string, string | number>>
  readonly clause?: Printed | undefined
  readonly readings?: Readings | undefined
  readonly severity?: Severity | undefined
  /** Being exactly at the limit is worth a word: there a load has no margin left. */
  readonly saysTight?: true | undefined
}

type Said = Omit<PointFinding, 'verdict' | 'margin' | 'params'> & {
  readonly params?: PointFinding['params']
}

/** A finding with every field in its place: all are of one shape, whoever made them. */
const said = (
  { message, clause, readings, severity, saysTight }: Said,
  isRight: boolean,
  margin: number,
  params: PointFinding['params'],
): PointFinding => ({
  verdict: isRight ? 'holds' : 'breaks',
  margin,
  message,
  params,
  clause,
  readings,
  severity,
  saysTight,
})

/** Holds where a figure is at most its limit. */
export const within = (is: number, may: number, rest: Said): PointFinding =>
  said(rest, atMost(is, may), may - is, { ...rest.params, is, may })

/** Holds where a figure is at least its limit. */
export const reaches = (is: number, may: number, rest: Said): PointFinding =>
  said(rest, atLeast(is, may), is - may, { ...rest.params, is, may })

const NO_PARAMS: PointFinding['params'] = {}

/** Holds or breaks by a fact that has no figure. */
export const fact = (isRight: boolean, rest: Said): PointFinding =>
  said(
    rest,
    isRight,
    isRight ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY,
    rest.params ?? NO_PARAMS,
  )

/** Where the book has nothing, or nothing that could be sourced. */
export const notCovered = (what: string): PointFinding => ({
  verdict: 'not-covered',
  margin: 0,
  message: `not-covered-${what}`,
  params: {},
})

/** What one rule says of one thing. */
export interface About {
  readonly rule: string
  readonly subjects: readonly string[]
  /** Which of the rule's questions on its subject, where it has several. */
  readonly topic?: string
  /** Where it breaks; what holds is a notice. */
  readonly severity: Severity
  /** Named in every sentence of the rule. */
  readonly params?: PointFinding['params']
}

const severityOf = ({ verdict, judged }: Settled<PointFinding>, severity: Severity): Severity => {
  if (verdict === 'holds') return 'notice'
  const worst = judged.severity ?? severity
  if (verdict === 'breaks') return worst
  return worst === 'danger' ? 'warning' : 'caution'
}

/** Judges a rule over all that its inputs may be. */
export function conclude<const Asked extends Inputs>(
  { rule, subjects, topic = '', severity, params }: About,
  asked: Asked,
  judge: (point: PointOf<Asked>) => PointFinding,
): CodeFinding {
  const settled = settle(asked, judge)
  const { verdict, judged, asks, bounds } = settled
  const isCovered = judged.verdict !== 'not-covered'
  return {
    rule,
    message: judged.message,
    verdict: verdict === 'not-covered' ? 'not-shown' : verdict,
    severity: severityOf(settled, severity),
    subjects,
    topic,
    params: { ...params, ...judged.params },
    clause: judged.clause,
    asks,
    bounds,
    isTight:
      verdict === 'holds' &&
      judged.saysTight === true &&
      Math.abs(judged.margin) <= 1e-9 * Math.abs(limitOf(judged)),
    isCovered,
    readings: judged.readings,
  }
}

const limitOf = ({ params }: PointFinding): number => {
  const { may } = params
  return typeof may === 'number' ? may : 0
}
