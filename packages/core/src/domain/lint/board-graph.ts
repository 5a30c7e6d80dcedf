import type { Board, Part } from '../board/board.ts'
import { reachedFrom } from '../wiring/reach.ts'

type Pair = readonly [string, string]

/** Positions of jumpers by id; one not named stands as it left the factory. */
export type Positions = Readonly<Record<string, string>>

const jumperPairs = (board: Board, positions: Positions): readonly Pair[] =>
  board.jumpers.flatMap(
    ({ id, factory, positions: all }) =>
      all.find(each => each.id === (positions[id] ?? factory))?.joins ?? [],
  )

/** What joins two nodes of a board when it is closed. */
function pairsOf(part: Part): readonly Pair[] {
  switch (part.kind) {
    case 'fuse':
    case 'contact':
    case 'pole':
    case 'switch':
      return [part.across]
    default:
      return []
  }
}

/** Pairs of nodes that copper and closed parts join, with some parts left out. */
export const joins = (
  board: Board,
  positions: Positions,
  keeps: (part: Part) => boolean = () => true,
): readonly Pair[] => [
  ...board.parts.filter(keeps).flatMap(pairsOf),
  ...jumperPairs(board, positions),
]

/** The same, with each winding's ends joined through: what feeds a transformer feeds what is behind it. */
export const joinsThroughWindings = (
  board: Board,
  positions: Positions,
  keeps: (part: Part) => boolean,
): readonly Pair[] => [
  ...joins(board, positions, keeps),
  ...board.parts.flatMap((part): readonly Pair[] =>
    part.kind === 'transformer'
      ? [
          [part.primary[0], part.secondary[0]],
          [part.primary[1], part.secondary[1]],
        ]
      : [],
  ),
]

/** Whether some of these nodes is among those that another reaches. */
export function reachesAny(
  from: string,
  nodes: ReadonlySet<string>,
  pairs: readonly Pair[],
): boolean {
  for (const node of reachedFrom(from, pairs)) if (nodes.has(node)) return true
  return false
}

/** The node of a terminal by its id; the empty name for one that is not there. */
export const nodeOfTerminal = (board: Board, id: string | undefined): string =>
  board.terminals.find(each => each.id === id)?.node ?? ''
