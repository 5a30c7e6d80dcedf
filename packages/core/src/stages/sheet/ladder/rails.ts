import type { FeedFunction } from '../../../domain/board/board.ts'
import { isEarth } from '../../../domain/board/board.ts'
import type { Job } from '../../../domain/job.ts'
import { BOX } from '../../../domain/job.ts'
import type { Landing } from '../../../domain/landing/landing.ts'
import { circuitsOf, ownFunction } from '../../../domain/supply/circuits.ts'
import { boardNode, endNode } from '../../../domain/wiring/wire.ts'
import type { SheetText } from '../messages.ts'
import { text } from '../messages.ts'
import type { Side } from './rows.ts'

/** Copper that rungs hang on, by its name. */
export interface Rail {
  readonly node: string
  readonly name: SheetText
  /** Where something without a load begins that hangs on it. */
  readonly side: Side
}

/** What a rail of the supply is called: the one line of a 230 V supply is no leg. */
export const railName = (job: Job, name: FeedFunction): SheetText =>
  name === 'leg1' && job.tub.supply.system === 'single-phase-230'
    ? text('rail.line')
    : text(`rail.${name}`)

const ORDER: readonly FeedFunction[] = ['leg1', 'leg2', 'leg3', 'neutral', 'earth']

const byOrder = (a: FeedFunction, b: FeedFunction): number =>
  ORDER.indexOf(ownFunction(a)) - ORDER.indexOf(ownFunction(b))

/** Where the circuits come from the panel. */
export const sourceRails = (job: Job): readonly Rail[] =>
  circuitsOf(job.tub.supply).flatMap(({ device }, index) => {
    const fedAt = job.devices.get(device)?.fedAt ?? {}
    return (Object.keys(fedAt) as FeedFunction[]).sort(byOrder).flatMap(name => {
      const node = fedAt[name]
      const own = (index === 0 ? name : `second-${name}`) as FeedFunction
      return node === undefined
        ? []
        : [{ node: boardNode(device, node), name: railName(job, own), side: 'left' as const }]
    })
  })

/** Where the supply lands in the box; one piece of copper is one rail, whatever lands on it. */
export function boxRails(job: Job, landing: Landing): readonly Rail[] {
  const rails = new Map<string, Rail>()
  const ends = job.ends
    .filter(each => each.of === 'cable' && each.board === BOX)
    .toSorted((a, b) => byOrder(a.function as FeedFunction, b.function as FeedFunction))
  for (const end of ends) {
    const node = endNode(job, landing, end)
    const name = end.function as FeedFunction
    if (!node.startsWith(`${BOX}:`) || rails.has(node)) continue
    const side = isEarth(name) || ownFunction(name) === 'neutral' ? 'right' : 'left'
    rails.set(node, { node, name: railName(job, name), side })
  }
  return [...rails.values()]
}
