import { TEXT } from './frame.ts'
import { textWidth } from './measure-text.ts'
import type { Box, Label, Point } from './scene.ts'
import { isOver } from './scene.ts'

export const labelHeight = (size: number): number => size * 1.08

/** A line of text with its left upper corner here. */
export function labelAt(
  kind: Label['kind'],
  text: string,
  { x, y }: Point,
  size: number = TEXT,
): Label {
  const [width, height] = [textWidth(text, size), labelHeight(size)]
  return { kind, text, x, y, width, height, size, turned: false }
}

/** A line of text about a middle. */
export function labelAbout(
  kind: Label['kind'],
  text: string,
  middle: Point,
  size: number = TEXT,
): Label {
  const [width, height] = [textWidth(text, size), labelHeight(size)]
  return labelAt(kind, text, { x: middle.x - width / 2, y: middle.y - height / 2 }, size)
}

/** A line of text read upwards, about a middle. */
export function turnedAbout(
  kind: Label['kind'],
  text: string,
  middle: Point,
  size: number = TEXT,
): Label {
  const [width, height] = [labelHeight(size), textWidth(text, size)]
  const at = { x: middle.x - width / 2, y: middle.y - height / 2 }
  return { kind, text, ...at, width, height, size, turned: true }
}

const overlap = (a: Box, b: Box): number =>
  isOver(a, b)
    ? (Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)) *
      (Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y))
    : 0

/** The first of some places that is free, else the one that covers least. */
export function freest(
  candidates: readonly Label[],
  taken: readonly Box[],
  within: Box,
): Label | undefined {
  const cost = (label: Label): number =>
    taken.reduce((sum, each) => sum + overlap(label, each), 0) +
    label.width * label.height -
    overlap(label, within)
  let best: Label | undefined
  let least = Number.POSITIVE_INFINITY
  for (const each of candidates) {
    const found = cost(each)
    if (found < least - 1e-9) [best, least] = [each, found]
  }
  return best
}

/** Places around a box, nearest first: right, left, above, below, and further out. */
export function around(kind: Label['kind'], text: string, box: Box): readonly Label[] {
  const [width, height] = [textWidth(text, TEXT), labelHeight(TEXT)]
  const [cx, cy] = [box.x + box.width / 2, box.y + box.height / 2]
  return [0.6, 2, 3.5, 5, 7, 9].flatMap(away => [
    labelAt(kind, text, { x: box.x + box.width + away, y: cy - height / 2 }),
    labelAt(kind, text, { x: box.x - away - width, y: cy - height / 2 }),
    labelAt(kind, text, { x: cx - width / 2, y: box.y - away - height }),
    labelAt(kind, text, { x: cx - width / 2, y: box.y + box.height + away }),
    labelAt(kind, text, { x: box.x + box.width - width, y: box.y - away - height }),
    labelAt(kind, text, { x: box.x, y: box.y + box.height + away }),
    labelAt(kind, text, { x: box.x, y: box.y - away - height }),
  ])
}
