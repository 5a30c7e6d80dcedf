import type { Act, Json, JsonObject } from '@tubwright/records'
import {
  actsBetween,
  actsTo,
  documentOf,
  heldBack,
  isSafetyPath,
  isSame,
  JobLog,
  must,
  stateText,
} from '@tubwright/records'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { anyDocument, saySame } from './support/arbitrary-document.ts'
import { TUBS } from './support/tubs.ts'

const HAND = { author: 'Anna', at: '2031-05-04T10:20:30Z' }
const RUNS = { numRuns: 2000, seed: 20_310_504 }
const AT = ['survey']

const logOf = (...acts: readonly Act[]): JobLog => {
  const log = JobLog.empty('a')
  must(log.append(acts, HAND))
  return log
}

describe('the demo tubs', () => {
  it('are there', () => expect(TUBS.length).toBeGreaterThan(20))

  it.each(TUBS)('$name comes back equal from its acts, items in order', ({ document }) => {
    const log = logOf(...actsBetween(undefined, document, AT))
    expect(documentOf(log.state, AT)).toEqual(document)
    expect(Object.keys(documentOf(log.state, AT) as JsonObject)).toEqual(Object.keys(document))
    expect(actsTo(log.state, AT, document)).toEqual([])
    expect(actsBetween(document, document, AT)).toEqual([])
    expect(heldBack(log.state)).toEqual([])
  })

  it.each(TUBS)('$name becomes the next one and comes back', ({ document }) => {
    const log = logOf(...actsBetween(undefined, document, AT))
    const other = (TUBS[(TUBS.findIndex(each => each.document === document) + 1) % TUBS.length] ??
      TUBS[0]) as (typeof TUBS)[number]
    must(log.append(actsTo(log.state, AT, other.document), HAND))
    expect(saySame(documentOf(log.state, AT), other.document)).toBe(true)
    must(log.append(actsTo(log.state, AT, document), HAND))
    expect(saySame(documentOf(log.state, AT), document)).toBe(true)
  })
})

describe('any documents', () => {
  it('come back equal from their acts, items in order', () => {
    fc.assert(
      fc.property(anyDocument, document => {
        const log = logOf(...actsBetween(undefined, document, AT))
        if (!isSame(documentOf(log.state, AT), document))
          expect(documentOf(log.state, AT)).toEqual(document)
      }),
      RUNS,
    )
  })

  it('one after the other are reached from wherever the record is', () => {
    fc.assert(
      fc.property(fc.array(anyDocument, { minLength: 2, maxLength: 5 }), documents => {
        const log = JobLog.empty('a')
        for (const document of documents) {
          must(log.append(actsTo(log.state, AT, document), HAND))
          const is = documentOf(log.state, AT)
          if (!saySame(is, document)) expect(is).toEqual(document)
          expect(actsTo(log.state, AT, is)).toEqual([])
          expect(log.state.conflicts).toEqual([])
          expect(log.state.orphans).toEqual([])
        }
      }),
      RUNS,
    )
  })

  it('edited by two at once, whatever came of it, lead to any third', () => {
    const met = { conflicts: 0, withdrawn: 0 }
    fc.assert(
      fc.property(fc.tuple(anyDocument, anyDocument, anyDocument, anyDocument), documents => {
        const [base, left, right, third] = documents
        const a = logOf(...actsBetween(undefined, base, AT))
        const b = JobLog.open('b', a.entries)
        must(a.append(actsTo(a.state, AT, left), HAND))
        must(b.append(actsTo(b.state, AT, right), HAND))
        a.merge(b.entries)
        if (a.state.conflicts.length > 0) met.conflicts++
        if (a.state.withdrawn.length > 0) met.withdrawn++
        if (a.state.orphans.length > 0) return
        const is = documentOf(a.state, AT)
        expect(actsTo(a.state, AT, is)).toEqual([])
        must(a.append(actsTo(a.state, AT, third), HAND))
        if (!saySame(documentOf(a.state, AT), third)) expect(documentOf(a.state, AT)).toEqual(third)
        expect(a.state.conflicts.filter(({ path }) => isSafetyPath(path))).toEqual([])
      }),
      RUNS,
    )
    expect(met.conflicts).toBeGreaterThan(100)
    expect(met.withdrawn).toBeGreaterThan(100)
  })

  it('edited by two at once: what only one of them touched comes through', () => {
    fc.assert(
      fc.property(anyDocument, anyDocument, anyDocument, (base, left, right) => {
        const a = logOf(...actsBetween(undefined, base, ['x', 'base']))
        const b = JobLog.open('b', a.entries)
        must(a.append(actsTo(a.state, ['x', 'left'], left), HAND))
        must(b.append(actsTo(b.state, ['x', 'right'], right), HAND))
        a.merge(b.entries)
        b.merge(a.entries)
        expect(stateText(a.state)).toBe(stateText(b.state))
        if (a.state.conflicts.length > 0) return
        expect(saySame(documentOf(a.state, ['x', 'left']), left)).toBe(true)
        expect(saySame(documentOf(a.state, ['x', 'right']), right)).toBe(true)
      }),
      RUNS,
    )
  })
})

describe('a document where nobody has decided', () => {
  const both = (own: Act, other: Act): Json => {
    const log = logOf(own)
    const b = JobLog.empty('b')
    must(b.append(other, HAND))
    log.merge(b.entries)
    return documentOf(log.state, [])
  }
  const set = (path: readonly string[], value: Json): Act => ({ do: 'set', path, value })

  it('has no value that a schema would take, where safety rests on it', () => {
    const path = ['survey', 'region']
    expect(both(set(path, 'US'), set(path, 'UK'))).toEqual({
      survey: { region: { conflict: ['US', 'UK'] } },
    })
    expect(both(set(path, 'US'), { do: 'clear', path })).toEqual({
      survey: { region: { conflict: ['US', null] } },
    })
  })

  it('has the last of the values shown elsewhere', () => {
    expect(both(set(['note'], 'one'), set(['note'], 'two'))).toEqual({ note: 'two' })
  })

  it('has all of it where a value stands over others', () => {
    expect(both(set(['note'], 'one'), set(['note', 'text'], 'two'))).toEqual({
      note: { conflict: ['one'] },
    })
  })

  it('is empty where nothing is said', () => {
    const log = JobLog.empty('a')
    expect(documentOf(log.state, [])).toEqual({})
    expect(documentOf(log.state, ['survey'])).toEqual({})
  })
})

describe('acts between documents', () => {
  const between = (before: Json | undefined, after: Json | undefined) =>
    actsBetween(before, after, ['x'])

  it('name the field that changed, and nothing else', () => {
    const before = { loads: [{ id: 'p', volts: '240 V', leads: [{ id: 'l', size: '14 AWG' }] }] }
    const after = { loads: [{ id: 'p', volts: '240 V', leads: [{ id: 'l', size: '12 AWG' }] }] }
    expect(between(before, after)).toEqual([
      { do: 'set', path: ['x', 'loads', 'p', 'leads', 'l', 'size'], value: '12 AWG' },
    ])
  })

  it('add an item before its fields, and withdraw one with a single act', () => {
    const one = { loads: [{ id: 'p', leads: [{ id: 'l', size: '14 AWG' }] }] }
    expect(between(undefined, one)).toEqual([
      { do: 'add', path: ['x', 'loads', 'p'] },
      { do: 'add', path: ['x', 'loads', 'p', 'leads', 'l'] },
      { do: 'set', path: ['x', 'loads', 'p', 'leads', 'l', 'size'], value: '14 AWG' },
    ])
    expect(between(one, { loads: [] })).toEqual([
      { do: 'withdraw', path: ['x', 'loads', 'p'] },
      { do: 'set', path: ['x', 'loads'], value: [] },
    ])
    expect(between(one, undefined)).toEqual([{ do: 'withdraw', path: ['x', 'loads', 'p'] }])
  })

  it('take what is not known, a range and one of several as single values', () => {
    for (const value of [
      { unknown: 'not visible' },
      { from: '8 A', to: '9 A', source: 'plate' },
      { oneOf: ['8 A', '9 A'], source: 'plate' },
      ['high', 'common'],
    ])
      expect(between({ amps: '8 A' }, { amps: value })).toEqual([
        { do: 'set', path: ['x', 'amps'], value },
      ])
  })

  it('go into a cable, which has from and to but is no range', () => {
    expect(between({ from: 'a', to: 'b' }, { from: 'a', to: 'c' })).toEqual([
      { do: 'set', path: ['x', 'to'], value: 'c' },
    ])
  })

  it('clear what is no longer there, and tell it from what is not known', () => {
    expect(between({ a: 1, b: { c: 2 } }, { b: {} })).toEqual([
      { do: 'clear', path: ['x', 'a'] },
      { do: 'clear', path: ['x', 'b', 'c'] },
      { do: 'set', path: ['x', 'b'], value: {} },
    ])
  })

  it('leave out what is undefined', () => {
    expect(between(undefined, { a: undefined, b: 1 } as never)).toEqual([
      { do: 'set', path: ['x', 'b'], value: 1 },
    ])
  })
})

describe('acts to a document', () => {
  it('bring a withdrawn item back by a restore, without what it used to say besides', () => {
    const log = logOf(
      ...actsBetween(undefined, { loads: [{ id: 'p', volts: '240 V', label: 'P' }] }, AT),
    )
    must(log.append(actsTo(log.state, AT, { loads: [] }), HAND))
    const acts = actsTo(log.state, AT, { loads: [{ id: 'p', volts: '120 V' }] })
    expect(acts).toEqual([
      { do: 'restore', path: ['survey', 'loads', 'p'] },
      { do: 'clear', path: ['survey', 'loads', 'p', 'label'] },
      { do: 'set', path: ['survey', 'loads', 'p', 'volts'], value: '120 V' },
    ])
    must(log.append(acts, HAND))
    expect(documentOf(log.state, AT)).toEqual({ loads: [{ id: 'p', volts: '120 V' }] })
  })

  it('may be told one item', () => {
    const log = logOf(...actsBetween(undefined, { loads: [{ id: 'p', volts: '240 V' }] }, AT))
    const path = ['survey', 'loads', 'p']
    expect(actsTo(log.state, path, { id: 'p', volts: '120 V' })).toEqual([
      { do: 'set', path: [...path, 'volts'], value: '120 V' },
    ])
  })

  it('do not decide a conflict that the document only repeats', () => {
    const a = logOf({ do: 'set', path: ['survey', 'region'], value: 'US' })
    const b = JobLog.empty('b')
    must(b.append({ do: 'set', path: ['survey', 'region'], value: 'UK' }, HAND))
    a.merge(b.entries)
    const document = documentOf(a.state, AT)
    expect(document).toEqual({ region: { conflict: ['US', 'UK'] } })
    expect(actsTo(a.state, AT, document)).toEqual([])
    must(a.append(actsTo(a.state, AT, { region: 'UK' }), HAND))
    expect(documentOf(a.state, AT)).toEqual({ region: 'UK' })
  })
})
