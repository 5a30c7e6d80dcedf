import type { Finding, Severity } from '../../base/verdict.ts'
import { isToHeed } from '../../base/verdict.ts'
import type { Job } from '../../domain/job.ts'
import type { BoxMatch } from '../match/artifact.ts'
import type { Verification } from '../verify/artifact.ts'
import type { OpenPoint, SheetWire } from './artifact.ts'
import type { Bound } from './bounds.ts'
import { boundLabel, boundText, withTightest } from './bounds.ts'
import { text } from './messages.ts'
import { runsOf } from './site.ts'

type Point = Omit<OpenPoint, 'number'>

const RANK: Readonly<Record<Severity, number>> = { danger: 0, warning: 1, caution: 2, notice: 3 }

/** Findings of which there is one a wire or a load: told once, with a list. */
const GATHERED = ['re-identify', 'live-when-off'] as const

function fromFindings(findings: readonly Finding[], bounds: readonly Bound[]): readonly Point[] {
  return findings
    .filter(each => !(GATHERED as readonly string[]).includes(each.message))
    .map(each => withTightest(each, bounds))
    .map(finding => ({
      severity: finding.severity,
      says: { kind: 'finding' as const, finding },
      subjects: finding.subjects,
    }))
}

function assumed(job: Job, verification: Verification, bounds: readonly Bound[]): readonly Point[] {
  return bounds.map(bound => {
    const { kind, load, circuits } = bound
    const isUnknown = kind === 'unknown'
    return {
      severity: isUnknown ? 'warning' : 'caution',
      says: {
        kind: 'text',
        text: text(isUnknown ? 'open.assumed-unknown' : 'open.assumed-range', {
          load: boundLabel(job, verification, bound),
          bound: boundText(bound),
          step: text('step.loads'),
        }),
      },
      subjects: [load, ...circuits.map(each => `${load}.${each}`)],
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
          point([], { kind: 'text', text: text('open.re-identify', { wires: runsOf(marked) }) }),
        ]
      : []),
    ...(live.length > 0
      ? [point(live, { kind: 'text', text: text('open.live-when-off', { loads: labels }) })]
      : []),
  ]
}

/**
 * What is open, assumed or found, danger first, numbered as the drawing marks it.
 *
 * @param ofTub - what of this tub has to be heeded though no solution shows it
 */
export function openPoints(
  job: Job,
  verification: Verification,
  wires: readonly SheetWire[],
  match: BoxMatch | undefined,
  bounds: readonly Bound[],
  ofTub: readonly Point[],
): readonly OpenPoint[] {
  const { findings, assumptions } = verification
  const isAssumed = (id: string) => assumptions.some(each => each.load === id)
  return numbered([
    ...fromFindings(findings, bounds),
    ...ofTub,
    ...assumed(job, verification, bounds),
    ...questions(match, isAssumed),
    ...gathered(job, findings, wires),
  ])
}

/** The points that the plan holds only with: whatever warns, and whatever is not shown outright. */
export const conditionsOf = (open: readonly OpenPoint[]): readonly OpenPoint[] =>
  open.filter(
    ({ severity, says }) =>
      severity !== 'notice' || (says.kind === 'finding' && isToHeed(says.finding)),
  )

const numbered = (points: readonly Point[]): readonly OpenPoint[] =>
  points
    .map((point, index) => ({ point, index }))
    .sort((a, b) => RANK[a.point.severity] - RANK[b.point.severity] || a.index - b.index)
    .map(({ point }, index) => ({ number: index + 1, ...point }))
