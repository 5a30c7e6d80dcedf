import type { Board, Part } from '../board/board.ts'
import { LINES } from '../board/board.ts'
import type { ControlBox, Feed, Place } from '../box/control-box.ts'
import { reachedFrom } from '../wiring/reach.ts'
import type { Positions } from './board-graph.ts'
import { joins, joinsThroughWindings, nodeOfTerminal, reachesAny } from './board-graph.ts'
import { choicesOf } from './choices.ts'
import type { LintFinding } from './finding.ts'
import { finding } from './finding.ts'

type Fuse = Extract<Part, { kind: 'fuse' | 'pole' }>

const isFuse = (part: Part): part is Fuse => part.kind === 'fuse' || part.kind === 'pole'

/** One feed with one choice of jumper positions. */
interface Supplied {
  readonly feed: Feed
  readonly positions: Positions
}

const suppliesOf = (box: ControlBox): readonly Supplied[] =>
  box.feeds.flatMap(feed => choicesOf(box, feed).tried.map(positions => ({ feed, positions })))

const fedNodes = (board: Board, { lands }: Feed): ReadonlySet<string> =>
  new Set(
    Object.entries(lands)
      .filter(([does]) => !does.endsWith('earth'))
      .map(([, id]) => nodeOfTerminal(board, id)),
  )

const lineNodes = (board: Board, { lands }: Feed): ReadonlySet<string> =>
  new Set(
    Object.entries(lands)
      .filter(([does]) => LINES.some(line => does.endsWith(line)))
      .map(([, id]) => nodeOfTerminal(board, id)),
  )

/** Nodes at which something draws: loads, windings, electronics. */
function drawingNodes({ board, places }: ControlBox): ReadonlySet<string> {
  const landed = places.flatMap(({ lands }) =>
    Object.entries(lands).flatMap(([does, id]) =>
      does === 'earth' ? [] : [nodeOfTerminal(board, id)],
    ),
  )
  const parts = board.parts.flatMap(part =>
    part.kind === 'transformer' ? part.primary : part.kind === 'electronics' ? part.across : [],
  )
  return new Set([...landed, ...parts])
}

function isInPath(box: ControlBox, fuse: Fuse, supplies: readonly Supplied[]): boolean {
  const [a, b] = fuse.across
  const drawing = drawingNodes(box)
  return supplies.some(({ feed, positions }) => {
    const pairs = joinsThroughWindings(box.board, positions, part => part !== fuse)
    const fed = fedNodes(box.board, feed)
    return (
      a !== b &&
      ((reachesAny(a, fed, pairs) && reachesAny(b, drawing, pairs)) ||
        (reachesAny(b, fed, pairs) && reachesAny(a, drawing, pairs)))
    )
  })
}

/** Whether current gets from a line to a node past every fuse, through a transformer or not. */
function isUnfused({ board }: ControlBox, node: string, { feed, positions }: Supplied): boolean {
  const pairs = joins(board, positions, part => !isFuse(part))
  const lines = lineNodes(board, feed)
  const fed = fedNodes(board, feed)
  const reached = reachedFrom(node, pairs)
  if ([...reached].some(each => lines.has(each))) return true
  return board.parts.some(
    part =>
      part.kind === 'transformer' &&
      part.secondary.some(each => reached.has(each)) &&
      part.primary.every(each => reachesAny(each, fed, pairs)) &&
      part.primary.some(each => reachesAny(each, lines, pairs)),
  )
}

const outputNodes = ({ board }: ControlBox, { lands }: Place): readonly string[] =>
  [lands.hot, lands.high, lands.low].flatMap(id =>
    id === undefined ? [] : [nodeOfTerminal(board, id)],
  )

/** Fuses that protect nothing, and outputs that no fuse or breaker of the box protects. */
export function lintFuses(box: ControlBox): readonly LintFinding[] {
  const supplies = suppliesOf(box)
  const idle = box.board.parts.flatMap((part, index) =>
    isFuse(part) && !isInPath(box, part, supplies)
      ? [finding('fuse-in-no-path', ['board', 'parts', index], { part: part.id, kind: part.kind })]
      : [],
  )
  const bare = box.places.flatMap((place, index) =>
    outputNodes(box, place).some(node => supplies.some(each => isUnfused(box, node, each)))
      ? [finding('no-fuse-in-path', ['places', index], { place: place.label })]
      : [],
  )
  return [...idle, ...bare]
}
