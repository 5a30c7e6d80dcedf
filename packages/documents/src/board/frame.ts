import type { PanelTerminal, SheetPanel } from '@tubwright/core'
import { textWidth } from './measure-text.ts'
import type { Box, Point } from './scene.ts'
import type { Side } from './sides.ts'
import { isUpright } from './sides.ts'
import { spread } from './spread.ts'

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
/** Half of the thickest line at the rim of the paper. */
const RIM = 0.4

export type BySide<Value> = Readonly<Record<Side, Value>>

/** How much room a side takes between the board and the end of its loads. */
export interface SideRoom {
  readonly lanes: number
  readonly stub: number
  readonly depth: number
  /** Room that the loads of the side need along it. */
  readonly along: number
}

/** How wide the drawing is, and how tall its board may be [mm]. */
export interface Paper {
  readonly width: number
  readonly boardHeight: number
}

/** Where the board lies on the paper, and how its sides are measured. */
export interface Frame {
  readonly width: number
  readonly board: Box
  /** Paper to board, across and down. */
  readonly scale: Point
  /** The middle of each terminal, by its id. */
  readonly terminals: ReadonlyMap<string, Point>
  readonly height: number
  /** How far the loads at left and right stand over the board, above and below. */
  readonly overhang: number
  readonly rooms: BySide<SideRoom>
}

const channel = ({ lanes, stub }: SideRoom): number => LEAD + lanes * LANE + AFTER + stub

const zone = (room: SideRoom): number => (room.depth === 0 ? EMPTY : channel(room) + room.depth)

/** Least distance of two terminals on paper: their wires' numbers and their names need it. */
const TERMINAL_PITCH = 4.6
/** A board is drawn longer than it is one way, to tell its terminals apart: at most so much. */
const MOST_STRETCH = 1.7
/** Terminals this near each other across a row are one row [mm on the board]. */
const ROW = 4
const INSET = 2.6

export type SideOf = (terminal: PanelTerminal) => Side

/** Fits a panel between the loads around it. */
export function frameOf(
  panel: SheetPanel,
  rooms: BySide<SideRoom>,
  { width: paperWidth, boardHeight: mostHeight }: Paper,
  sideOfTerminal: SideOf,
): Frame {
  const room = paperWidth - 2 * RIM - zone(rooms.left) - zone(rooms.right)
  const base = Math.min(room / panel.width, mostHeight / panel.height)
  const [wider, taller] = stretch(panel, base, sideOfTerminal)
  const scale = {
    x: Math.min(base * wider, room / panel.width),
    y: Math.min(base * taller, mostHeight / panel.height),
  }
  const [width, height] = [panel.width * scale.x, panel.height * scale.y]
  const band = Math.max(height, rooms.left.along, rooms.right.along)
  const overhang = (band - height) / 2
  const board = {
    x: RIM + zone(rooms.left) + (room - width) / 2,
    y: RIM + zone(rooms.top) + overhang,
    width,
    height,
  }
  return {
    width: paperWidth,
    board,
    scale,
    terminals: terminalPoints(panel, board, scale, sideOfTerminal),
    height: zone(rooms.top) + band + zone(rooms.bottom) + 2 * RIM,
    overhang,
    rooms,
  }
}

interface Row {
  readonly isColumn: boolean
  readonly terminals: readonly PanelTerminal[]
}

/** Terminals in rows along the upper and lower edges, and in columns along the others. */
function rowsOf({ terminals }: SheetPanel, sideOfTerminal: SideOf): readonly Row[] {
  const rows: { isColumn: boolean; at: number; terminals: PanelTerminal[] }[] = []
  for (const terminal of terminals) {
    const isColumn = !isUpright(sideOfTerminal(terminal))
    const at = isColumn ? terminal.x : terminal.y
    const row = rows.find(each => each.isColumn === isColumn && Math.abs(each.at - at) < ROW)
    if (row) row.terminals.push(terminal)
    else rows.push({ isColumn, at, terminals: [terminal] })
  }
  return rows.map(row => ({
    isColumn: row.isColumn,
    terminals: row.terminals.sort((a, b) => (row.isColumn ? a.y - b.y : a.x - b.x)),
  }))
}

const nameWidth = ({ id }: PanelTerminal): number => textWidth(id, TEXT) + 1

/** How much wider and taller a panel is drawn, so that its terminals and their names stand apart. */
function stretch(
  panel: SheetPanel,
  scale: number,
  sideOfTerminal: SideOf,
): readonly [number, number] {
  const wanted = ({ terminals, isColumn }: Row): readonly number[] =>
    terminals.slice(1).flatMap((each, index) => {
      const before = terminals[index]
      const apart = before ? (isColumn ? each.y - before.y : each.x - before.x) : 0
      const pitch = isColumn ? TERMINAL_PITCH : Math.max(TERMINAL_PITCH, nameWidth(each))
      return apart > 0 ? [pitch / (apart * scale)] : []
    })
  const rows = rowsOf(panel, sideOfTerminal)
  const most = (columns: boolean): number =>
    Math.min(
      MOST_STRETCH,
      Math.max(1, ...rows.filter(each => each.isColumn === columns).flatMap(wanted)),
    )
  return [most(false), most(true)]
}

/** Where the eye finds each terminal, moved along its row only as far as its neighbours ask. */
function terminalPoints(
  panel: SheetPanel,
  board: Box,
  scale: Point,
  sideOfTerminal: SideOf,
): ReadonlyMap<string, Point> {
  const points = new Map<string, Point>()
  for (const { isColumn, terminals } of rowsOf(panel, sideOfTerminal)) {
    const at = terminals.map(each => (isColumn ? each.y * scale.y : each.x * scale.x))
    const length = isColumn ? board.height : board.width
    const pitch = Math.min(TERMINAL_PITCH, (length - 2 * INSET) / Math.max(1, terminals.length - 1))
    const gaps = terminals.slice(1).map(() => pitch)
    const places = spread(at, gaps, [INSET, length - INSET])
    terminals.forEach((each, index) => {
      const place = places[index] ?? 0
      points.set(
        each.id,
        isColumn
          ? { x: board.x + each.x * scale.x, y: board.y + place }
          : { x: board.x + place, y: board.y + each.y * scale.y },
      )
    })
  }
  return points
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
  const { width, board, overhang } = frame
  if (side === 'top' || side === 'bottom') return [RIM, width - RIM]
  return [board.y - overhang, board.y + board.height + overhang]
}
