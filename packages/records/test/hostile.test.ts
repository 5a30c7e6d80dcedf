import type { Act, Json } from '@tubwright/records'
import {
  canonical,
  documentOf,
  ENTRY_DEPTH_MAX,
  fromStored,
  fromWire,
  JobLog,
  must,
  readEntry,
  readJobFile,
  readSeen,
  STEPS_MAX,
  stateText,
  toStored,
  toWire,
  VALUE_BYTES_MAX,
  VALUE_DEPTH_MAX,
  writeJobFile,
} from '@tubwright/records'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { explainJson } from '../src/explain-json.ts'
import { add, clear, entryOf, HAND, logOf, set, write } from './support/logs.ts'

const DEEP = 1_000_000

const nested = (depth: number): Json => {
  let value: Json = 1
  for (let level = 0; level < depth; level++) value = [value]
  return value
}

const withAct = (act: unknown) => entryOf({ act })

/** What is sent, where it is wrong, and what is said of it. */
const WRONG: readonly (readonly [string, unknown, readonly (string | number)[], string?])[] = [
  ['nothing', undefined, [], 'nothing'],
  ['null', null, []],
  ['a list', [], [], 'a list of 0'],
  ['a text', 'x', [], '"x"'],
  ['a function', () => 1, [], 'a function'],
  ['a date', new Date(0), [], 'an object of a class'],
  ['no schema', entryOf({ schema: undefined }), ['schema']],
  ['another schema', entryOf({ schema: 'survey/1' }), ['schema']],
  ['form 0', entryOf({ schema: 'entry/0' }), ['schema']],
  ['form 1.5', entryOf({ schema: 'entry/1.5' }), ['schema']],
  ['form 1e9', entryOf({ schema: 'entry/1000000000' }), ['schema']],
  ['no id', entryOf({ id: 7 }), ['id']],
  ['an id without a counter', entryOf({ id: 'a' }), ['id']],
  ['counter 0', entryOf({ id: 'a:0' }), ['id']],
  ['a counter below 0', entryOf({ id: 'a:-1' }), ['id']],
  ['a counter with a 0 before it', entryOf({ id: 'a:01' }), ['id']],
  ['a counter with a fraction', entryOf({ id: 'a:1.5' }), ['id']],
  ['a counter of 2^53', entryOf({ id: 'a:9007199254740992' }), ['id']],
  ['a counter of 400 digits', entryOf({ id: `a:${'9'.repeat(400)}` }), ['id']],
  ['a counter that is no number', entryOf({ id: 'a:x' }), ['id']],
  ['a store of nothing', entryOf({ id: ':1' }), ['id']],
  ['a store with a colon', entryOf({ id: 'a:b:1' }), ['id']],
  ['a store of a thousand signs', entryOf({ id: `${'a'.repeat(1000)}:1` }), ['id']],
  ['a store that means something', entryOf({ id: '__proto__:1' }), ['id']],
  ['no author', entryOf({ author: '' }), ['author']],
  ['an author of another kind', entryOf({ author: { name: 'Anna' } }), ['author']],
  ['an author of a thousand signs', entryOf({ author: 'a'.repeat(1000) }), ['author']],
  ['no time', entryOf({ at: '' }), ['at']],
  ['a time as a number', entryOf({ at: 1.9e12 }), ['at']],
  ['a day that is none', entryOf({ at: '2031-13-04T10:20:30Z' }), ['at']],
  ['a time without its zone', entryOf({ at: '2031-05-04T10:20:30' }), ['at']],
  ['nothing seen', entryOf({ seen: null }), ['seen']],
  ['a list seen', entryOf({ seen: [1] }), ['seen']],
  ['0 seen', entryOf({ seen: { b: 0 } }), ['seen', 'b']],
  ['less than 0 seen', entryOf({ seen: { b: -1 } }), ['seen', 'b']],
  ['half of one seen', entryOf({ seen: { b: 0.5 } }), ['seen', 'b']],
  ['2^53 seen', entryOf({ seen: { b: 2 ** 53 } }), ['seen', 'b']],
  ['no number seen', entryOf({ seen: { b: Number.NaN } }), ['seen', 'b']],
  ['a text seen', entryOf({ seen: { b: '1' } }), ['seen', 'b']],
  ['a strange store seen', entryOf({ seen: { 'b c': 1 } }), ['seen', 'b c']],
  ['itself seen', entryOf({ id: 'a:2', seen: { a: 2 } }), ['seen', 'a']],
  ['its first seen by the first', entryOf({ seen: { a: 1 } }), ['seen', 'a']],
  [
    'too many stores seen',
    entryOf({ seen: Object.fromEntries(Array.from({ length: 1025 }, (_, at) => [`s${at}`, 1])) }),
    ['seen'],
  ],
  ['no act', entryOf({ act: undefined }), ['act']],
  ['a list for an act', withAct([]), ['act']],
  ['a path of nothing', withAct(clear([])), ['act', 'path']],
  ['a path that is none', withAct({ do: 'add', path: 'a/b' }), ['act', 'path']],
  ['no path', withAct({ do: 'restore' }), ['act', 'path']],
  [
    'a path too long',
    withAct(add(Array.from({ length: STEPS_MAX + 1 }, () => 'x'))),
    ['act', 'path'],
  ],
  ['a step of nothing', withAct(add(['a', ''])), ['act', 'path', 1]],
  ['a step that is a number', withAct({ do: 'withdraw', path: ['a', 1] }), ['act', 'path', 1]],
  ['a step that means something', withAct(add(['__proto__', 'x'])), ['act', 'path', 0]],
  ['a step with a control character', withAct(add(['a\u001fb'])), ['act', 'path', 0]],
  ['a step of a thousand signs', withAct(add(['a'.repeat(1000)])), ['act', 'path', 0]],
  ['no value', withAct({ do: 'set', path: ['x'] }), ['act', 'value'], 'nothing'],
  [
    'a value too large',
    withAct(set(['x'], 'a'.repeat(VALUE_BYTES_MAX))),
    ['act', 'value'],
    '"a larger value"',
  ],
  [
    'a value too large in bytes',
    withAct(set(['x'], 'é'.repeat(VALUE_BYTES_MAX / 2))),
    ['act', 'value'],
  ],
  [
    'a value without end',
    withAct(set(['x'], Number.POSITIVE_INFINITY)),
    ['act', 'value'],
    'Infinity',
  ],
  ['a value that is no number', withAct(set(['x'], [Number.NaN])), ['act', 'value', 0], 'NaN'],
  [
    'a value undefined inside',
    withAct({ do: 'set', path: ['x'], value: { a: undefined } }),
    ['act', 'value', 'a'],
    'nothing',
  ],
  [
    'a great whole number',
    withAct({ do: 'set', path: ['x'], value: 10n }),
    ['act', 'value'],
    'a bigint',
  ],
  ['a map', withAct({ do: 'set', path: ['x'], value: new Map() }), ['act', 'value']],
  ['a settle of no id', withAct({ do: 'settle', fork: 'x', variants: [] }), ['act', 'fork']],
  [
    'a settle of nothing',
    withAct({ do: 'settle', fork: 'a:1', variants: [] }),
    ['act', 'variants'],
  ],
  [
    'a settle of no digest',
    withAct({ do: 'settle', fork: 'a:1', variants: [7] }),
    ['act', 'variants'],
  ],
  [
    'a further field too large',
    { ...entryOf(), more: 'a'.repeat(200_000) },
    [],
    '"a larger entry"',
  ],
  ['a strange act too large', withAct({ do: 'stamp', ink: 'a'.repeat(200_000) }), []],
]

describe('an entry from outside', () => {
  it.each(WRONG)('with %s is refused, with where and what', (_, value, path, is) => {
    const read = readEntry(value, 1)
    expect(read).toMatchObject({ ok: false, failure: { path } })
    if (read.ok) return
    expect(read.failure.may).not.toBe('')
    expect(read.failure.is.length).toBeLessThan(200)
    if (is !== undefined) expect(read.failure.is).toBe(is)
  })

  it.each([
    ['a value', `{"do":"set","path":["x"],"value":${'['.repeat(DEEP)}${']'.repeat(DEEP)}}`],
    ['objects', `{"do":"set","path":["x"],"value":${'{"a":'.repeat(DEEP)}1${'}'.repeat(DEEP)}}`],
    ['a strange act', `{"do":"stamp","ink":${'['.repeat(DEEP)}${']'.repeat(DEEP)}}`],
    ['without an end', '['.repeat(DEEP)],
  ])('nested a million deep is refused and breaks nothing: %s', (_, act) => {
    const text = `{"entries":[{"act":${act}`
    const whole = `${text},"at":"${HAND.at}","author":"Anna","id":"a:1","schema":"entry/1","seen":{}}],"schema":"wire/1"}`
    for (const each of [whole, text]) {
      const read = fromWire(each)
      expect(!read.ok && read.failure.path.slice(0, 3)).toEqual(['entries', 0, 'act'])
      expect(!read.ok && read.failure.is).toBe('more than 50 levels')
    }
  })

  it('as deep as it may be goes through every form, and not one level deeper', () => {
    const log = logOf('a', set(['x'], nested(VALUE_DEPTH_MAX)))
    must(fromWire(toWire(log.entries)))
    expect(log.append(set(['x'], nested(VALUE_DEPTH_MAX + 1)), HAND).ok).toBe(false)
    const strange = (depth: number) => withAct({ do: 'stamp', ink: nested(depth) })
    for (const [depth, may] of [
      [ENTRY_DEPTH_MAX - 2, true],
      [ENTRY_DEPTH_MAX - 1, false],
    ] as const) {
      expect(readEntry(strange(depth), 1).ok).toBe(may)
      expect(fromStored(toStored(strange(depth))).ok).toBe(may)
      expect(fromWire(toWire([strange(depth)])).ok).toBe(may)
      const file = { job: 'j', entries: [strange(depth)], photos: [], survey: '' }
      expect(readJobFile(writeJobFile(file)).ok).toBe(may)
    }
  })

  it('nested in memory a million deep is refused', () => {
    const act = { do: 'set', path: ['x'], value: nested(DEEP) } as Act
    expect(readEntry(withAct(act), 1)).toMatchObject({
      ok: false,
      failure: { is: 'more than 48 levels' },
    })
    expect(JobLog.empty('a').append(act, HAND)).toMatchObject({ ok: false })
  })

  it('with keys that mean something to JavaScript is refused, and changes no object', () => {
    const text = toWire([entryOf({ act: set(['x'], { proto: 1 }) })]).replace(
      '"proto"',
      '"__proto__"',
    )
    expect(fromWire(text)).toMatchObject({
      ok: false,
      failure: { path: ['entries', 0, 'act', 'value'], is: 'a key "__proto__"' },
    })
    const log = logOf(
      'a',
      set(['constructor', 'prototype', 'polluted'], true),
      set(['toString'], 'x'),
    )
    expect(documentOf(log.state, [])).toEqual({
      constructor: { prototype: { polluted: true } },
      toString: 'x',
    })
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined()
  })

  it('of a store named like something of every object counts like any other', () => {
    const log = JobLog.empty('constructor')
    write(log, set(['x'], 1), set(['x'], 2))
    log.merge([entryOf({ id: 'valueOf:2', seen: { toString: 1 } })])
    expect(log.state.gaps).toEqual([
      { store: 'toString', from: 1, to: 1 },
      { store: 'valueOf', from: 1, to: 1 },
    ])
  })

  it('is folded alike in any order, however great its counters', () => {
    const most = Number.MAX_SAFE_INTEGER
    const seen = (...stores: string[]) => Object.fromEntries(stores.map(each => [each, most]))
    const entries = [
      entryOf({ id: `a:${most}`, seen: seen('b', 'c', 'd'), act: add(['l', 'p']) }),
      entryOf({ id: `b:${most}`, seen: seen('d', 'c', 'e'), act: add(['l', 'q']) }),
      entryOf({ id: 'c:1', seen: { a: most, z: 1 }, act: add(['l', 'r']) }),
    ]
    const one = stateText(JobLog.open('x', entries).state)
    expect(stateText(JobLog.open('x', entries.toReversed()).state)).toBe(one)
  })

  it('has one rank, whatever the order in which it names stores', () => {
    const seen = [
      ['b', Number.MAX_SAFE_INTEGER],
      ['c', 1],
      ['d', 1],
    ] as const
    const [one, other] = [seen, seen.toReversed()].map(each =>
      stateText(JobLog.open('x', [entryOf({ seen: Object.fromEntries(each) })]).state),
    )
    expect(one).toBe(other)
  })
})

describe('a text from outside', () => {
  it.each<[string, string, readonly (string | number)[], string]>([
    ['an empty text', '', [], 'the end of the text at character 0'],
    ['spaces', '{ }', [], '" }" at character 1'],
    ['a key twice', '{"entries":[],"entries":[]}', [], 'the key "entries" twice'],
    [
      'a key twice inside',
      '{"entries":[{"a":{"b":1,"b":2}}]}',
      ['entries', 0, 'a'],
      'the key "b" twice',
    ],
    ['keys out of order', '{"b":1,"a":2}', [], 'the key "a" after "b"'],
    ['a number too great', '{"a":[1e400]}', ['a', 0], 'Infinity'],
    ['a number of many digits', '{"a":12345678901234567890}', ['a'], '12345678901234567890'],
    ['a number with a 0 behind', '[1,2.50]', [1], '2.50'],
    ['a 0 below 0', '[-0]', [0], '-0'],
    ['a number with a 0 before', '[01]', [0], '"1]" at character 2'],
    ['an escape that is not needed', '["\\u0061"]', [0], '"\\u0061"'],
    ['an escape that is none', '["\\x"]', [0], '"\\"\\\\x\\"]" at character 1'],
    ['a raw control character', '["\n"]', [0], '"\\"\\n\\"]" at character 1'],
    ['a text without end', '["abc', [0], '"\\"abc" at character 1'],
    ['a comma too many', '[1,]', [1], '"]" at character 3'],
    ['a key without quotes', '{a:1}', [], '"a:1}" at character 1'],
    ['no colon', '{"a" 1}', ['a'], '" 1}" at character 4'],
    ['something behind', '[]x', [], '"x" at character 2'],
    ['a list closed as an object', '[1}', [0], '"}" at character 2'],
    ['an object closed as a list', '{"a":1]', ['a'], '"]" at character 6'],
    ['a word that is none', '[nul]', [0], '"nul]" at character 1'],
    ['a mark of byte order', '\ufeff[]', [], '"\ufeff[]" at character 0'],
  ])('with %s is refused, with where and what', (_, text, path, is) => {
    for (const read of [fromWire(text), readJobFile(text)])
      expect(read).toMatchObject({ ok: false, failure: { path, is } })
  })

  it('that is no text is refused', () => {
    for (const text of [undefined, null, 7, {}, [], new Uint8Array(4)])
      expect(fromWire(text)).toMatchObject({ ok: false, failure: { may: 'a text' } })
  })

  it('with a slip in it is refused with where, never with a shrug, or is another canonical text', () => {
    const text = toWire([
      entryOf({ act: set(['x'], { a: [1, -2.5, 'é"\\', null, true, []], b: {} }) }),
    ])
    const slip = fc.tuple(
      fc.nat({ max: text.length }),
      fc.nat({ max: 2 }),
      fc.constantFrom(
        '',
        '0',
        '"',
        '\\',
        '{',
        '}',
        '[',
        ']',
        ',',
        ':',
        ' ',
        '-',
        '.',
        'e',
        'é',
        '\n',
      ),
    )
    fc.assert(
      fc.property(slip, ([at, gone, sign]) => {
        const other = text.slice(0, at) + sign + text.slice(at + gone)
        const read = fromWire(other)
        if (read.ok) expect(toWire(must(read))).toBe(other)
        else {
          expect(read.failure.is).not.toBe('JSON')
          expect(read.failure.is.length).toBeLessThan(300)
        }
      }),
      { numRuns: 5000, seed: 20_310_504 },
    )
  })

  it('of any signs at all is explained', () => {
    const signs = fc.string({
      unit: fc.constantFrom(...'{}[]",:0123.eE+-truefalsn\\u \n'),
      maxLength: 40,
    })
    const isCanonical = (text: string): boolean => {
      try {
        return canonical(JSON.parse(text)) === text
      } catch {
        return false
      }
    }
    fc.assert(
      fc.property(signs, text => {
        if (!isCanonical(text)) expect(explainJson(text, 48).is).not.toBe('JSON')
      }),
      { numRuns: 20_000, seed: 20_310_504 },
    )
  })
})

describe('what a peer says it has', () => {
  it('is read like what an entry has seen', () => {
    expect(readSeen({ a: 1 })).toEqual({ ok: true, value: { a: 1 } })
    expect(readSeen({ a: 0 })).toMatchObject({ ok: false, failure: { path: ['a'] } })
    expect(readSeen('x')).toMatchObject({ ok: false })
  })
})

describe('who writes', () => {
  it('is refused without a name or a time, and nothing is written', () => {
    const log = JobLog.empty('a')
    for (const [hand, path] of [
      [{ ...HAND, author: '' }, ['author']],
      [{ ...HAND, at: 'now' }, ['at']],
    ] as const)
      expect(log.append(set(['x'], 1), hand)).toMatchObject({ ok: false, failure: { path } })
    expect(log.append({ do: 'stamp' } as never, HAND)).toMatchObject({ failure: { path: ['do'] } })
    expect(log.append([], HAND)).toEqual({ ok: true, value: [] })
    expect(log.size).toBe(0)
  })
})
