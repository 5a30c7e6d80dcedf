import { atMost } from '../../../base/compare.ts'
import { boundsOf } from '../../../base/known.ts'
import { isPoor } from '../../../domain/wiring/supply-faults.ts'
import { clampAccuracy, voltAccuracy } from '../../../domain/wiring/volt-meter.ts'
import type { Interval, Measurable, MeterReading, Misfit } from './artifact.ts'
import type { Candidate, Predictor } from './predict.ts'
import { HALVINGS, POOR_OHMS } from './tolerances.ts'

/** A reading as what it leaves open: between which values the truth lies. */
export interface Needed {
  readonly reading: MeterReading
  readonly measurable: number
  readonly truth: Interval
}

const accuracyOf = ({ kind }: Measurable, value: number): number =>
  kind === 'volts' ? voltAccuracy(value) : clampAccuracy(value)

/** What a meter may show of values in an interval. */
export const shown = (of: Measurable, { from, to }: Interval): Interval => ({
  from: Math.max(0, from - accuracyOf(of, from)),
  to: to + accuracyOf(of, to),
})

/**
 * What readings leave open; an unknown one leaves everything open and is left out, and so is one of a
 * load that is not on then.
 */
export const neededBy = (
  readings: readonly MeterReading[],
  { indexOf }: Pick<Predictor, 'indexOf'>,
): readonly Needed[] =>
  readings.flatMap(reading => {
    const bounds = boundsOf<'V' | 'A'>(reading.value)
    const measurable = indexOf(reading)
    if (!bounds || measurable === undefined) return []
    return [{ reading, measurable, truth: shown(reading, bounds) }]
  })

/** How far the source may lie from nominal for a candidate to make what was read. */
interface Reach {
  readonly source: Interval
  /** The readings that bound it; undefined where the band does. */
  readonly least: Needed | undefined
  readonly most: Needed | undefined
}

/** All readings grow with the source alike, so each of them bounds it. */
function reachOf(
  predictor: Predictor,
  candidate: Candidate,
  ohms: Interval,
  needed: readonly Needed[],
  band: Interval,
): Reach {
  let { from, to } = band
  let [least, most]: [Needed | undefined, Needed | undefined] = [undefined, undefined]
  for (const each of needed) {
    const span = predictor.predicted(candidate, ohms, each.measurable)
    const [low, high] = [each.truth.from / span.to, each.truth.to / span.from]
    if (each.truth.from > 0 && low > from) [from, least] = [low, each]
    if (high < to) [to, most] = [high, each]
  }
  return { source: { from, to }, least, most }
}

const fits = ({ source }: Reach): boolean => atMost(source.from, source.to)

/** One stretch of ohms in which a candidate fits, and what the source then is. */
export interface FittingCell {
  readonly ohms: Interval
  readonly source: Interval
}

/** A candidate that makes everything that was read; its cells in the order of their ohms. */
export interface Fit {
  readonly candidate: Candidate
  readonly cells: readonly FittingCell[]
  /** From the least to the greatest ohms that fit, rounded outwards [Ω]. */
  readonly ohms: Interval | undefined
}

/** A candidate that does not. */
export interface Miss {
  readonly candidate: Candidate
  readonly by: readonly Misfit[]
  readonly nearest: Interval | undefined
}

const NOTHING: Interval = { from: 0, to: 0 }

/** The grid of a poor joint: each cell ends at twice its beginning. */
function gridOf({ fault }: Candidate): readonly Interval[] {
  if (!isPoor(fault)) return [NOTHING]
  const cells: Interval[] = []
  let from: number = POOR_OHMS.least
  for (let step = 0; step < POOR_OHMS.doublings; step++, from *= 2)
    cells.push({ from, to: 2 * from })
  return cells
}

/** What a candidate would show of a reading, with the source from here to there. */
function misfitOf(
  predictor: Predictor,
  candidate: Candidate,
  ohms: Interval,
  { reading, measurable, truth }: Needed,
  source: Interval,
): Misfit {
  const span = predictor.predicted(candidate, ohms, measurable)
  const predicted = { from: span.from * source.from, to: span.to * source.to }
  return { reading, predicted, measured: truth }
}

const contradicts = ({ predicted, measured }: Misfit): boolean =>
  !atMost(measured.from, predicted.to) || !atMost(predicted.from, measured.to)

/** One reading that contradicts a candidate by itself, or two that no source makes together. */
function misfitsOf(
  predictor: Predictor,
  candidate: Candidate,
  ohms: Interval,
  needed: readonly Needed[],
  band: Interval,
): readonly Misfit[] {
  const { least, most } = reachOf(predictor, candidate, ohms, needed, band)
  const culprits = [...new Set([least, most].filter(each => each !== undefined))]
  const alone = culprits
    .map(each => misfitOf(predictor, candidate, ohms, each, band))
    .find(contradicts)
  if (alone) return [alone]
  return culprits.map(each => {
    const other = culprits.filter(one => one !== each)
    const { source } = reachOf(predictor, candidate, ohms, other, band)
    return misfitOf(predictor, candidate, ohms, each, source)
  })
}

const halvesOf = ({ from, to }: Interval): readonly [Interval, Interval] => {
  const middle = Math.sqrt(from * to)
  return [
    { from, to: middle },
    { from: middle, to },
  ]
}

const nearer = (a: Interval, b: Interval, reach: (ohms: Interval) => Reach): Interval =>
  gap(reach(b)) < gap(reach(a)) ? b : a

/** The cell that comes nearest to fitting, halved until it does not. */
function nearestOf(grid: readonly Interval[], reach: (ohms: Interval) => Reach): Interval {
  let nearest = grid.reduce((a, b) => nearer(a, b, reach))
  for (let step = 0; step < HALVINGS && fits(reach(nearest)); step++)
    nearest = nearer(...halvesOf(nearest), reach)
  return nearest
}

/** Finds a fitting cell by halving, from one side. */
function search(
  cell: Interval,
  halvings: number,
  from: 'least' | 'greatest',
  reach: (ohms: Interval) => Reach,
): Interval | undefined {
  if (!fits(reach(cell))) return undefined
  if (halvings === 0) return cell
  const halves = halvesOf(cell)
  for (const half of from === 'least' ? halves : halves.toReversed()) {
    const found = search(half, halvings - 1, from, reach)
    if (found) return found
  }
  return undefined
}

/** Whether a candidate makes what was read, with which ohms and which source; else what contradicts it. */
export function fitCandidate(
  predictor: Predictor,
  candidate: Candidate,
  needed: readonly Needed[],
  band: Interval = predictor.band,
): { readonly fit: Fit } | { readonly miss: Miss } {
  const reach = (ohms: Interval): Reach => reachOf(predictor, candidate, ohms, needed, band)
  const grid = gridOf(candidate)
  const poor = isPoor(candidate.fault)
  const found = (cells: readonly Interval[], side: 'least' | 'greatest') =>
    firstOf(cells, each => search(each, poor ? HALVINGS : 0, side, reach))
  const first = found(grid, 'least')
  const last = first && found(grid.toReversed(), 'greatest')
  if (!first || !last) {
    const nearest = nearestOf(grid, reach)
    const by = misfitsOf(predictor, candidate, nearest, needed, band)
    return { miss: { candidate, by, nearest: poor ? nearest : undefined } }
  }
  const ohms = { from: first.from, to: last.to }
  const inside = grid.filter(each => each.to > ohms.from && each.from < ohms.to)
  const cells = poor ? inside : grid
  const fitting = cells.map(each => ({ ohms: each, reach: reach(each) }))
  return {
    fit: {
      candidate,
      cells: fitting
        .filter(each => fits(each.reach))
        .map(each => ({ ohms: each.ohms, source: each.reach.source })),
      ohms: poor ? ohms : undefined,
    },
  }
}

/** What a search finds first along cells, and nothing where it never does. */
function firstOf<Found>(
  cells: readonly Interval[],
  find: (cell: Interval) => Found | undefined,
): Found | undefined {
  for (const cell of cells) {
    const found = find(cell)
    if (found !== undefined) return found
  }
  return undefined
}

/** How far a reach is from fitting: below 1 where it does. */
const gap = ({ source }: Reach): number => source.from / source.to
