import type { Box, Point } from '../../src/board/scene.ts'
import { isOver, runsOf } from '../../src/board/scene.ts'

const TOUCH = 0.05 // [mm] boxes that share a rim do not overlap

export const shrunk = ({ x, y, width, height }: Box): Box => ({
  x: x + TOUCH,
  y: y + TOUCH,
  width: width - 2 * TOUCH,
  height: height - 2 * TOUCH,
})

export const overlap = (a: Box, b: Box): boolean => isOver(shrunk(a), shrunk(b))

interface Text extends Box {
  readonly kind: string
  readonly text: string
}

/** Labels that lie on each other. */
export const clashes = (labels: readonly Text[]): readonly string[] =>
  labels.flatMap((a, index) =>
    labels
      .slice(index + 1)
      .filter(b => overlap(a, b))
      .map(b => `${a.kind} "${a.text}" on ${b.kind} "${b.text}"`),
  )

/** Whether a label lies under a line of this half width. */
export const isUnder = (label: Box, points: readonly Point[], half: number): boolean =>
  runsOf(points, half).some(run => overlap(label, run))
