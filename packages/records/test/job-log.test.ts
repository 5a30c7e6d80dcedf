import type { Act } from '@tubwright/records'
import {
  childrenOf,
  fieldAt,
  historyOf,
  JobLog,
  must,
  newestOf,
  stateHash,
  stateText,
} from '@tubwright/records'
import { describe, expect, it } from 'vitest'
import {
  add,
  clear,
  copyOf,
  entryOf,
  HAND,
  logOf,
  meet,
  restore,
  set,
  withdraw,
  write,
} from './support/logs.ts'

const PUMP = ['survey', 'loads', 'pump-a']
const VOLTS = [...PUMP, 'volts']

describe('an entry', () => {
  it('says who did what, when by his clock, and what his log held', () => {
    const log = logOf('a', add(PUMP))
    expect(write(log, set(VOLTS, '240 V'))).toEqual([
      {
        schema: 'entry/1',
        id: 'a:2',
        author: 'Anna',
        at: '2031-05-04T10:20:30Z',
        seen: { a: 1 },
        act: { do: 'set', path: VOLTS, value: '240 V' },
      },
    ])
  })

  it('keeps its own copy of a value', () => {
    const value = { unknown: 'not visible' }
    const log = logOf('a', set(['x'], value))
    value.unknown = 'changed'
    expect(fieldAt(log.state, ['x'])).toMatchObject({ value: { unknown: 'not visible' } })
  })

  it('sees the acts before it in its own batch', () => {
    const log = JobLog.empty('a')
    const entries = write(log, add(PUMP), set(VOLTS, '240 V'), set(VOLTS, '120 V'))
    expect(entries.map(each => each.seen)).toEqual([{}, { a: 1 }, { a: 2 }])
    expect(fieldAt(log.state, VOLTS)).toMatchObject({ kind: 'set', value: '120 V' })
  })
})

describe('a field', () => {
  it('tells empty, cleared and not known apart', () => {
    const log = logOf('a', set(['x'], { unknown: 'not visible' }), set(['y'], null))
    expect(fieldAt(log.state, ['x'])).toMatchObject({
      kind: 'set',
      value: { unknown: 'not visible' },
    })
    expect(fieldAt(log.state, ['y'])).toMatchObject({ kind: 'set', value: null })
    expect(fieldAt(log.state, ['z'])).toEqual({ kind: 'empty' })
    write(log, clear(['x']))
    expect(fieldAt(log.state, ['x'])).toEqual({ kind: 'empty' })
  })

  it('shows every value that was set unseen, until somebody decides who saw them all', () => {
    const a = logOf('a', set(['box'], 'b1'))
    const b = copyOf(a, 'b')
    const c = copyOf(a, 'c')
    must(a.append(set(['box'], 'b2'), { author: 'Anna', at: '2041-01-01T00:00:00Z' }))
    must(b.append(set(['box'], 'b3'), { author: 'Ben', at: '2021-01-01T00:00:00Z' }))
    must(c.append(clear(['box']), { author: 'Cleo', at: '2031-01-01T00:00:00Z' }))
    meet(a, b, c)
    expect(fieldAt(a.state, ['box'])).toEqual({
      kind: 'conflict',
      values: [
        { kind: 'set', value: 'b2', by: 'Anna', at: '2041-01-01T00:00:00Z', entry: 'a:2' },
        { kind: 'set', value: 'b3', by: 'Ben', at: '2021-01-01T00:00:00Z', entry: 'b:1' },
        { kind: 'cleared', by: 'Cleo', at: '2031-01-01T00:00:00Z', entry: 'c:1' },
      ],
      inside: [],
    })
    expect(a.state.conflicts.map(each => each.path)).toEqual([['box']])
    write(b, set(['box'], 'b4'))
    meet(a, b, c)
    expect(fieldAt(c.state, ['box'])).toMatchObject({ kind: 'set', value: 'b4', entry: 'b:2' })
    expect(c.state.conflicts).toEqual([])
  })

  it('is decided by one who saw two of three only between these two', () => {
    const [a, b, c] = [
      logOf('a', set(['x'], 1)),
      logOf('b', set(['x'], 2)),
      logOf('c', set(['x'], 3)),
    ]
    b.merge(a.entries)
    write(b, set(['x'], 4))
    meet(a, b, c)
    const field = fieldAt(a.state, ['x'])
    expect(field.kind === 'conflict' && field.values.map(each => each.value)).toEqual([3, 4])
  })

  it('takes the same value twice for agreement, whatever the order of its keys', () => {
    const a = logOf('a', set(['x'], { from: '8 A', to: '9 A', source: 'plate' }))
    const b = logOf('b', set(['x'], { source: 'plate', to: '9 A', from: '8 A' }))
    meet(a, b)
    expect(a.state.conflicts).toEqual([])
    expect(fieldAt(a.state, ['x'])).toMatchObject({ kind: 'set', entry: 'a:1', agreed: ['b:1'] })
    expect(stateText(a.state)).toBe(stateText(b.state))
  })

  it('does not take 0, "0", false, null, "" and [] for the same', () => {
    for (const [own, other] of [
      [0, '0'],
      [0, false],
      [null, ''],
      [[], {}],
      ['', []],
    ] as const) {
      const a = logOf('a', set(['x'], own))
      a.merge(logOf('b', set(['x'], other)).entries)
      expect(fieldAt(a.state, ['x']).kind).toBe('conflict')
    }
  })
})

describe('a value over others', () => {
  it.each<[string, readonly Act[], Act]>([
    ['a value over an item', [add(PUMP)], set(['survey', 'loads'], 'none')],
    ['a value over a field', [set(VOLTS, '240 V')], set(PUMP, 'x')],
    ['a value on an item', [add(PUMP)], set(PUMP, 'x')],
    ['a field below a value', [set(['survey'], 'x')], set(VOLTS, '240 V')],
    ['an item below a value', [set(['survey', 'loads'], 'x')], add(PUMP)],
    ['an item over a value', [set(PUMP, 'x')], add(PUMP)],
    ['the id of an item', [add(PUMP)], set([...PUMP, 'id'], 'x')],
    ['an item twice', [add(PUMP)], add(PUMP)],
    ['no item withdrawn', [], withdraw(PUMP)],
    ['a field withdrawn', [set(PUMP, 'x')], withdraw(PUMP)],
    ['no item restored', [add(PUMP)], restore(PUMP)],
    ['a field in a withdrawn item', [add(PUMP), withdraw(PUMP)], set(VOLTS, '240 V')],
    ['a clear in a withdrawn item', [add(PUMP), withdraw(PUMP)], clear(VOLTS)],
    ['an item withdrawn again, nothing new', [add(PUMP), withdraw(PUMP)], withdraw(PUMP)],
    ['no fork settled', [], { do: 'settle', fork: 'a:1', variants: ['0123456789abcdef'] }],
  ])('is refused when written: %s', (_, before, act) => {
    const log = logOf('a', ...before)
    const was = stateText(log.state)
    const written = log.append([set(['note'], 'n'), act], HAND)
    expect(written).toMatchObject({ ok: false, failure: { path: [1, expect.any(String)] } })
    expect(stateText(log.state)).toBe(was)
    expect(log.size).toBe(before.length)
    write(log, set(['other'], 1))
    expect(stateText(log.state)).toBe(stateText(logOf('a', ...before, set(['other'], 1)).state))
  })

  it.each<[string, readonly Act[]]>([
    ['[] where items will be', [set(['l'], []), add(['l', 'p'])]],
    ['{} where fields will be', [set(['g'], {}), set(['g', 'a'], 1)]],
    ['[] where items are', [add(['l', 'p']), set(['l'], [])]],
    [
      'a value where everything was cleared',
      [set(['g', 'a'], 1), clear(['g', 'a']), set(['g'], 'x')],
    ],
    [
      'a value where every item was withdrawn',
      [add(['l', 'p']), withdraw(['l', 'p']), set(['l'], 'x')],
    ],
    ['an item added again after it was withdrawn', [add(PUMP), withdraw(PUMP), add(PUMP)]],
  ])('is taken where it leaves room: %s', (_, acts) => {
    expect(logOf('a', ...acts).state.conflicts).toEqual([])
  })

  it('that came about unseen is a conflict with all of it, and either side can be chosen', () => {
    const a = logOf('a', set(['survey', 'bay', 'width'], '430 mm'))
    const b = logOf('b', set(['survey', 'bay'], 'none'))
    meet(a, b)
    expect(a.state.conflicts).toMatchObject([
      { kind: 'shape', path: ['survey', 'bay'], inside: [['survey', 'bay', 'width']] },
    ])
    expect(fieldAt(a.state, ['survey', 'bay', 'width'])).toMatchObject({ value: '430 mm' })
    write(a, clear(['survey', 'bay']))
    expect(a.state.conflicts).toEqual([])
    write(b, clear(['survey', 'bay', 'width']))
    expect(b.state.conflicts).toEqual([])
    expect(fieldAt(b.state, ['survey', 'bay'])).toMatchObject({ value: 'none' })
  })

  it('on an item that was added unseen is a conflict', () => {
    const a = logOf('a', add(PUMP))
    meet(a, logOf('b', set(PUMP, 'x')))
    expect(a.state.conflicts).toMatchObject([{ kind: 'shape', path: PUMP, inside: [] }])
  })

  it('does not matter, cleared or empty, as long as something is below', () => {
    const a = logOf('a', set(['g'], {}))
    const b = copyOf(a, 'b')
    write(a, set(['g', 'a'], 1))
    write(b, clear(['g']))
    meet(a, b)
    expect(a.state.conflicts).toEqual([])
  })
})

describe('what is missing', () => {
  const three = logOf('a', set(['x'], 1), set(['x'], 2), set(['x'], 3)).entries

  it('shows between what is there', () => {
    const log = JobLog.open('b', [three[0], three[2]] as never)
    expect(log.state.gaps).toEqual([{ store: 'a', from: 2, to: 2 }])
    expect(log.state.isComplete).toBe(false)
    log.merge(three)
    expect(log.state.gaps).toEqual([])
    expect(log.state.isComplete).toBe(true)
  })

  it('shows where somebody saw what nobody here has', () => {
    const log = JobLog.open('b', [entryOf({ id: 'c:1', seen: { d: 3 } })])
    expect(log.state.gaps).toEqual([{ store: 'd', from: 1, to: 3 }])
  })

  it('shows where it was once here, however empty the log', () => {
    const log = JobLog.empty('a')
    expect(log.state.isComplete).toBe(true)
    log.expect({ a: 2, b: 1 })
    expect(log.state.gaps).toEqual([
      { store: 'a', from: 1, to: 2 },
      { store: 'b', from: 1, to: 1 },
    ])
  })

  it('is told in ranges: a great counter costs nothing', () => {
    const log = JobLog.open('b', [entryOf({ id: `a:${Number.MAX_SAFE_INTEGER}` })])
    expect(log.state.gaps).toEqual([{ store: 'a', from: 1, to: Number.MAX_SAFE_INTEGER - 1 }])
  })

  it('is not claimed to have been seen, so that what was dropped is shown when it comes', () => {
    const a = logOf('a', set(['x'], 1), set(['y'], 1))
    const b = JobLog.open('b', [a.entries[1]] as never)
    expect(b.seen).toEqual({})
    write(b, set(['x'], 2))
    meet(a, b)
    expect(fieldAt(a.state, ['x']).kind).toBe('conflict')
  })

  it('of its own store is never written again', () => {
    const log = JobLog.empty('a')
    log.expect({ a: 7 })
    const [entry] = write(log, set(['x'], 1))
    expect([entry?.id, entry?.seen]).toEqual(['a:8', {}])
    expect(log.state.gaps).toEqual([{ store: 'a', from: 1, to: 7 }])
  })

  it('leaves a store without room for another entry', () => {
    const log = JobLog.open('a', [entryOf({ id: `a:${Number.MAX_SAFE_INTEGER}` })])
    expect(log.append(set(['x'], 1), HAND)).toMatchObject({
      ok: false,
      failure: { is: 'a full store' },
    })
  })
})

describe('merging', () => {
  it('tells what was new and what was not', () => {
    const a = logOf('a', set(['x'], 1), set(['y'], 2))
    const b = JobLog.open('b', a.entries.slice(0, 1))
    const again = JSON.parse(JSON.stringify(a.entries))
    expect(b.merge([...a.entries, ...again])).toEqual({
      added: a.entries.slice(1),
      duplicates: 3,
      forks: [],
    })
  })

  it('gives entries in an order that needs no clock', () => {
    const a = logOf('a', set(['x'], 1))
    const b = copyOf(a, 'b')
    must(a.append(set(['x'], 2), { author: 'Anna', at: '2041-01-01T00:00:00Z' }))
    must(b.append(set(['x'], 3), { author: 'Ben', at: '2021-01-01T00:00:00Z' }))
    meet(a, b)
    write(b, set(['x'], 4))
    meet(a, b)
    expect(a.entries.map(each => each.id)).toEqual(['a:1', 'a:2', 'b:1', 'b:2'])
  })
})

describe('a state', () => {
  it('never changes', () => {
    const log = logOf('a', add(PUMP), set(VOLTS, '240 V'))
    const { state } = log
    write(log, set(VOLTS, '120 V'), withdraw(PUMP))
    log.merge([entryOf({ id: 'c:3', act: { do: 'stamp' } })])
    log.expect({ z: 9 })
    expect(stateText(state)).toBe(stateText(logOf('a', add(PUMP), set(VOLTS, '240 V')).state))
    expect(stateText(log.state)).not.toBe(stateText(state))
    expect(stateHash(log.state)).not.toBe(stateHash(state))
  })

  it('is the same object as long as nothing happens', () => {
    const log = logOf('a', add(PUMP))
    expect(log.state).toBe(log.state)
    log.merge(log.entries)
    log.append(add(PUMP), HAND)
    expect(log.state).toBe(log.state)
  })

  it('lists items in the order they were added, then by id; fields by the first word on them', () => {
    const a = logOf('a', add(['l', 'z']), set(['g', 'z'], 1), set(['g', 'a'], 1))
    const b = copyOf(a, 'b')
    write(a, add(['l', 'm']), set(['l', 'm', 'x'], 1))
    write(b, add(['l', 'b']), set(['l', 'z', 'x'], 1))
    meet(a, b)
    expect(childrenOf(a.state, ['l'])).toEqual([
      { id: 'z', path: ['l', 'z'], isItem: true, field: { kind: 'empty' } },
      { id: 'b', path: ['l', 'b'], isItem: true, field: { kind: 'empty' } },
      { id: 'm', path: ['l', 'm'], isItem: true, field: { kind: 'empty' } },
    ])
    expect(childrenOf(b.state, ['g']).map(({ id, isItem }) => [id, isItem])).toEqual([
      ['z', false],
      ['a', false],
    ])
    expect(childrenOf(b.state, ['nowhere'])).toEqual([])
  })

  it('has an item where it was added, whatever was said of it before', () => {
    const early = entryOf({ id: 'e:1', act: set(['l', 'late', 'x'], 1) })
    const log = logOf('a', add(['l', 'm']), add(['l', 'late']))
    log.merge([early])
    expect(childrenOf(log.state, ['l']).map(each => each.id)).toEqual(['m', 'late'])
  })
})

describe('the audit trail', () => {
  it('has every word on a path, and the last of them', () => {
    const log = logOf('a', set(['x'], 1), set(['y'], 1), clear(['x']), set(['x'], 2))
    const by = { by: HAND.author, at: HAND.at }
    expect(historyOf(log.entries, ['x'])).toEqual([
      { did: 'set', value: 1, entry: 'a:1', ...by },
      { did: 'clear', entry: 'a:3', ...by },
      { did: 'set', value: 2, entry: 'a:4', ...by },
    ])
    expect(newestOf(log.entries, ['x'])).toMatchObject({ value: 2 })
    expect(newestOf(log.entries, ['z'])).toBeUndefined()
    expect(historyOf(log.entries, ['x', 'y'])).toEqual([])
  })

  it('has who withdrew and who restored an item', () => {
    const log = logOf('a', add(PUMP), withdraw(PUMP), restore(PUMP), set(VOLTS, 1))
    expect(historyOf(log.entries, PUMP).map(each => each.did)).toEqual([
      'add',
      'withdraw',
      'restore',
    ])
  })
})

describe('a programmer', () => {
  it('is told of a store that cannot be', () => {
    expect(() => JobLog.empty('a:b')).toThrow('invariant: store')
    expect(() => must({ ok: false, failure: { path: ['x', 0], is: 'a', may: 'b' } })).toThrow(
      'invariant: x / 0 is a, may be b',
    )
  })
})
