import type { Shapes } from './shapes.ts'
import type { Box, Point } from './view.ts'

/** What a finger means: a wire, a terminal or a jumper. */
export type Hit =
  | { readonly kind: 'wire'; readonly number: number }
  | { readonly kind: 'terminal'; readonly name: string }
  | { readonly kind: 'jumper'; readonly id: string }

const HALF_LINE = 0.6 // [mm]

/** How far a point is from a straight run. */
export function awayFromRun(at: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const length = dx * dx + dy * dy
  const along = length === 0 ? 0 : ((at.x - from.x) * dx + (at.y - from.y) * dy) / length
  const held = Math.min(1, Math.max(0, along))
  return Math.hypot(at.x - from.x - held * dx, at.y - from.y - held * dy)
}

export const awayFromLine = (at: Point, points: readonly Point[]): number =>
  points
    .slice(1)
    .reduce(
      (least, to, index) => Math.min(least, awayFromRun(at, points[index] ?? to, to)),
      Number.POSITIVE_INFINITY,
    )

function awayFromBox(at: Point, { x, y, width, height }: Box): number {
  const across = Math.max(x - at.x, 0, at.x - x - width)
  const down = Math.max(y - at.y, 0, at.y - y - height)
  return Math.hypot(across, down)
}

interface Found {
  readonly hit: Hit
  readonly away: number
}

const beyond = (away: number, half: number): number => Math.max(0, away - half)

function* near(shapes: Shapes, at: Point): Generator<Found> {
  // Terminals first: where a wire ends on one, both are at no distance.
  for (const { name, x, y, radius } of shapes.terminals)
    yield {
      hit: { kind: 'terminal', name },
      away: beyond(Math.hypot(at.x - x, at.y - y), radius),
    }
  for (const each of shapes.jumpers)
    yield { hit: { kind: 'jumper', id: each.id }, away: awayFromBox(at, each) }
  for (const { number, points } of shapes.wires)
    yield { hit: { kind: 'wire', number }, away: beyond(awayFromLine(at, points), HALF_LINE) }
}

/**
 * The thing nearest to a place, however thin it is.
 *
 * @param reach - how far a finger may be off, in millimetres of the paper at this zoom
 */
export function nearestHit(shapes: Shapes, at: Point, reach: number): Hit | undefined {
  let best: Found | undefined
  for (const found of near(shapes, at))
    if (found.away <= reach && (best === undefined || found.away < best.away)) best = found
  return best?.hit
}
