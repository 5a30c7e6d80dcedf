import type { Landing } from '@tubwright/core'
import { blocks, DIMENSIONS, landing, parseQuantity } from '@tubwright/core'
import type { Read } from '@tubwright/formats'
import {
  readControlBox,
  readLanding,
  readSupplyDevice,
  readSurvey,
  readYaml,
  writeLanding,
} from '@tubwright/formats'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { stringify } from 'yaml'
import { BOXES, CATALOGUE, DEVICES, demo, TUBS } from './support/demo.ts'

const READERS: Readonly<Record<string, (text: string) => Read<unknown>>> = {
  survey: text => readSurvey('f', text, CATALOGUE),
  box: text => readControlBox('f', text),
  device: text => readSupplyDevice('f', text),
  landing: text => readLanding('f', text),
  yaml: text => readYaml('f', text, landing),
}

/** A value just where nothing blocks; every diagnostic whole, and inside the text. */
function isWellTold({ value, diagnostics }: Read<unknown>, text: string): void {
  expect(value === undefined).toBe(diagnostics.some(blocks))
  const lines = text.split('\n').length
  for (const { file, line, column, path, is, may, code } of diagnostics) {
    expect({ file, code, is, may }).toEqual({
      file: 'f',
      code: expect.stringMatching(/./u),
      is: expect.stringMatching(/./u),
      may: expect.stringMatching(/./u),
    })
    expect(Array.isArray(path)).toBe(true)
    expect(Number.isInteger(line) && line >= 1 && line <= lines + 1).toBe(true)
    expect(Number.isInteger(column) && column >= 1).toBe(true)
    expect(is.length).toBeLessThanOrEqual(800)
  }
}

const SIGNS = [...'[]{}:,-?&*!|>\'"%@`#~<=. \n\t\r\0\u001b\ufeffaZ19é灯\ud83d\ude00']

const nasty = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.string({ unit: 'grapheme', maxLength: 200 }),
  fc.string({ unit: fc.constantFrom(...SIGNS), maxLength: 300 }),
  fc
    .array(
      fc.constantFrom('- ', '? ', ': ', '&a ', '*a', '<<: ', 'a: ', '\n', '  ', '!t ', '[', ']'),
      {
        maxLength: 200,
      },
    )
    .map(parts => parts.join('')),
)

/** One change of a text by somebody whose hand slips. */
const slip = (text: string) =>
  fc.record({
    how: fc.constantFrom('drop', 'double', 'swap', 'put', 'drop line', 'double line', 'indent'),
    at: fc.nat(text.length - 1),
    sign: fc.constantFrom(...SIGNS),
  })

function slipped(text: string, { how, at, sign }: { how: string; at: number; sign: string }) {
  const here = at % Math.max(1, text.length)
  const start = text.lastIndexOf('\n', here) + 1
  const stop = text.indexOf('\n', here) + 1 || text.length
  switch (how) {
    case 'drop':
      return text.slice(0, here) + text.slice(here + 1)
    case 'double':
      return text.slice(0, here) + text.slice(here, here + 1) + text.slice(here)
    case 'swap':
      return text.slice(0, here) + sign + text.slice(here + 1)
    case 'put':
      return text.slice(0, here) + sign + text.slice(here)
    case 'drop line':
      return text.slice(0, start) + text.slice(stop)
    case 'double line':
      return text.slice(0, stop) + text.slice(start, stop) + text.slice(stop)
    default:
      return `${text.slice(0, start)} ${text.slice(start)}`
  }
}

const mutated = (text: string) =>
  fc
    .array(slip(text), { minLength: 1, maxLength: 4 })
    .map(slips => slips.reduce((changed, each) => slipped(changed, each), text))

const LANDING = `schema: landing/1
survey: tub
box: box-1
ends: { run.leg1@gf: gf.L1, pump.hot: loose }
jumpers: { J1: out }
straps: { pump: v230 }
settings: { profile: normal, currentLimit: 40 A }
adapters: { pump: Pump }
`

describe('no text makes a reader throw', () => {
  it.each(Object.entries(READERS))('%s: arbitrary text', (_, read) => {
    fc.assert(
      fc.property(nasty, text => isWellTold(read(text), text)),
      { seed: 7, numRuns: 400 },
    )
  })

  it.each([
    ['survey', demo(TUBS, 'strapped-115'), 120],
    ['box', demo(BOXES, 'plover-1'), 120],
    ['device', demo(DEVICES, 'ground-fault-breaker-2'), 300],
    ['landing', LANDING, 600],
  ] as const)('%s: a valid file with slips', (name, text, numRuns) => {
    const read = READERS[name]
    expect(read?.(text).diagnostics).toEqual([])
    fc.assert(
      fc.property(mutated(text), changed => read && isWellTold(read(changed), changed)),
      { seed: 11, numRuns },
    )
  })

  it.each(Object.entries(READERS))('%s: any value as YAML and as JSON', (_, read) => {
    const schemas = fc.constantFrom('survey/1', 'control-box/1', 'supply-device/1', 'landing/1')
    const keys = fc.constantFrom('id', 'supply', 'loads', 'board', 'ends', 'jumpers', '__proto__')
    const value = fc.oneof(
      fc.jsonValue({ maxDepth: 5 }),
      fc
        .record({ schema: schemas, rest: fc.dictionary(keys, fc.jsonValue({ maxDepth: 3 })) })
        .map(({ schema, rest }) => ({ schema, ...rest })),
    )
    fc.assert(
      fc.property(value, each => {
        for (const text of [stringify(each), JSON.stringify(each)]) isWellTold(read(text), text)
      }),
      { seed: 13, numRuns: 150 },
    )
  })
})

const id = fc.stringMatching(/^[A-Za-z][A-Za-z0-9-]{0,39}$/u)
const printable = (most: number) =>
  fc
    .string({ unit: 'grapheme', minLength: 1, maxLength: most })
    .filter(text => text.length <= most && text !== '__proto__')
const amps = fc
  .integer({ min: 1, max: 1_000_000 })
  .chain(milli => fc.constantFrom(`${milli / 1000} A`, `${milli} mA`))

const landings: fc.Arbitrary<Landing> = fc
  .record({
    survey: id,
    box: id,
    note: fc.option(
      fc
        .array(fc.string({ unit: 'grapheme', maxLength: 60 }), { maxLength: 5 })
        .map(lines => lines.join('\n').slice(0, 400))
        .filter(text => !/\p{Cs}/u.test(text)),
      { nil: undefined },
    ),
    ends: fc.dictionary(printable(90), printable(90)),
    jumpers: fc.dictionary(id, id),
    straps: fc.dictionary(id, id),
    profile: id,
    limit: amps,
    adapters: fc.dictionary(id, printable(80)),
  })
  .map(({ note, profile, limit, ...rest }) =>
    landing.parse({
      schema: 'landing/1',
      ...rest,
      ...(note === undefined ? {} : { note }),
      settings: { profile, currentLimit: limit },
    }),
  )

describe('a landing', () => {
  it('reads back as it was written', () => {
    fc.assert(
      fc.property(landings, each => {
        const { value, diagnostics } = readLanding('f', writeLanding(each))
        expect(diagnostics).toEqual([])
        expect(value).toEqual(each)
      }),
      { seed: 17, numRuns: 400 },
    )
  })

  it('is written the same after it was read', () => {
    fc.assert(
      fc.property(landings, each => {
        const text = writeLanding(each)
        const { value } = readLanding('f', text)
        expect(value && writeLanding(value)).toBe(text)
      }),
      { seed: 19, numRuns: 100 },
    )
  })
})

const units = Object.keys(DIMENSIONS) as (keyof typeof DIMENSIONS)[]
const spelled = fc.constantFrom(...units).chain(unit => {
  const { from, to, spellings } = DIMENSIONS[unit]
  const all: readonly (readonly [string, { factor: number; offset?: number }])[] =
    Object.entries(spellings)
  return fc
    .record({
      spelling: fc.constantFrom(...all),
      si: fc.double({ min: from, max: to, noNaN: true }),
      gap: fc.constantFrom('', ' ', '  '),
    })
    .map(({ spelling: [name, { factor, offset = 0 }], si, gap }) => ({
      unit,
      si,
      size: Math.max(Math.abs(si), Math.abs(offset)),
      text: `${(si - offset) / factor}${gap}${name}`,
    }))
})

describe('a quantity', () => {
  it('is never a surprise, whatever the text', () => {
    fc.assert(
      fc.property(fc.constantFrom(...units), nasty, (unit, text) => {
        const read = parseQuantity(unit, text)
        if (read.ok) expect(Number.isFinite(read.value.si)).toBe(true)
        else expect(read.failure.may).not.toBe('')
      }),
      { seed: 23, numRuns: 1000 },
    )
  })

  it('means the same in each of its spellings', () => {
    fc.assert(
      fc.property(spelled, ({ unit, si, size, text }) => {
        const read = parseQuantity(unit, text)
        // At the very ends of a range, rounding may lie outside.
        if (read.ok) expect(Math.abs(read.value.si - si)).toBeLessThanOrEqual(1e-12 * size + 1e-300)
        else expect(read.failure.reason).toBe('out-of-range')
      }),
      { seed: 29, numRuns: 1000 },
    )
  })

  it('reads its own text again as the same', () => {
    fc.assert(
      fc.property(spelled, ({ unit, text }) => {
        const read = parseQuantity(unit, text)
        if (read.ok) expect(parseQuantity(unit, read.value.text)).toEqual(read)
      }),
      { seed: 31, numRuns: 300 },
    )
  })

  it('is refused without its unit, whatever the number', () => {
    fc.assert(
      fc.property(fc.constantFrom(...units), fc.double({ noNaN: true }), (unit, number) => {
        expect(parseQuantity(unit, String(number)).ok).toBe(false)
      }),
      { seed: 37, numRuns: 300 },
    )
  })
})
