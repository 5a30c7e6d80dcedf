import type { Act, Entry } from '@tubwright/records'
import {
  documentOf,
  fieldAt,
  fromStored,
  heldBack,
  historyOf,
  JobLog,
  MIGRATIONS,
  misplaced,
  must,
  READER,
  readerOf,
  stateText,
  toStored,
} from '@tubwright/records'
import { describe, expect, it } from 'vitest'
import { add, copyOf, entryOf, HAND, logOf, meet, set, withdraw, write } from './support/logs.ts'
import { NEW, NEXT, OLD } from './support/two-versions.ts'

const LENGTH = ['survey', 'feeder', 'length']
const WIDTH = ['survey', 'bay', 'width']
const MOVED = ['survey', 'room', 'width']

const newLog = (store: string, ...acts: readonly Act[]): JobLog => {
  const log = JobLog.empty(store, NEW)
  write(log, ...acts)
  return log
}

describe('migrations', () => {
  it('are numbered without a hole, and the last leads to the newest form', () => {
    expect(misplaced(MIGRATIONS)).toBeUndefined()
    expect(READER.level).toBe(MIGRATIONS.length + 1)
  })

  it('are refused with a hole, out of order, or twice', () => {
    const step = (from: number, to: number) => ({ from, to, upcast: (act: Act) => act })
    for (const steps of [
      [step(2, 3)],
      [step(1, 3)],
      [step(1, 2), step(1, 2)],
      [step(1, 2), step(3, 4)],
      [step(2, 3), step(1, 2)],
    ]) {
      expect(misplaced(steps)).toBeDefined()
      expect(() => readerOf(steps)).toThrow('invariant: migration')
    }
    expect(readerOf([step(1, 2), step(2, 3)]).level).toBe(3)
  })

  it('are taken one after the other from the form that an entry is in', () => {
    const appends = (from: number, sign: string) => ({
      from,
      to: from + 1,
      upcast: (act: Act): Act =>
        act.do === 'set' ? { ...act, value: `${act.value}${sign}` } : act,
    })
    const reader = readerOf([appends(1, 'a'), appends(2, 'b')])
    const said = [1, 2, 3].map(level => {
      const entry = entryOf({ schema: `entry/${level}`, act: set(['x'], '-') })
      return fieldAt(JobLog.open('b', [entry], reader).state, ['x'])
    })
    expect(said).toMatchObject([{ value: '-ab' }, { value: '-b' }, { value: '-' }])
  })
})

describe('an older entry read by a newer version', () => {
  const old = logOf('a', set(LENGTH, 35), set(WIDTH, '430 mm'))

  it('says the same in the new form', () => {
    const log = copyOf(old, 'b', NEW)
    expect(fieldAt(log.state, LENGTH)).toMatchObject({ value: 350, entry: 'a:1' })
    expect(fieldAt(log.state, MOVED)).toMatchObject({ value: '430 mm' })
    expect(fieldAt(log.state, WIDTH)).toEqual({ kind: 'empty' })
    expect(historyOf(log.entries, LENGTH, NEW)).toMatchObject([{ value: 350 }])
    expect(historyOf(log.entries, LENGTH, OLD)).toMatchObject([{ value: 35 }])
  })

  it('keeps the bytes it was stored in', () => {
    const stored = old.entries.map(toStored)
    const log = JobLog.open(
      'b',
      stored.map(each => must(fromStored(each, NEW))),
      NEW,
    )
    write(log, set(LENGTH, 400))
    expect(log.entries.slice(0, 2).map(toStored)).toEqual(stored)
  })

  it('is replaced by a newer one that saw it', () => {
    const log = copyOf(old, 'b', NEW)
    expect(write(log, set(LENGTH, 400))).toMatchObject([{ schema: 'entry/2' }])
    expect(fieldAt(log.state, LENGTH)).toMatchObject({ kind: 'set', value: 400 })
  })

  it('agrees with a newer one that says the same in the other unit', () => {
    const log = newLog('b', set(LENGTH, 350))
    log.merge(old.entries)
    expect(fieldAt(log.state, LENGTH)).toMatchObject({ kind: 'set', agreed: ['b:1'] })
  })
})

describe('a newer entry in an older version', () => {
  const strange = {
    ...entryOf({ id: 'n:1', schema: 'entry/2', act: set(LENGTH, 350) }),
    weather: { wind: ['north', 1.5e-7], '10': 1, '9': 'é\ud800' },
  } as Entry

  it('is kept byte for byte, and told of as not understood', () => {
    const log = logOf('a', set(LENGTH, 35))
    log.merge([must(fromStored(toStored(strange)))])
    expect(log.state.notUnderstood).toEqual([
      { entry: 'n:1', schema: 'entry/2', act: 'set', by: HAND.author, at: HAND.at },
    ])
    expect(heldBack(log.state)).toEqual([
      { kind: 'not-understood', entry: 'n:1', schema: 'entry/2', act: 'set' },
    ])
    expect(log.entries.map(each => toStored(each).text)).toContain(toStored(strange).text)
    expect(fieldAt(log.state, LENGTH)).toMatchObject({ value: 35 })
  })

  it('is not replaced by one who edits beside it: he cannot have read it', () => {
    const log = JobLog.open('a', [strange], OLD)
    expect(write(log, set(LENGTH, 36))).toMatchObject([{ schema: 'entry/1', seen: { n: 1 } }])
    const upgraded = copyOf(log, 'a', NEW)
    const field = fieldAt(upgraded.state, LENGTH)
    expect(field.kind === 'conflict' && field.values.map(each => each.value)).toEqual([350, 360])
  })

  it('may do something that has no name yet', () => {
    const log = JobLog.open('a', [entryOf({ act: { do: 'stamp', ink: 'red' } })])
    expect(log.state.notUnderstood).toMatchObject([{ schema: 'entry/1', act: 'stamp' }])
    const odd = entryOf({ schema: 'entry/9', act: { verb: 1 } })
    expect(JobLog.open('a', [odd]).state.notUnderstood).toMatchObject([{ act: '' }])
  })

  it('withdraws nothing that the older version shows, and its restore undoes nothing of it', () => {
    const pump = ['survey', 'loads', 'p']
    const base = logOf('a', add(pump))
    const ahead = copyOf(base, 'n', NEW)
    write(ahead, withdraw(pump))
    base.merge(ahead.entries)
    expect(base.state.withdrawn).toEqual([])
    write(base, set([...pump, 'volts'], '240 V'))
    ahead.merge(base.entries)
    expect(ahead.state.withdrawn).toMatchObject([{ path: pump, beside: [{ entry: 'a:2' }] }])
  })
})

describe('two versions side by side', () => {
  it('hold the same state once both have upgraded', () => {
    const old = logOf('a', set(LENGTH, 35), set(WIDTH, '430 mm'))
    const ahead = copyOf(old, 'n', NEW)
    write(ahead, set(MOVED, '450 mm'), set(LENGTH, 400))
    write(old, set(LENGTH, 36))
    meet(old, ahead)
    write(old, set(['box'], 'b1'))
    meet(old, ahead)
    expect(stateText(old.state)).not.toBe(stateText(ahead.state))
    const upgraded = copyOf(old, 'a', NEW)
    expect(stateText(upgraded.state)).toBe(stateText(ahead.state))
    expect(documentOf(upgraded.state, [])).toMatchObject({
      survey: { room: { width: '450 mm' } },
      box: 'b1',
    })
    expect(upgraded.state.conflicts.map(each => each.path)).toEqual([LENGTH])
  })

  it('upcast alike: the step is a function of the act alone', () => {
    const act = set(LENGTH, 35)
    expect(NEXT.upcast(act)).toEqual(NEXT.upcast(JSON.parse(JSON.stringify(act))))
    expect(act).toEqual(set(LENGTH, 35))
  })
})
