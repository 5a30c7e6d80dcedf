import type { ControlBox, Feed } from '../box/control-box.ts'
import { jumperChoices } from '../wiring/offers.ts'
import type { Positions } from './board-graph.ts'

const CHOICES_MAX = 128

/** Choices of the jumpers that a feed leaves open: all of them, or so many as can be tried. */
export interface Choices {
  readonly tried: readonly Positions[]
  readonly isAll: boolean
}

const factoryOf = ({ board }: ControlBox, feed: Feed): Positions =>
  Object.fromEntries(board.jumpers.map(({ id, factory }) => [id, feed.jumpers[id] ?? factory]))

/** Where there are too many: as from the factory, and each jumper moved by itself. */
export function choicesOf(box: ControlBox, feed: Feed): Choices {
  const open = box.board.jumpers.filter(each => feed.jumpers[each.id] === undefined)
  const count = open.reduce((product, each) => product * each.positions.length, 1)
  if (count <= CHOICES_MAX) return { tried: jumperChoices(box, feed), isAll: true }
  const factory = factoryOf(box, feed)
  const moved = open.flatMap(({ id, factory: from, positions }) =>
    positions.filter(each => each.id !== from).map(each => ({ ...factory, [id]: each.id })),
  )
  return { tried: [factory, ...moved].slice(0, CHOICES_MAX), isAll: false }
}
