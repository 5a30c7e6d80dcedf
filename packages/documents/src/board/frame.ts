import type { SheetPanel } from '../../../core/src/stages/sheet/artifact.ts'
import type { Box, Point } from './scene.ts'
import type { Side } from './sides.ts'

/** Width of every drawing [mm]: what A4 and Letter both have between margins of 12 mm. */
export const PAGE_WIDTH = 186
/** Smallest text of the drawing [mm]; nothing on the sheet is below 2.5 mm. */
export const TEXT = 2.7
export const LINE_HEIGHT = 3.1
export const LANE = 2.4
/** Least distance of two pins of one load. */
export const PITCH = 4.3
/** From the edge of the board to the first lane. */
const LEAD = 2.5
const AFTER = 1
const EMPTY = 4

export type BySide<Value> = Readonly<Record<Side, Value>>

/** How much room a side takes between the board and the end of its loads. */
export interface SideRoom {
  readonly lanes: number
  readonly stub: number
  readonly depth: number
  /** Room that the loads of the side need along it. */
  readonly along: number
}

/** Where the board lies on the paper, and how its sides are measured. */
export interface Frame {
  readonly board: Box
  readonly scale: number
  readonly height: number
  /** How far the loads at left and right stand over the board, above and below. */
  readonly overhang: number
  readonly rooms: BySide<SideRoom>
}

const channel = ({ lanes, stub }: SideRoom): number => LEAD + lanes * LANE + AFTER + stub

const zone = (room: SideRoom): number => (room.depth === 0 ? EMPTY : channel(room) + room.depth)

/** Fits a panel between the loads around it. */
export function frameOf(panel: SheetPanel, rooms: BySide<SideRoom>, mostHeight: number): Frame {
  const room = PAGE_WIDTH - zone(rooms.left) - zone(rooms.right)
  const scale = Math.min(room / panel.width, mostHeight / panel.height)
  const [width, height] = [panel.width * scale, panel.height * scale]
  const band = Math.max(height, rooms.left.along, rooms.right.along)
  const overhang = (band - height) / 2
  return {
    board: {
      x: zone(rooms.left) + (room - width) / 2,
      y: zone(rooms.top) + overhang,
      width,
      height,
    },
    scale,
    height: zone(rooms.top) + band + zone(rooms.bottom),
    overhang,
    rooms,
  }
}

const overhangOf = (frame: Frame, side: Side): number =>
  side === 'top' || side === 'bottom' ? frame.overhang : 0

/** From the edge of the board to the middle of a lane. */
export const laneDepth = (frame: Frame, side: Side, lane: number): number =>
  overhangOf(frame, side) + LEAD + (lane + 0.5) * LANE

/** From the edge of the board to where the loads begin. */
export const blockDepth = (frame: Frame, side: Side): number =>
  overhangOf(frame, side) + channel(frame.rooms[side])

/** A place on paper from its place along a side and its distance from the edge of the board. */
export function paperPoint({ board }: Frame, side: Side, along: number, depth: number): Point {
  switch (side) {
    case 'left':
      return { x: board.x - depth, y: along }
    case 'right':
      return { x: board.x + board.width + depth, y: along }
    case 'top':
      return { x: along, y: board.y - depth }
    case 'bottom':
      return { x: along, y: board.y + board.height + depth }
  }
}

/** The box between two places along a side and two distances from the board. */
export function paperBox(
  frame: Frame,
  side: Side,
  [from, to]: readonly [number, number],
  [near, far]: readonly [number, number],
): Box {
  const [a, b] = [paperPoint(frame, side, from, near), paperPoint(frame, side, to, far)]
  return {
    x: Math.min(a.x, b.x),
    y: Math.min(a.y, b.y),
    width: Math.abs(a.x - b.x),
    height: Math.abs(a.y - b.y),
  }
}

/** How far along a side two things can be: the page for top and bottom, the band for the others. */
export function sideSpan(frame: Frame, side: Side): readonly [number, number] {
  if (side === 'top' || side === 'bottom') return [0.3, PAGE_WIDTH - 0.3]
  const { board, overhang } = frame
  return [board.y - overhang, board.y + board.height + overhang]
}
