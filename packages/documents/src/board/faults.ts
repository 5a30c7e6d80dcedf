import type { Box, Scene } from './scene.ts'
import { isOver, runsOf } from './scene.ts'

const RIM = 0.05 // [mm] boxes that share a rim do not overlap
const HALF_LINE = 0.45 // [mm]

const within = ({ x, y, width, height }: Box): Box => ({
  x: x + RIM,
  y: y + RIM,
  width: width - 2 * RIM,
  height: height - 2 * RIM,
})

const pairsOver = (boxes: readonly Box[]): number =>
  boxes.reduce((sum, a, index) => sum + boxes.slice(index + 1).filter(b => isOver(a, b)).length, 0)

const TOGETHER = 1.5 // [mm] wires that lie on each other so far cannot be told apart

const lieTogether = (a: Box, b: Box): boolean => {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y)
  return isOver(a, b) && Math.max(across, down) > TOGETHER
}

/** How often something that must be read lies under or on something else. */
export function faultsOf({ labels, wires, terminals }: Scene): number {
  const texts = labels.map(within)
  const ways = wires.map(({ points }) => runsOf(points, HALF_LINE).map(within))
  const runs = ways.flat()
  const merged = ways.reduce(
    (sum, a, index) =>
      sum + ways.slice(index + 1).filter(b => a.some(p => b.some(q => lieTogether(p, q)))).length,
    0,
  )
  const crossed = texts.reduce((sum, text) => sum + runs.filter(run => isOver(text, run)).length, 0)
  const discs = terminals.map(({ x, y, radius }) =>
    within({ x: x - radius, y: y - radius, width: 2 * radius, height: 2 * radius }),
  )
  return pairsOver(texts) + crossed + pairsOver(discs) + merged
}
