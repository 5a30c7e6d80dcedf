import { SITUATIONS } from '../../../domain/supply/readings.ts'
import type { Interval, Measurable, NextReading } from './artifact.ts'
import type { Fit, FittingCell, Needed } from './fit.ts'
import { shown } from './fit.ts'
import type { Predictor } from './predict.ts'

/** What a meter would show in one stretch of what fits. */
function showing(
  { predicted, measurables }: Predictor,
  { candidate }: Fit,
  { ohms, source }: FittingCell,
  measurable: number,
): Interval {
  const span = predicted(candidate, ohms, measurable)
  const of = measurables[measurable] as Measurable
  return shown(of, { from: span.from * source.from, to: span.to * source.to })
}

const isApart = (a: Interval, b: Interval): boolean => a.to < b.from || b.to < a.from

/** How much of what two fits leave open a reading would tell apart, from nothing to all of it. */
function tellsApart(a: readonly Interval[], b: readonly Interval[]): number {
  let count = 0
  for (const one of a) for (const other of b) if (isApart(one, other)) count++
  return count / (a.length * b.length)
}

/** Pairs of fits that do not come to the same. */
const pairsOf = (labels: readonly string[]): readonly (readonly [number, number])[] =>
  labels.flatMap((one, a) =>
    labels.flatMap((other, b) => (a < b && one !== other ? [[a, b] as const] : [])),
  )

/**
 * How much each measurable tells apart of the fits that come to different things.
 *
 * @param labels - what each fit comes to
 */
export function splitsOf(
  predictor: Predictor,
  fits: readonly Fit[],
  labels: readonly string[],
  measurable: number,
): number {
  const bands = fits.map(fit => fit.cells.map(cell => showing(predictor, fit, cell, measurable)))
  return pairsOf(labels).reduce(
    (sum, [a, b]) => sum + tellsApart(bands[a] ?? [], bands[b] ?? []),
    0,
  )
}

/** Whether any reading at the tub, taken or not, could tell two fits apart. */
export const canTellApart = (predictor: Predictor, a: Fit, b: Fit): boolean =>
  predictor.measurables.some((_, index) => splitsOf(predictor, [a, b], ['a', 'b'], index) > 0)

/** A reading with less of a load on is preferred where it tells so much of what the best one tells. */
const SAFER_SHARE = 0.5

/**
 * The reading not yet taken that tells most apart of what fits, in the safest situation that has one
 * nearly as good: with the loads off before idle, idle before heating.
 */
export function nextReading(
  predictor: Predictor,
  fits: readonly Fit[],
  labels: readonly string[],
  taken: readonly Needed[],
): NextReading | undefined {
  const known = new Set(taken.map(each => each.measurable))
  const pairs = pairsOf(labels).length
  const all = predictor.measurables.flatMap((of, index): readonly NextReading[] =>
    known.has(index) ? [] : [{ of, tellsApart: splitsOf(predictor, fits, labels, index), pairs }],
  )
  const most = Math.max(0, ...all.map(each => each.tellsApart))
  if (most === 0) return undefined
  for (const situation of SITUATIONS) {
    const here = all.filter(each => each.of.situation === situation)
    const best = here.reduce<NextReading | undefined>(
      (kept, each) => (kept && kept.tellsApart >= each.tellsApart ? kept : each),
      undefined,
    )
    if (best && best.tellsApart >= SAFER_SHARE * most) return best
  }
  return undefined
}
