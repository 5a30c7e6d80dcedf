import type { PanelPartner, PanelTerminal, SheetPanel } from '@tubwright/core'

export const SIDES = ['left', 'right', 'top', 'bottom'] as const
export type Side = (typeof SIDES)[number]

export const isUpright = (side: Side): boolean => side === 'top' || side === 'bottom'

const NEAR = 4 // [mm] on the board: closer than this, a terminal stands in the way
const IN_THE_WAY = 1000

/** How far a terminal is from an edge of its board [mm]. */
export function depthOf(panel: SheetPanel, { x, y }: PanelTerminal, side: Side): number {
  switch (side) {
    case 'left':
      return x
    case 'right':
      return panel.width - x
    case 'top':
      return y
    case 'bottom':
      return panel.height - y
  }
}

function isBlocked(panel: SheetPanel, from: PanelTerminal, side: Side): boolean {
  const depth = depthOf(panel, from, side)
  return panel.terminals.some(other => {
    const apart = isUpright(side) ? Math.abs(other.x - from.x) : Math.abs(other.y - from.y)
    return other.id !== from.id && apart < NEAR && depthOf(panel, other, side) < depth
  })
}

/** The side a terminal alone would leave by. */
export const nearestSide = (panel: SheetPanel, terminal: PanelTerminal): Side =>
  SIDES.reduce((best, side) =>
    depthOf(panel, terminal, side) < depthOf(panel, terminal, best) ? side : best,
  )

/** The side on which the wires of a partner leave shortest and least hindered. */
export function sideOf(panel: SheetPanel, partner: PanelPartner): Side {
  const terminals = partner.pins.flatMap(
    pin => panel.terminals.find(each => each.id === pin.terminal) ?? [],
  )
  const cost = (side: Side): number =>
    terminals.reduce(
      (sum, each) =>
        sum + depthOf(panel, each, side) + (isBlocked(panel, each, side) ? IN_THE_WAY : 0),
      0,
    )
  return SIDES.reduce((best, side) => (cost(side) < cost(best) ? side : best))
}
