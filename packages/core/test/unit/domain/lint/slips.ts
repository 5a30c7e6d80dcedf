import type { SkeletonAnswers } from '@tubwright/formats'
import { SKELETON_KINDS, writeSkeleton } from '@tubwright/formats'
import { fieldText, SKELETON_EN } from '@tubwright/words'

/** A box that lints clean, to be spoilt. */
export const soundBox = (answers: Partial<SkeletonAnswers> = {}): string =>
  writeSkeleton({ id: 'my-box', ...SKELETON_KINDS['two-legs'], ...answers }, fieldText, SKELETON_EN)

export const CONVERTIBLE = SKELETON_KINDS.convertible

/** Something written otherwise; each has to be there. */
export type Slip = readonly [from: string | RegExp, to: string]

export function spoilt(text: string, slips: readonly Slip[]): string {
  return slips.reduce((before, [from, to]) => {
    const after = before.replace(from, to)
    if (after === before) throw new Error(`nothing to write otherwise: ${String(from)}`)
    return after
  }, text)
}

/** A line more, after the one that holds a text. */
export const after = (line: string, more: string): Slip => [
  new RegExp(`^(.*${line.replace(/[[\](){}.*+?^$|]/gu, '\\$&')}.*)$`, 'mu'),
  `$1\n${more}`,
]
