import type { Entry, JobLog } from '@tubwright/records'
import {
  fieldAt,
  heldBack,
  historyOf,
  JobLog as Log,
  settleOf,
  stateText,
} from '@tubwright/records'
import { describe, expect, it } from 'vitest'
import { add, copyOf, entryOf, logOf, meet, set, withdraw, write } from './support/logs.ts'

const VOLTS = ['survey', 'loads', 'pump-a', 'volts']

/** One store, copied with its disk, and both go on. */
const cloned = (): readonly [JobLog, JobLog] => {
  const a = logOf('a', set(['note'], 'n'))
  const twin = copyOf(a, 'a')
  write(a, set(VOLTS, '240 V'))
  write(twin, set(VOLTS, '120 V'))
  return [a, twin]
}

describe('two entries under one id', () => {
  it('are both kept, told of, and in conflict; in any order', () => {
    const [a, twin] = cloned()
    const one = Log.open('b', [...a.entries, ...twin.entries])
    const other = Log.open('c', [...twin.entries, ...a.entries])
    expect(stateText(one.state)).toBe(stateText(other.state))
    expect(one.size).toBe(3)
    expect(one.state.forks).toMatchObject([{ id: 'a:2', isSettled: false }])
    expect(one.state.forks[0]?.entries).toHaveLength(2)
    const field = fieldAt(one.state, VOLTS)
    expect(field.kind === 'conflict' && field.values.map(each => each.value)).toEqual([
      '120 V',
      '240 V',
    ])
    expect(historyOf(one.entries, VOLTS)).toHaveLength(2)
    expect(heldBack(one.state).map(each => each.kind)).toEqual(['conflict', 'fork'])
  })

  it('are told of once, when they meet', () => {
    const [a, twin] = cloned()
    expect(a.merge(twin.entries)).toMatchObject({ forks: ['a:2'], duplicates: 1 })
    expect(a.merge(twin.entries)).toEqual({ added: [], duplicates: 2, forks: [] })
  })

  it('of which one does nothing here are still a fork', () => {
    const log = Log.open('b', [entryOf(), entryOf({ act: { do: 'stamp' } })])
    expect(log.state.forks).toMatchObject([{ id: 'a:1' }])
  })

  it('that differ only in a further field are still a fork', () => {
    const log = Log.open('b', [entryOf(), { ...entryOf(), weather: 'fair' } as Entry])
    expect(log.state.forks).toHaveLength(1)
    expect(log.state.conflicts).toEqual([])
  })

  it('may be three', () => {
    const log = Log.open(
      'b',
      ['x', 'y', 'z'].map(value => entryOf({ act: set(['q'], value) })),
    )
    expect(log.state.forks[0]?.variants).toHaveLength(3)
    const field = fieldAt(log.state, ['q'])
    expect(field.kind === 'conflict' && field.values).toHaveLength(3)
  })

  it('are not replaced by one who can have seen but one of them', () => {
    const [a, twin] = cloned()
    write(a, set(VOLTS, '230 V'))
    expect(fieldAt(a.state, VOLTS)).toMatchObject({ kind: 'set', value: '230 V' })
    meet(a, twin)
    const field = fieldAt(a.state, VOLTS)
    expect(field.kind === 'conflict' && field.values.map(each => each.value)).toEqual([
      '120 V',
      '240 V',
      '230 V',
    ])
  })

  it('are decided by one who says that he saw them all', () => {
    const [a, twin] = cloned()
    const b = Log.open('b', [...a.entries, ...twin.entries])
    const [fork] = b.state.forks
    write(b, settleOf(fork as never), set(VOLTS, '240 V'))
    expect(fieldAt(b.state, VOLTS)).toMatchObject({ kind: 'set', value: '240 V', entry: 'b:2' })
    expect(heldBack(b.state)).toEqual([])
    const later = Log.open('c', b.entries.toReversed())
    expect(stateText(later.state)).toBe(stateText(b.state))
  })

  it('are open again when another one turns up', () => {
    const [a, twin] = cloned()
    const b = Log.open('b', [...a.entries, ...twin.entries])
    write(b, settleOf(b.state.forks[0] as never), set(VOLTS, '240 V'))
    const third = copyOf(logOf('a', set(['note'], 'n')), 'a')
    write(third, set(VOLTS, '99 V'))
    b.merge(third.entries)
    expect(b.state.forks).toMatchObject([{ isSettled: false }])
    const field = fieldAt(b.state, VOLTS)
    expect(field.kind === 'conflict' && field.values.map(each => each.value)).toEqual([
      '99 V',
      '240 V',
    ])
  })

  it('cannot be settled by naming some of them', () => {
    const [a, twin] = cloned()
    meet(a, twin)
    const { id, variants } = a.state.forks[0] as never as { id: `a:${number}`; variants: string[] }
    const hand = { author: 'Anna', at: '2031-05-04T10:20:30Z' }
    expect(a.append({ do: 'settle', fork: id, variants: variants.slice(1) }, hand)).toMatchObject({
      ok: false,
      failure: { path: ['variants'] },
    })
  })

  it('of which one withdraws keep the item withdrawn until a restore that saw it settled', () => {
    const pump = ['l', 'p']
    const a = logOf('a', add(pump))
    const twin = copyOf(a, 'a')
    write(a, withdraw(pump))
    write(twin, set(['note'], 'n'))
    meet(a, twin)
    write(a, { do: 'restore', path: pump })
    expect(a.state.withdrawn).toHaveLength(1)
    write(a, settleOf(a.state.forks[0] as never), { do: 'restore', path: pump })
    expect(a.state.withdrawn).toEqual([])
  })
})
