import type { CodeFinding, Verdict } from '@tubwright/core'
import type { Html } from '../sheet/markup.ts'
import { raw } from '../sheet/markup.ts'

/** From the worst to the best: what stands for several verdicts together. */
const WORST_FIRST: readonly Verdict[] = [
  'breaks',
  'experts-differ',
  'not-shown',
  'provided',
  'holds',
]

/** The worst of some findings; undefined where there are none. */
export const worstOf = (findings: readonly CodeFinding[]): Verdict | undefined =>
  WORST_FIRST.find(verdict => findings.some(each => each.verdict === verdict))

/**
 * The sign of each verdict as strokes around the origin, 12 units wide: ✓ ✗ ? ≈, and ✓ in brackets.
 *
 * Drawn, since not every printer has these letters; the word always stands beside it.
 */
const SIGNS: Readonly<Record<Verdict, string>> = {
  holds: 'M-5 0L-1.5 4L5 -4.5',
  breaks: 'M-4.5 -4.5L4.5 4.5M4.5 -4.5L-4.5 4.5',
  'not-shown': 'M-3 -2.6A3 3 0 1 1 1 .4Q0 .9 0 2M0 4.6V5',
  'experts-differ': 'M-5 -1Q-2.5 -4.5 0 -2T5 -3M-5 3.5Q-2.5 0 0 2.5T5 1.5',
  provided: 'M-2.5 .3L-.8 2.3L2.6 -2.3M-4 -5Q-6.4 0 -4 5M4 -5Q6.4 0 4 5',
}

/** The sign of a verdict, to stand within a drawing. */
export const signPath = (verdict: Verdict): string =>
  `<path d="${SIGNS[verdict]}" fill="none" stroke="currentColor" stroke-width="1.8" stroke-linecap="round" stroke-linejoin="round"/>`

/** The same on a page, in a line of text. */
export const sign = (verdict: Verdict): Html =>
  raw(
    `<svg class="sign" viewBox="-7 -7 14 14" width="12" height="12" aria-hidden="true">${signPath(verdict)}</svg>`,
  )
