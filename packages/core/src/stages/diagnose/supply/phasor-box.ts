import type { Complex } from '../../../base/complex.ts'
import type { Interval } from './artifact.ts'
import { TOLERANCES } from './tolerances.ts'

/** Where a phasor may lie: a rectangle in the complex plane, and the ghost that a meter may show instead. */
export interface PhasorBox {
  readonly re: Interval
  readonly im: Interval
  /** How far leaks may move it, any way. */
  readonly leak: number
  /** Where what is read hangs on nothing: anything from nothing to so much; 0 where it does not. */
  readonly ghost: number
}

/** What insulation and electronics may do to a phasor, beside where the loads and the run put it. */
export interface Leaks extends Pick<PhasorBox, 'leak' | 'ghost'> {
  /** Where electronics move it. */
  readonly aside: Complex
}

export const boxOf = ({ re, im }: Complex, { aside, leak, ghost }: Leaks): PhasorBox => ({
  re: { from: re + Math.min(0, aside.re), to: re + Math.max(0, aside.re) },
  im: { from: im + Math.min(0, aside.im), to: im + Math.max(0, aside.im) },
  leak,
  ghost,
})

const hull = (a: Interval, b: Interval): Interval => ({
  from: Math.min(a.from, b.from),
  to: Math.max(a.to, b.to),
})

/** The least box around two. */
export const around = (a: PhasorBox, b: PhasorBox): PhasorBox => ({
  re: hull(a.re, b.re),
  im: hull(a.im, b.im),
  leak: Math.max(a.leak, b.leak),
  ghost: Math.max(a.ghost, b.ghost),
})

/** Distance of an interval from 0, and of its farther end. */
const near = ({ from, to }: Interval, by: number): number => Math.max(0, from - by, -to - by)
const far = ({ from, to }: Interval, by: number): number => Math.max(to + by, -from + by)
const length = (re: number, im: number): number => Math.sqrt(re * re + im * im)

/**
 * Least and greatest magnitude in a box, the bow of what lies between its corners included.
 *
 * A voltage moves on a circle as one impedance grows: between two points of it by a doubling, at a
 * power factor from 0.7 on, it bows by less than 4 % of their distance.
 */
export function magnitudes({ re, im, leak, ghost }: PhasorBox): Interval {
  const by = leak + TOLERANCES.bow * length(re.to - re.from, im.to - im.from)
  const to = Math.max(length(far(re, by), far(im, by)), ghost)
  return { from: ghost > 0 ? 0 : length(near(re, by), near(im, by)), to }
}
