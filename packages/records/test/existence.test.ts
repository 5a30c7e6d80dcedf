import type { JobLog } from '@tubwright/records'
import {
  childrenOf,
  documentOf,
  fieldAt,
  heldBack,
  stateText,
  withdrawnBelow,
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

const LOADS = ['survey', 'loads']
const PUMP = [...LOADS, 'pump-a']
const VOLTS = [...PUMP, 'volts']
const LABEL = [...PUMP, 'label']
const LEAD = [...PUMP, 'leads', 'high']

const pumps = (log: JobLog): readonly string[] => childrenOf(log.state, LOADS).map(each => each.id)

const twoCopies = (): readonly [JobLog, JobLog] => {
  const a = logOf('a', add(PUMP), set(VOLTS, '240 V'), add(LEAD), set([...LEAD, 'size'], '14 AWG'))
  return [a, copyOf(a, 'b')]
}

describe('a withdrawn item', () => {
  it('is gone from what is shown and listed with who, when and what it would say', () => {
    const [a] = twoCopies()
    write(a, withdraw(PUMP))
    expect(pumps(a)).toEqual([])
    expect(documentOf(a.state, ['survey'])).toEqual({})
    expect(documentOf(a.state, PUMP)).toEqual({})
    expect(a.state.withdrawn).toEqual([
      { path: PUMP, by: [{ by: HAND.author, at: HAND.at, entry: 'a:5' }], beside: [] },
    ])
    expect(withdrawnBelow(a.state, LOADS)).toMatchObject([
      {
        id: 'pump-a',
        document: { id: 'pump-a', volts: '240 V', leads: [{ id: 'high', size: '14 AWG' }] },
      },
    ])
    expect(withdrawnBelow(a.state, ['survey'])).toEqual([])
    expect(heldBack(a.state)).toEqual([])
  })

  it('comes back with every value', () => {
    const [a] = twoCopies()
    const before = documentOf(a.state, ['survey'])
    write(a, withdraw(PUMP), restore(PUMP))
    expect(documentOf(a.state, ['survey'])).toEqual(before)
    expect(a.state.withdrawn).toEqual([])
  })

  it('wins over an edit beside it, which is listed, holds back, and comes back with it', () => {
    const [a, b] = twoCopies()
    write(a, withdraw(PUMP))
    write(b, set(VOLTS, '120 V'), set(LABEL, 'Jets'))
    meet(a, b)
    expect(stateText(a.state)).toBe(stateText(b.state))
    expect(pumps(a)).toEqual([])
    expect(a.state.withdrawn[0]?.beside.map(({ path, entry }) => [path, entry])).toEqual([
      [LABEL, 'b:2'],
      [VOLTS, 'b:1'],
    ])
    expect(heldBack(a.state)).toEqual([{ kind: 'withdrawn', path: PUMP, beside: ['b:2', 'b:1'] }])
    write(a, restore(PUMP))
    expect(fieldAt(a.state, VOLTS)).toMatchObject({ kind: 'set', value: '120 V' })
    expect(heldBack(a.state)).toEqual([])
  })

  it('is withdrawn for good by one who saw what was done beside the first', () => {
    const [a, b] = twoCopies()
    write(a, withdraw(PUMP))
    write(b, set(VOLTS, '120 V'))
    meet(a, b)
    write(b, withdraw(PUMP))
    expect(b.state.withdrawn[0]?.by).toHaveLength(2)
    expect(b.state.withdrawn[0]?.beside).toEqual([])
    expect(heldBack(b.state)).toEqual([])
  })

  it('stays withdrawn where one withdrew and another restored unseen; undo is still offered', () => {
    const [a, b] = twoCopies()
    write(a, withdraw(PUMP))
    b.merge(a.entries)
    write(a, restore(PUMP), withdraw(PUMP))
    write(b, restore(PUMP))
    meet(a, b)
    expect(pumps(b)).toEqual([])
    expect(b.state.withdrawn).toMatchObject([{ path: PUMP, by: [{ entry: 'a:7' }] }])
    write(b, restore(PUMP))
    expect(pumps(b)).toEqual(['pump-a'])
  })

  it('stays withdrawn where two withdrew and one restore saw only one of them', () => {
    const [a, b] = twoCopies()
    write(a, withdraw(PUMP))
    write(b, withdraw(PUMP))
    write(a, restore(PUMP))
    meet(a, b)
    expect(a.state.withdrawn).toMatchObject([{ by: [{ entry: 'b:1' }] }])
    write(a, restore(PUMP))
    expect(pumps(a)).toEqual(['pump-a'])
  })

  it('hides conflicts inside it, which come back with it', () => {
    const [a, b] = twoCopies()
    write(a, set(VOLTS, '120 V'))
    write(b, set(VOLTS, '230 V'))
    meet(a, b)
    expect(a.state.conflicts).toHaveLength(1)
    write(a, withdraw(PUMP))
    expect(a.state.conflicts).toEqual([])
    expect(fieldAt(a.state, VOLTS).kind).toBe('conflict')
    write(a, restore(PUMP))
    expect(a.state.conflicts).toHaveLength(1)
  })

  it('hides what was withdrawn inside it, which stays so', () => {
    const [a] = twoCopies()
    write(a, withdraw(LEAD), withdraw(PUMP))
    expect(a.state.withdrawn.map(each => each.path)).toEqual([PUMP])
    write(a, restore(PUMP))
    expect(a.state.withdrawn.map(each => each.path)).toEqual([LEAD])
  })

  it('keeps what was added and withdrawn inside it unseen among what is beside', () => {
    const [a, b] = twoCopies()
    const other = [...PUMP, 'leads', 'low']
    write(a, withdraw(PUMP))
    write(b, add(other), withdraw(LEAD))
    meet(a, b)
    expect(a.state.withdrawn[0]?.beside.map(each => each.entry)).toEqual(['b:2', 'b:1'])
  })

  it('does not hold back where safety does not rest on what was done beside it', () => {
    const a = logOf('a', add(['notes', 'n1']))
    const b = copyOf(a, 'b')
    write(a, withdraw(['notes', 'n1']))
    write(b, set(['notes', 'n1', 'text'], 'wet'))
    meet(a, b)
    expect(a.state.withdrawn[0]?.beside).toHaveLength(1)
    expect(heldBack(a.state)).toEqual([])
  })

  it('is there again for one who adds it anew, with what it said', () => {
    const [a] = twoCopies()
    write(a, withdraw(PUMP), add(PUMP))
    expect(fieldAt(a.state, VOLTS)).toMatchObject({ value: '240 V' })
    expect(pumps(a)).toEqual(['pump-a'])
  })
})

describe('a field of an item that nobody added', () => {
  const [, second] = logOf('a', add(PUMP), set(VOLTS, '240 V')).entries

  it('is kept, told as an orphan beside other items, and shown once the add is there', () => {
    const log = logOf('b', add([...LOADS, 'blower']))
    log.merge([second as never])
    expect(pumps(log)).toEqual(['blower'])
    expect(documentOf(log.state, ['survey'])).toEqual({ loads: [{ id: 'blower' }] })
    expect(log.state.orphans).toEqual([PUMP])
    expect(heldBack(log.state)).toEqual([
      { kind: 'orphan', path: PUMP },
      { kind: 'gap', store: 'a', from: 1, to: 1 },
    ])
    log.merge(logOf('a', add(PUMP), set(VOLTS, '240 V')).entries)
    expect(log.state.orphans).toEqual([])
    expect(documentOf(log.state, ['survey'])).toEqual({
      loads: [{ id: 'blower' }, { id: 'pump-a', volts: '240 V' }],
    })
  })

  it('is told as a gap where it stands alone, since whoever set it had seen the add', () => {
    const log = logOf('b')
    log.merge([second as never])
    expect(log.state.gaps).toEqual([{ store: 'a', from: 1, to: 1 }])
    expect(fieldAt(log.state, VOLTS)).toMatchObject({ value: '240 V' })
  })

  it('goes by a clear, where the add never comes', () => {
    const log = logOf('b', add([...LOADS, 'blower']))
    log.merge([entryOf({ act: set(VOLTS, '240 V') })])
    write(log, clear(VOLTS))
    expect(log.state.orphans).toEqual([])
  })

  it('is withdrawn where a withdrawal is all that is known of it', () => {
    const log = logOf('b', add([...LOADS, 'blower']))
    log.merge([entryOf({ act: withdraw(PUMP) }), entryOf({ id: 'c:1', act: set(VOLTS, '240 V') })])
    expect(log.state.withdrawn.map(each => each.path)).toEqual([PUMP])
    expect(log.state.orphans).toEqual([])
  })
})
