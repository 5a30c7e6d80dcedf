import { describe, expect, it } from 'vitest'
import type { RowShelf } from '../../src/screens/describe/shelf-row.ts'
import { ShelfRow } from '../../src/screens/describe/shelf-row.ts'
import { TextKeeper } from '../../src/screens/describe/text-keeper.ts'
import type { ShelfText } from '../../src/store/database.ts'

/** A promise that somebody else settles. */
function gate(): { readonly passed: Promise<void>; readonly open: () => void } {
  let open = (): void => {}
  const passed = new Promise<void>(resolve => {
    open = resolve
  })
  return { passed, open }
}

const states = (): {
  readonly told: string[]
  readonly tell: (kept: { state: string }) => void
} => {
  const told: string[] = []
  return { told, tell: ({ state }) => told.push(state) }
}

describe('the way of a text to the disk', () => {
  it('writes one after the other, and of those that wait the newest', async () => {
    const written: string[] = []
    const gates = [gate(), gate()]
    let running = 0
    let most = 0
    const { told, tell } = states()
    const keeper = new TextKeeper(async text => {
      most = Math.max(most, ++running)
      await gates[written.length]?.passed
      written.push(text)
      running--
    }, tell)
    for (const text of ['a', 'ab', 'abc']) keeper.keep(text)
    expect(told.at(-1)).toBe('saving')
    for (const each of gates) each.open()
    expect(await keeper.settled()).toBe(true)
    expect(written).toEqual(['a', 'abc'])
    expect(most).toBe(1)
    expect(told.at(-1)).toBe('saved')
  })

  it('keeps what could not be written, and writes it when somebody asks', async () => {
    const disk: string[] = []
    let isFull = true
    const { told, tell } = states()
    const keeper = new TextKeeper(async text => {
      if (isFull) throw new Error('full')
      disk.push(text)
    }, tell)
    keeper.keep('a')
    expect(await keeper.settled()).toBe(false)
    expect(keeper.kept).toEqual({ state: 'failed', why: 'full' })
    isFull = false
    keeper.retry()
    expect(await keeper.settled()).toBe(true)
    expect(disk).toEqual(['a'])
    expect(told).toEqual(['saving', 'failed', 'saving', 'saved'])
  })

  it('takes the newer of a text that failed and one that came meanwhile', async () => {
    const disk: string[] = []
    let fails = 1
    const keeper = new TextKeeper(
      async text => {
        if (fails-- > 0) throw new Error('full')
        disk.push(text)
      },
      () => {},
    )
    keeper.keep('a')
    keeper.keep('ab')
    await keeper.settled()
    keeper.retry()
    await keeper.settled()
    expect(disk).toEqual(['ab'])
  })
})

const row = (id: string, text: string, more: Partial<ShelfText> = {}): ShelfText => ({
  kind: 'control-box',
  id,
  text,
  at: '',
  ...more,
})

/** A shelf in memory, and in which order it was written to. */
function shelfWith(...rows: readonly ShelfText[]) {
  const all = new Map(rows.map(each => [each.id, each]))
  const order: string[] = []
  let isFull = false
  const shelf: RowShelf = {
    put: async text => {
      if (isFull) throw new Error('full')
      order.push(`put ${text.id}`)
      all.set(text.id, text)
    },
    takeOff: async ({ id }) => {
      order.push(`off ${id}`)
      all.delete(id)
    },
    find: async ({ id }) => all.get(id),
    now: () => 'now',
  }
  const fill = (to: boolean): void => {
    isFull = to
  }
  return { shelf, all, order, fill }
}

const to = (id: string) => ({ kind: 'control-box', id }) as const
const quiet = (): void => {}

describe('a description that gets another name', () => {
  it('is at the new place before it leaves the old one, with what was typed last', async () => {
    const stored = row('a', 'id: a', { inStock: 3 })
    const { shelf, all, order } = shelfWith(stored)
    const own = new ShelfRow(shelf, stored, quiet)
    own.write('id: b')
    expect(await own.move(to('b'))).toBe('moved')
    expect(order).toEqual(['put a', 'put b', 'off a'])
    expect([...all.values()]).toEqual([row('b', 'id: b', { inStock: 3, at: 'now' })])
    own.write('id: b # more')
    await own.keeper.settled()
    expect(all.get('b')?.text).toBe('id: b # more')
    expect(await own.move(to('b'))).toBe('there')
  })

  it('stays where it is when the name is taken, given or own', async () => {
    const stored = row('a', 'id: a')
    const { shelf, all } = shelfWith(
      stored,
      row('b', 'other'),
      row('c', 'id: a', { isGiven: true }),
    )
    const own = new ShelfRow(shelf, stored, quiet)
    expect(await own.move(to('b'))).toBe('taken')
    expect(await own.move(to('c'))).toBe('taken')
    expect([...all.keys()].sort()).toEqual(['a', 'b', 'c'])
  })

  it('finishes a move that was cut off', async () => {
    const stored = row('a', 'id: b')
    const { shelf, all } = shelfWith(stored, row('b', 'id: b'))
    expect(await new ShelfRow(shelf, stored, quiet).move(to('b'))).toBe('moved')
    expect([...all.keys()]).toEqual(['b'])
  })

  it('is as it was when the disk is full', async () => {
    const stored = row('a', 'id: a')
    const { shelf, all, order, fill } = shelfWith(stored)
    const own = new ShelfRow(shelf, stored, quiet)
    fill(true)
    expect(await own.move(to('b'))).toBe('failed')
    expect([...all.keys()]).toEqual(['a'])
    fill(false)
    own.keeper.retry()
    await own.keeper.settled()
    expect(order).toEqual(['put a'])
  })
})
