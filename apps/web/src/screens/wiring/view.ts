export interface Point {
  readonly x: number
  readonly y: number
}

export interface Size {
  readonly width: number
  readonly height: number
}

export interface Box extends Point, Size {}

/** How the paper lies in its window: a place of the paper [mm] is seen at `place × scale + (x, y)` [px]. */
export interface View extends Point {
  /** Pixels to the millimetre. */
  readonly scale: number
}

const RIM = 8 // [px] left free about a drawing that fits
const MOST = 26 // [px/mm] a terminal is then as wide as a thumb
const KEPT = 72 // [px] of the paper that never leaves the window

/** The whole paper, as large as the window lets it be, in its middle. */
export function fitted(paper: Size, room: Size): View {
  const across = Math.max(1, room.width - 2 * RIM) / paper.width
  const down = Math.max(1, room.height - 2 * RIM) / paper.height
  const scale = Math.min(across, down)
  return {
    scale,
    x: (room.width - paper.width * scale) / 2,
    y: (room.height - paper.height * scale) / 2,
  }
}

export const toPaper = ({ scale, x, y }: View, at: Point): Point => ({
  x: (at.x - x) / scale,
  y: (at.y - y) / scale,
})

export const toWindow = ({ scale, x, y }: View, at: Point): Point => ({
  x: at.x * scale + x,
  y: at.y * scale + y,
})

/** Keeps a scale between half of what fits and what is large enough for anybody. */
export function scaleWithin(scale: number, paper: Size, room: Size): number {
  const fits = fitted(paper, room).scale
  return Math.min(Math.max(MOST, fits), Math.max(fits / 2, scale))
}

/** The view at another scale in which a point of the window shows the same place of the paper. */
export function scaledAbout(view: View, at: Point, scale: number): View {
  const held = toPaper(view, at)
  return { scale, x: at.x - held.x * scale, y: at.y - held.y * scale }
}

export const panned = (view: View, by: Point): View => ({
  ...view,
  x: view.x + by.x,
  y: view.y + by.y,
})

const middle = ([a, b]: Pair): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 })
const apart = ([a, b]: Pair): number => Math.max(1, Math.hypot(a.x - b.x, a.y - b.y))

type Pair = readonly [Point, Point]

/**
 * What two fingers make of a view: the place under their middle stays under it, wherever it goes.
 *
 * @param allowed - what a scale may be
 */
export function pinched(
  view: View,
  before: Pair,
  after: Pair,
  allowed: (scale: number) => number,
): View {
  const held = toPaper(view, middle(before))
  const scale = allowed((view.scale * apart(after)) / apart(before))
  const to = middle(after)
  return { scale, x: to.x - held.x * scale, y: to.y - held.y * scale }
}

const between = (value: number, least: number, most: number): number =>
  Math.min(Math.max(value, Math.min(least, most)), Math.max(least, most))

/** Moves a view back so far that some of the paper is always in the window. */
export const keptIn = (view: View, paper: Size, room: Size): View => ({
  ...view,
  x: between(view.x, KEPT - paper.width * view.scale, room.width - KEPT),
  y: between(view.y, KEPT - paper.height * view.scale, room.height - KEPT),
})

/** How far a view must move so that a box of the paper is in the window, if it is not. */
export function shiftToShow(view: View, box: Box, room: Size, rim = 24): Point {
  const from = toWindow(view, box)
  const to = toWindow(view, { x: box.x + box.width, y: box.y + box.height })
  return {
    x: shift(from.x, to.x, room.width, rim),
    y: shift(from.y, to.y, room.height, rim),
  }
}

function shift(from: number, to: number, room: number, rim: number): number {
  if (to - from > room - 2 * rim) return room / 2 - (from + to) / 2
  if (from < rim) return rim - from
  return to > room - rim ? room - rim - to : 0
}

export const isSameView = (a: View, b: View): boolean =>
  Math.abs(a.scale - b.scale) < 1e-6 && Math.abs(a.x - b.x) < 0.5 && Math.abs(a.y - b.y) < 0.5
