import type { Board, BoardPlace } from '../board/board.ts'
import type { LintFinding } from './finding.ts'
import { finding } from './finding.ts'

const ONE_SPOT = 0.0005 // [m] nearer than this, nobody can tell two things apart

interface Spot {
  readonly id: string
  readonly at: BoardPlace
  readonly path: readonly (string | number)[]
}

const spotsOf = (board: Board): readonly Spot[] =>
  (['terminals', 'jumpers'] as const).flatMap(list =>
    board[list].flatMap(({ id, at }, index) =>
      at ? [{ id, at, path: ['board', list, index, 'at'] }] : [],
    ),
  )

const isOneSpot = ([x, y]: BoardPlace, [u, v]: BoardPlace): boolean =>
  Math.abs(x.si - u.si) < ONE_SPOT && Math.abs(y.si - v.si) < ONE_SPOT

/** Two things in one spot, and things beside the board: the eye would look in vain. */
export function lintSpots(board: Board): readonly LintFinding[] {
  const { width, height } = board.size
  const spots = spotsOf(board)
  const outside = spots.flatMap(({ id, at: [x, y], path }) =>
    x.si <= width.si && y.si <= height.si
      ? []
      : [
          finding('outside-board', path, {
            thing: id,
            x: x.text,
            y: y.text,
            width: width.text,
            height: height.text,
          }),
        ],
  )
  const taken = spots.flatMap(({ id, at, path }, index) => {
    const other = spots.slice(0, index).find(each => isOneSpot(each.at, at))
    return other ? [finding('spot-taken', path, { thing: id, other: other.id })] : []
  })
  return [...outside, ...taken]
}

/** How often each node is named by what could carry a current on. */
function usesOf(board: Board, fed: readonly string[]): ReadonlyMap<string, number> {
  const uses = new Map<string, number>()
  const use = (nodes: Iterable<string>) => {
    for (const node of new Set(nodes)) uses.set(node, (uses.get(node) ?? 0) + 1)
  }
  use([board.earth])
  use(fed)
  for (const { node } of board.terminals) use([node])
  for (const { positions } of board.jumpers) use(positions.flatMap(each => each.joins.flat()))
  for (const part of board.parts)
    if (part.kind === 'transformer') use([...part.primary, ...part.secondary])
    else if (part.kind === 'ground-fault') use(part.poweredFrom ?? [])
    else use(part.across)
  return uses
}

/**
 * Terminals from which no copper leads on.
 *
 * @param read - terminals that the electronics read without a part of the board between
 * @param fed - nodes that the supply is joined to without a terminal
 */
export function lintDeadEnds(
  board: Board,
  read: readonly string[],
  fed: readonly string[] = [],
): readonly LintFinding[] {
  const uses = usesOf(board, fed)
  return board.terminals.flatMap(({ id, node }, index) =>
    (uses.get(node) ?? 0) > 1 || read.includes(id)
      ? []
      : [
          finding('terminal-dead-end', ['board', 'terminals', index, 'node'], {
            terminal: id,
            node,
          }),
        ],
  )
}
