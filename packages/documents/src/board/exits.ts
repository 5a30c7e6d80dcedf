import type { PanelTerminal } from '@tubwright/core'
import type { Frame } from './frame.ts'
import { paperPoint } from './frame.ts'
import type { Box, Point } from './scene.ts'
import { isOver, runsOf } from './scene.ts'
import type { Side } from './sides.ts'
import { isUpright } from './sides.ts'

/** How a wire leaves the board: from the rim of its terminal to the edge. */
export interface Exit {
  readonly points: readonly Point[]
  /** Where it crosses the edge, along the side. */
  readonly enters: number
}

export const terminalPoint = ({ board, terminals }: Frame, { id }: PanelTerminal): Point =>
  terminals.get(id) ?? board

export const discBox = ({ x, y }: Point, radius: number): Box => ({
  x: x - radius,
  y: y - radius,
  width: 2 * radius,
  height: 2 * radius,
})

const STEPS = [0, 1, -1, 2, -2, 3, -3] as const

/** Where a wire sits on its terminal, off its middle: two of them leave side by side. */
export interface Seat {
  readonly terminal: PanelTerminal
  readonly shift: number
}

function pathOf(
  frame: Frame,
  side: Side,
  { at, shift, radius }: { readonly at: Point; readonly shift: number; readonly radius: number },
  aside: number,
): Exit {
  const along = (isUpright(side) ? at.x : at.y) + shift
  const edge = paperPoint(frame, side, along + aside, 0)
  if (aside === 0) {
    const rim = Math.sqrt(Math.max(0, radius * radius - shift * shift))
    const towards = isUpright(side)
      ? { x: along, y: at.y + (edge.y > at.y ? rim : -rim) }
      : { x: at.x + (edge.x > at.x ? rim : -rim), y: along }
    return { points: [towards, edge], enters: along }
  }
  const rim = Math.sign(aside) * radius
  const points = isUpright(side)
    ? [{ x: at.x + rim, y: at.y }, { x: along + aside, y: at.y }, edge]
    : [{ x: at.x, y: at.y + rim }, { x: at.x, y: along + aside }, edge]
  return { points, enters: along + aside }
}

/** Leaves straight where nothing stands in the way, else beside it. */
export function exitOf(
  frame: Frame,
  side: Side,
  { terminal, shift }: Seat,
  radius: number,
  inTheWay: readonly Box[],
): Exit {
  const at = terminalPoint(frame, terminal)
  const tries = STEPS.map(step => pathOf(frame, side, { at, shift, radius }, step * (radius + 1.3)))
  const hits = ({ points }: Exit) =>
    runsOf(points, 0.6).filter(run => inTheWay.some(box => isOver(run, box))).length
  return tries.reduce((best, each) => (hits(each) < hits(best) ? each : best))
}
