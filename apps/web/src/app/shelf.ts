import type { ShelfTexts } from '../ask/protocol.ts'
import type { ShelfText } from '../store/database.ts'
import type { JobSpace } from '../store/space.ts'

/** Descriptions that come with the program, loaded when a job first needs them. */
export async function givenTexts(space: JobSpace): Promise<readonly ShelfText[]> {
  const { DEVICES } = await import('./given-devices.ts')
  if (space.space !== 'demo') return DEVICES
  const { BOXES } = await import('./demo-boxes.ts')
  return [...BOXES, ...DEVICES]
}

/**
 * Everything on the shelf of a space: one's own description stands before a given one of its id. Of a
 * row that only counts the stock of a given one, no more than the count is taken.
 */
export async function shelfTexts(space: JobSpace): Promise<readonly ShelfText[]> {
  const [given, kept] = await Promise.all([givenTexts(space), space.shelf()])
  const own = kept.filter(each => !each.isGiven)
  const of = (all: readonly ShelfText[], { kind, id }: ShelfText) =>
    all.find(each => each.kind === kind && each.id === id)
  const counted = given.map(each => {
    const inStock = of(kept, each)?.inStock ?? each.inStock
    return { ...each, ...(inStock === undefined ? {} : { inStock }) }
  })
  return [...own, ...counted.filter(each => !of(own, each))]
}

export const asTexts = (all: readonly ShelfText[]): ShelfTexts => ({
  boxes: all.filter(each => each.kind === 'control-box').map(each => each.text),
  devices: all.filter(each => each.kind === 'supply-device').map(each => each.text),
})
