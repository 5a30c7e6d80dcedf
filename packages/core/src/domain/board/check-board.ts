import type { Diagnostic } from '../../base/diagnostic.ts'
import { idsOf, named, unique } from '../names.ts'
import type { Board, Part } from './board.ts'

type Path = Diagnostic['path']

const nodesOf = (part: Part): readonly string[] => {
  switch (part.kind) {
    case 'transformer':
      return [...part.primary, ...part.secondary]
    case 'ground-fault':
      return part.poweredFrom ?? []
    default:
      return part.across
  }
}

/** Every node that a terminal or a part gives a board. */
export const nodeNames = (board: Board): readonly string[] => [
  ...new Set([board.earth, ...board.terminals.map(t => t.node), ...board.parts.flatMap(nodesOf)]),
]

function checkParts(board: Board, path: Path): readonly Diagnostic[] {
  const parts = idsOf(board.parts)
  return board.parts.flatMap((part, index) =>
    part.kind === 'ground-fault'
      ? part.sums.flatMap((id, at) =>
          named([...path, 'parts', index, 'sums', at], id, parts, 'a part of this board'),
        )
      : [],
  )
}

function checkJumpers(board: Board, path: Path): readonly Diagnostic[] {
  const nodes = nodeNames(board)
  return board.jumpers.flatMap((jumper, index) => {
    const at = [...path, 'jumpers', index]
    return [
      ...named([...at, 'factory'], jumper.factory, idsOf(jumper.positions), 'a position'),
      ...jumper.positions.flatMap((position, place) =>
        position.joins.flatMap((pair, join) =>
          pair.flatMap((node, side) =>
            named([...at, 'positions', place, 'joins', join, side], node, nodes, 'a node'),
          ),
        ),
      ),
    ]
  })
}

/** What a schema cannot say of a board: names that nothing carries, names twice. */
export function checkBoard(board: Board, path: Path): readonly Diagnostic[] {
  const terminals = idsOf(board.terminals)
  return [
    ...unique([...path, 'terminals'], terminals),
    ...unique([...path, 'parts'], idsOf(board.parts)),
    ...unique([...path, 'jumpers'], idsOf(board.jumpers)),
    ...board.connectors.flatMap((connector, index) =>
      Object.entries(connector.pins).flatMap(([pin, id]) =>
        named([...path, 'connectors', index, 'pins', pin], id, terminals, 'a terminal'),
      ),
    ),
    ...checkParts(board, path),
    ...checkJumpers(board, path),
  ]
}
