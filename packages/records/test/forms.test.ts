import type { Entry, JobFile, Json, JsonObject } from '@tubwright/records'
import {
  canonical,
  digestOf,
  fromStored,
  fromWire,
  isSame,
  JobLog,
  mergeJobFiles,
  must,
  readEntry,
  readJobFile,
  stateText,
  toStored,
  toWire,
  writeJobFile,
} from '@tubwright/records'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { anyEntries } from './support/arbitrary-entries.ts'
import { copyOf, entryOf, logOf, meet, set, write } from './support/logs.ts'
import { randomOf } from './support/random.ts'

const RUNS = { numRuns: 500, seed: 20_310_504 }

const anyJson = fc
  .jsonValue({ maxDepth: 4 })
  .filter(value => !JSON.stringify(value).includes('__proto__'))

/** Any entry, with further fields that a newer version may write. */
const anyEntry: fc.Arbitrary<Entry> = fc
  .tuple(
    anyEntries,
    fc.dictionary(fc.string({ unit: 'binary', maxLength: 8 }), anyJson, { maxKeys: 3 }),
  )
  .map(([[entry], more]) => ({ ...more, ...(entry as Entry) }))
  .filter(entry => !Object.hasOwn(entry, '__proto__'))

describe('canonical text', () => {
  it('sorts keys by code units, those that look like numbers among them', () => {
    expect(canonical({ b: 1, a: { 9: 1, 10: 2 }, B: [2, { d: 1, c: 2 }] })).toBe(
      '{"B":[2,{"c":2,"d":1}],"a":{"10":2,"9":1},"b":1}',
    )
  })

  it('is the same for the same value, whatever the order of its keys, and reads back equal', () => {
    const reversed = (value: unknown): unknown => {
      if (typeof value !== 'object' || value === null) return value
      if (Array.isArray(value)) return value.map(reversed)
      return Object.fromEntries(
        Object.entries(value)
          .reverse()
          .map(([key, each]) => [key, reversed(each)]),
      )
    }
    fc.assert(
      fc.property(anyJson, value => {
        const text = canonical(value as never)
        expect(canonical(reversed(value) as never)).toBe(text)
        expect(canonical(JSON.parse(text))).toBe(text)
        expect(new TextDecoder().decode(new TextEncoder().encode(text))).toBe(text)
      }),
      RUNS,
    )
  })

  it('is equal just where the values are', () => {
    fc.assert(
      fc.property(anyJson, anyJson, (a, b) => {
        expect(isSame(a as never, b as never)).toBe(canonical(a as never) === canonical(b as never))
      }),
      RUNS,
    )
    expect(isSame(0, -0)).toBe(true)
    expect(isSame({ a: null }, { b: null })).toBe(false)
    expect(isSame([], {})).toBe(false)
  })

  it('has a digest that a slip changes', () => {
    const text = canonical({ a: [1, 2, 3], b: 'text' })
    const digests = new Set([digestOf(text)])
    for (let index = 0; index < text.length; index++)
      digests.add(digestOf(`${text.slice(0, index)}#${text.slice(index + 1)}`))
    expect(digests.size).toBe(text.length + 1)
    expect(digestOf('')).toMatch(/^[0-9a-f]{16}$/u)
  })

  it('has digests of 64 bits: none double among 400,000 texts, where 32 bits would give many', () => {
    const random = randomOf(20_310_504)
    const digests = new Set<string>()
    for (let each = 0; each < 400_000; each++)
      digests.add(digestOf(`${each} ${random.below(2 ** 31)} ${random.below(2 ** 31)}`))
    expect(digests.size).toBe(400_000)
    for (const [from, to] of [
      [0, 8],
      [8, 16],
    ])
      expect(new Set([...digests].map(each => each.slice(from, to))).size).toBeLessThan(400_000)
  })
})

describe('the stored form', () => {
  it('and back is the same entry, and forth again the same bytes', () => {
    fc.assert(
      fc.property(anyEntry, entry => {
        const stored = toStored(entry)
        const back = must(fromStored(stored))
        expect(isSame(back as never, entry as never)).toBe(true)
        expect(toStored(back)).toEqual(stored)
      }),
      RUNS,
    )
  })

  it('tells two entries of one id apart by its digest', () => {
    const [one, other] = [toStored(entryOf()), toStored(entryOf({ author: 'Ben' }))]
    expect(one.id).toBe(other.id)
    expect(one.digest).not.toBe(other.digest)
  })

  it('is refused where its parts do not belong together', () => {
    const stored = toStored(entryOf())
    expect(fromStored({ ...stored, id: 'a:2' })).toMatchObject({ failure: { path: ['id'] } })
    expect(fromStored({ ...stored, digest: '0' })).toMatchObject({ failure: { path: ['digest'] } })
    expect(fromStored({ ...stored, text: stored.text.replace('Anna', 'Hanna') })).toMatchObject({
      failure: { path: ['digest'] },
    })
    expect(fromStored({ ...stored, text: stored.text.slice(0, -1) })).toMatchObject({
      failure: {
        path: ['text', 'seen'],
        is: `the end of the text at character ${stored.text.length - 1}`,
      },
    })
    expect(fromStored(undefined)).toMatchObject({ failure: { is: 'nothing' } })
    expect(fromStored({ ...stored, text: 7 })).toMatchObject({ failure: { path: ['text'] } })
  })
})

describe('the wire form', () => {
  it('and back is the same entries, and forth again the same bytes', () => {
    fc.assert(
      fc.property(fc.array(anyEntry, { maxLength: 4 }), entries => {
        const text = toWire(entries)
        const back = must(fromWire(text))
        expect(isSame(back as never, entries as never)).toBe(true)
        expect(toWire(back)).toBe(text)
      }),
      RUNS,
    )
  })

  it('is refused whole where one entry is wrong', () => {
    const text = toWire([entryOf(), entryOf({ id: 'a:0' }), entryOf({ id: 'a:2' })])
    expect(fromWire(text)).toMatchObject({ ok: false, failure: { path: ['entries', 1, 'id'] } })
  })

  it('is refused where it is another thing', () => {
    for (const [text, path] of [
      ['[]', []],
      ['{"entries":[]}', ['schema']],
      ['{"entries":[],"schema":"wire/2"}', ['schema']],
      ['{"entries":{},"schema":"wire/1"}', ['entries']],
      ['{"schema":"wire/1"}', ['entries']],
      ['{"entries":[],"more":1,"schema":"wire/1"}', ['more']],
    ] as const)
      expect(fromWire(text)).toMatchObject({ ok: false, failure: { path } })
  })
})

const PHOTO = { hash: 'h1', type: 'image/jpeg', bytes: 'AAEC' }
const OTHER = { hash: 'h0', type: 'image/png', bytes: 'AAE=' }

const fileOf = (log: JobLog, more: Partial<JobFile> = {}): JobFile => ({
  job: 'job-1',
  entries: log.entries,
  photos: [PHOTO, OTHER],
  survey: 'schema: survey/1\n',
  ...more,
})

/** A JSON value with one place in it changed. */
function changedAt(
  value: Json,
  path: readonly (string | number)[],
  change: (old: Json) => Json,
): Json {
  const [step, ...rest] = path
  if (step === undefined) return change(value)
  const copy = (Array.isArray(value) ? [...value] : { ...(value as JsonObject) }) as Record<
    string,
    Json
  >
  copy[step] = changedAt(copy[step] as Json, rest, change)
  return copy
}

const surveyOf = (entries: readonly Entry[]): string => `entries: ${entries.length}\n`

describe('the file of a job', () => {
  it('reads back whole, and writes again the same bytes', () => {
    fc.assert(
      fc.property(anyEntries, entries => {
        const text = writeJobFile(fileOf(JobLog.open('b', entries)))
        const file = must(readJobFile(text))
        expect(writeJobFile(file)).toBe(text)
        expect(stateText(JobLog.open('c', file.entries).state)).toBe(
          stateText(JobLog.open('d', entries).state),
        )
      }),
      RUNS,
    )
  })

  it('has one text, however its parts are given', () => {
    const log = logOf('a', set(['x'], 1), set(['y'], 2))
    const given = fileOf(log, { entries: log.entries.toReversed(), photos: [OTHER, PHOTO] })
    expect(writeJobFile(given)).toBe(writeJobFile(fileOf(log)))
    expect(writeJobFile(fileOf(log)).startsWith('{"entries":[')).toBe(true)
  })

  it('cut off anywhere is refused, with where it ends', () => {
    const text = writeJobFile(fileOf(logOf('a', set(['x'], 'é'))))
    for (let length = 0; length < text.length; length++) {
      const read = readJobFile(text.slice(0, length))
      expect(read.ok).toBe(false)
      expect(!read.ok && read.failure.is).toContain('at character')
    }
  })

  it('with any one sign changed is refused', () => {
    const text = writeJobFile(fileOf(logOf('a', set(['x'], 1), set(['y'], '2'))))
    for (let index = 0; index < text.length; index++)
      for (const sign of ['0', 'z', '"', '}', ' ']) {
        if (text[index] === sign) continue
        const read = readJobFile(text.slice(0, index) + sign + text.slice(index + 1))
        expect(read.ok, `${sign} at ${index}`).toBe(false)
      }
  })

  it('edited is refused, with the part that was', () => {
    const text = writeJobFile(fileOf(logOf('a', set(['x'], 'one'), set(['y'], 'two'))))
    const edits = [
      ['"value":"two"', '"value":"six"', ['entries', 1]],
      ['survey/1', 'survey/2', ['survey']],
      ['"job":"job-1"', '"job":"job-2"', ['job']],
      ['AAEC', 'AAED', ['photos', 1]],
    ] as const
    for (const [was, is, path] of edits)
      expect(readJobFile(text.replace(was, is))).toMatchObject({
        ok: false,
        failure: { path, is: expect.stringContaining('changed') },
      })
  })

  it('with an entry or a photo taken out is refused', () => {
    const whole = JSON.parse(writeJobFile(fileOf(logOf('a', set(['x'], 1), set(['y'], 2)))))
    const without = (name: 'entries' | 'photos') =>
      readJobFile(canonical({ ...whole, [name]: whole[name].slice(1) }))
    expect(without('entries')).toMatchObject({
      failure: { path: ['entries'], is: '1 of them', may: '2 of them' },
    })
    expect(without('photos')).toMatchObject({ failure: { path: ['photos'] } })
  })

  /** A file with one place changed whose sums fit what is in it: made by somebody who knows how. */
  const made = (path: readonly (string | number)[], change: (old: Json) => Json): string => {
    const file = JSON.parse(writeJobFile(fileOf(logOf('a', set(['x'], 1), set(['y'], 2)))))
    const changed = changedAt(file, path, change) as Record<string, Json>
    const sum = (value: Json | undefined): Json => digestOf(canonical(value ?? null))
    const sums = (list: Json | undefined): Json => (Array.isArray(list) ? list.map(sum) : [])
    const { job, survey, entries, photos } = changed
    return canonical({
      ...changed,
      sums: { job: sum(job), survey: sum(survey), entries: sums(entries), photos: sums(photos) },
    })
  }

  const to = (value: Json) => (): Json => value
  const reversed = (list: Json): Json => (list as Json[]).toReversed()
  const doubled = (list: Json): Json => [...(list as Json[]), (list as Json[]).at(-1) ?? null]
  const without =
    (key: string) =>
    (value: Json): Json =>
      Object.fromEntries(Object.entries(value as JsonObject).filter(([each]) => each !== key))
  const withMore = (value: Json): Json => ({ ...(value as JsonObject), more: 1 })

  it.each<
    [string, readonly (string | number)[], (old: Json) => Json, readonly (string | number)[]]
  >([
    ['another schema', ['schema'], to('job-file/2'), ['schema']],
    ['a job without a name', ['job'], to(''), ['job']],
    ['a job of another kind', ['job'], to(7), ['job']],
    ['entries that are no list', ['entries'], to({}), ['entries']],
    ['an entry that is none', ['entries', 1], to(null), ['entries', 1]],
    ['a wrong entry', ['entries', 1, 'seen'], to({ a: 9 }), ['entries', 1, 'seen', 'a']],
    ['entries out of order', ['entries'], reversed, ['entries', 1]],
    ['an entry twice', ['entries'], doubled, ['entries', 2]],
    ['photos out of order', ['photos'], reversed, ['photos', 1]],
    ['a photo twice', ['photos'], doubled, ['photos', 2]],
    ['a photo without bytes', ['photos', 0], without('bytes'), ['photos', 0, 'bytes']],
    ['a photo that is no base64', ['photos', 0, 'bytes'], to('AA'), ['photos', 0, 'bytes']],
    ['a photo of other signs', ['photos', 0, 'bytes'], to('<<>>'), ['photos', 0, 'bytes']],
    ['a photo padded inside', ['photos', 0, 'bytes'], to('A=EC'), ['photos', 0, 'bytes']],
    ['a photo of no type', ['photos', 0, 'type'], to('text'), ['photos', 0, 'type']],
    ['a photo of another name', ['photos', 0, 'hash'], to('../x'), ['photos', 0, 'hash']],
    ['a further field of a photo', ['photos', 0], withMore, ['photos', 0, 'more']],
    ['a survey that is no text', ['survey'], to({}), ['survey']],
    ['a further field', [], withMore, ['more']],
  ])('made by hand with %s is refused', (_, path, change, at) => {
    expect(readJobFile(made([], old => old)).ok).toBe(true)
    expect(readJobFile(made(path, change))).toMatchObject({ ok: false, failure: { path: at } })
  })

  it('without its sums is refused', () => {
    const { sums: _sums, ...rest } = JSON.parse(writeJobFile(fileOf(logOf('a'))))
    expect(readJobFile(canonical(rest))).toMatchObject({
      failure: { path: ['sums'], is: 'nothing' },
    })
  })
})

describe('two files of one job', () => {
  const a = logOf('a', set(['x'], 1))
  const b = copyOf(a, 'b')
  write(a, set(['x'], 2))
  write(b, set(['x'], 3))
  const fileA = fileOf(a, { photos: [PHOTO] })
  const fileB = fileOf(b, { photos: [OTHER, PHOTO] })
  const both = copyOf(a, 'c')
  meet(both, b)

  it('merge to all entries and photos of both, the survey made anew', () => {
    const merged = must(mergeJobFiles(fileA, fileB, surveyOf))
    expect(merged).toEqual({
      job: 'job-1',
      entries: both.entries,
      photos: [OTHER, PHOTO],
      survey: 'entries: 3\n',
    })
    expect(writeJobFile(must(mergeJobFiles(fileB, fileA, surveyOf)))).toBe(writeJobFile(merged))
    expect(writeJobFile(must(mergeJobFiles(merged, fileA, surveyOf)))).toBe(writeJobFile(merged))
  })

  it('keep both entries of a forked id', () => {
    const twin = fileOf(logOf('a', set(['x'], 9)))
    expect(must(mergeJobFiles(fileA, twin, surveyOf)).entries).toHaveLength(3)
  })

  it('are refused where they are of two jobs', () => {
    expect(mergeJobFiles(fileA, { ...fileB, job: 'job-2' }, surveyOf)).toEqual({
      ok: false,
      failure: { path: ['job'], is: '"job-2"', may: '"job-1"' },
    })
  })

  it('are refused where one hash names two photos', () => {
    const other = { ...fileB, photos: [{ ...PHOTO, bytes: 'AAED' }] }
    expect(mergeJobFiles(fileA, other, surveyOf)).toMatchObject({
      ok: false,
      failure: { path: ['photos', 0] },
    })
  })
})

describe('any few entries', () => {
  it('are entries: what the arbitrary makes is what the reader takes', () => {
    fc.assert(
      fc.property(anyEntries, entries => {
        for (const each of entries) must(readEntry(each, 1))
      }),
      RUNS,
    )
  })
})
