import type { Diagnostic } from '../../base/diagnostic.ts'
import { checkBoard, nodeNames } from '../board/check-board.ts'
import { idsOf, named } from '../names.ts'
import type { SupplyDevice } from './supply.ts'

/** What a schema cannot say of a supply device: names that nothing carries. */
export function checkDevice(device: SupplyDevice): readonly Diagnostic[] {
  const { board, fedAt, lands, tails } = device
  const nodes = nodeNames(board)
  const terminals = idsOf(board.terminals)
  return [
    ...checkBoard(board, ['board']),
    ...Object.entries(fedAt).flatMap(([key, node]) =>
      named(['fedAt', key], node ?? '', nodes, 'a node of this board'),
    ),
    ...Object.entries(lands).flatMap(([key, id]) =>
      named(['lands', key], id ?? '', terminals, 'a terminal of this board'),
    ),
    ...tails.flatMap((tail, index) => [
      ...named(['tails', index, 'node'], tail.node, nodes, 'a node of this board'),
      ...named(['tails', index, 'lands'], tail.lands, terminals, 'a terminal of this board'),
    ]),
  ]
}
