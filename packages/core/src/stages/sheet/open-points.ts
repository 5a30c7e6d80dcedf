import type { Finding, Severity } from '../../base/verdict.ts'
import type { Job } from '../../domain/job.ts'
import type { BoxMatch } from '../match/artifact.ts'
import type { Verification } from '../verify/artifact.ts'
import type { OpenPoint, SheetWire } from './artifact.ts'
import type { BoundingPoints } from './bounds.ts'
import { boundText, circuitLabel } from './bounds.ts'
import { text } from './messages.ts'

type Point = Omit<OpenPoint, 'number'>

const RANK: Readonly<Record<Severity, number>> = { danger: 0, warning: 1, caution: 2, notice: 3 }

/** Findings of which there is one a wire or a load: told once, with a list. */
const GATHERED = ['re-identify', 'live-when-off'] as const

function fromFindings(findings: readonly Finding[]): readonly Point[] {
  return findings
    .filter(each => !(GATHERED as readonly string[]).includes(each.message))
    .map(finding => ({
      severity: finding.severity,
      says: { kind: 'finding' as const, finding },
      subjects: finding.subjects,
    }))
}

function assumed(job: Job, verification: Verification, bounding: BoundingPoints): readonly Point[] {
  return verification.assumptions.map(assumption => {
    const { kind, atMost, load, circuit } = assumption
    const isUnknown = kind === 'unknown'
    return {
      severity: isUnknown ? 'warning' : 'caution',
      says: {
        kind: 'text',
        text: text(isUnknown ? 'open.assumed-unknown' : 'open.assumed-range', {
          load: circuitLabel(job, verification, assumption),
          most: boundText(atMost, bounding),
        }),
      },
      subjects: [load, `${load}.${circuit}`],
    }
  })
}

/** Questions of the match that the assumptions do not already ask. */
function questions(match: BoxMatch | undefined, isAssumed: (load: string) => boolean) {
  return (match?.open ?? [])
    .filter(each => !each.subjects.some(isAssumed))
    .map(
      (question): Point => ({
        severity: 'caution',
        says: { kind: 'question', question },
        subjects: question.subjects,
      }),
    )
}

function gathered(job: Job, findings: readonly Finding[], wires: readonly SheetWire[]) {
  const subjectsOf = (message: (typeof GATHERED)[number]) =>
    findings.filter(each => each.message === message).flatMap(each => each.subjects)
  const marked = wires.filter(each => each.reidentify).map(each => each.number)
  const live = subjectsOf('live-when-off')
  const labels = live.map(id => job.loads.find(each => each.id === id)?.label ?? id)
  const point = (subjects: readonly string[], says: Point['says']): Point => ({
    severity: 'notice',
    says,
    subjects,
  })
  return [
    ...(marked.length > 0
      ? [
          // The star at the wire marks it in the drawing.
          point([], { kind: 'text', text: text('open.re-identify', { wires: marked }) }),
        ]
      : []),
    ...(live.length > 0
      ? [point(live, { kind: 'text', text: text('open.live-when-off', { loads: labels }) })]
      : []),
  ]
}

/** What is open, assumed or found, danger first, numbered as the drawing marks it. */
export function openPoints(
  job: Job,
  verification: Verification,
  wires: readonly SheetWire[],
  match: BoxMatch | undefined,
): readonly OpenPoint[] {
  // Numbers do not depend on the sentences: a first round finds those that the second names.
  const bounding = boundingPoints(numbered(pointsOf(job, verification, wires, match, [])))
  return numbered(pointsOf(job, verification, wires, match, bounding))
}

/** The points that bound a draw. */
export const boundingPoints = (points: readonly OpenPoint[]): BoundingPoints =>
  points
    .filter(({ says }) => says.kind === 'finding' && says.finding.verdict === 'provided')
    .map(each => each.number)

function pointsOf(
  job: Job,
  verification: Verification,
  wires: readonly SheetWire[],
  match: BoxMatch | undefined,
  bounding: BoundingPoints,
): readonly Point[] {
  const { findings, assumptions } = verification
  const isAssumed = (id: string) => assumptions.some(each => each.load === id)
  return [
    ...fromFindings(findings),
    ...assumed(job, verification, bounding),
    ...questions(match, isAssumed),
    ...gathered(job, findings, wires),
  ]
}

const numbered = (points: readonly Point[]): readonly OpenPoint[] =>
  points
    .map((point, index) => ({ point, index }))
    .sort((a, b) => RANK[a.point.severity] - RANK[b.point.severity] || a.index - b.index)
    .map(({ point }, index) => ({ number: index + 1, ...point }))
