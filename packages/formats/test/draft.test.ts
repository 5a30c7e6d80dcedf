import { readdirSync, readFileSync } from 'node:fs'
import { survey, UNKNOWN_REASONS } from '@tubwright/core'
import {
  byId,
  byPosition,
  fieldAt,
  fieldsBelow,
  readDraft,
  readSupplyDevice,
  readSurvey,
  valueAt,
  writeSurvey,
} from '@tubwright/formats'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'

const data = new URL('../../catalog/data/', import.meta.url)
const textsOf = (folder: string): readonly (readonly [string, string])[] =>
  readdirSync(new URL(folder, data))
    .sort()
    .map(file => [file, readFileSync(new URL(`${folder}/${file}`, data), 'utf8')] as const)

const devices = new Map(
  textsOf('devices').flatMap(([file, text]) => {
    const { value } = readSupplyDevice(file, text)
    return value ? [[value.id, value] as const] : []
  }),
)
const tubs = textsOf('tubs')

type Plain = Record<string, unknown>

/** The document with a value at a path, everything else the same. */
function withValue(document: unknown, path: readonly (string | number)[], value: unknown): unknown {
  const [key, ...rest] = byPosition(document, path)
  if (key === undefined) return value
  if (Array.isArray(document))
    return document.map((each, index) => (index === key ? withValue(each, rest, value) : each))
  const own = (document ?? {}) as Plain
  return { ...own, [key]: withValue(own[key], rest, value) }
}

describe.each(tubs)('%s', (file, text) => {
  const document = parse(text) as Plain

  test('as a document it is the survey that its text is', () => {
    const draft = readDraft(document, devices)
    expect(draft.open).toEqual([])
    expect(draft.survey).toEqual(readSurvey(file, text, devices).value)
  })

  test('written and read again it is the same, whatever the order of its keys', () => {
    const turned = Object.fromEntries(Object.entries(document).reverse())
    expect(writeSurvey(turned)).toBe(writeSurvey(document))
    expect(parse(writeSurvey(document))).toEqual(document)
    expect(readSurvey(file, writeSurvey(document), devices).value).toEqual(
      readSurvey(file, text, devices).value,
    )
  })

  test('paths by id and by position lead to the same value', () => {
    for (const path of fieldsBelow(survey, document)) {
      const at = byPosition(document, path)
      expect(byId(document, at)).toEqual(path)
      expect(valueAt(document, at)).toEqual(valueAt(document, path))
    }
  })

  test('every field takes "unknown" with its reason, and what rests on it is told', () => {
    const paths = fieldsBelow(survey, document)
    expect(paths.length).toBeGreaterThan(20)
    for (const [index, path] of paths.entries()) {
      const reason = UNKNOWN_REASONS[index % UNKNOWN_REASONS.length] ?? 'not visible'
      const draft = readDraft(withValue(document, path, { unknown: reason }), devices)
      const field = fieldAt(survey, document, path)
      const where = path.join('.')
      expect(field, where).toBeDefined()
      if (draft.survey) {
        // Either the core itself knows what "unknown" is, or nothing at all is taken in its place.
        const isAbsent = !field?.isRequired && !field?.isEntry && field?.usual === undefined
        expect(
          field?.form.kind === 'known' || isAbsent || where.endsWith('powerFactor'),
          where,
        ).toBe(true)
      } else expect(draft.open.length + draft.diagnostics.length, where).toBeGreaterThan(0)
      const open = draft.open.find(each => each.path.join('.') === where)
      if (open) expect(open.unknown, where).toBe(reason)
    }
  })
})

describe('a draft', () => {
  const draft = (some: Plain) =>
    readDraft({ schema: 'survey/1', id: 'tub', title: 'T', ...some }, devices)

  test('of nothing says everything that is open, and is no survey', () => {
    const { survey: made, open } = draft({})
    expect(made).toBeUndefined()
    expect(open.map(each => each.path.join('.'))).toEqual(
      expect.arrayContaining(['region', 'supply', 'loads']),
    )
  })

  test('keeps why something is not known', () => {
    const { open } = draft({ region: { unknown: 'owner unsure' } })
    expect(open.find(each => each.path.join() === 'region')?.unknown).toBe('owner unsure')
  })

  test('does not take the usual for what nobody knows', () => {
    const text = tubs.find(([file]) => file.startsWith('turnable-120'))?.[1] ?? ''
    const document = parse(text) as { supply: Plain }
    const unsure = {
      ...document,
      supply: { ...document.supply, turnable: { unknown: 'not visible' } },
    }
    const { survey: made, open } = readDraft(unsure, devices)
    expect(made).toBeUndefined()
    expect(open).toEqual([{ path: ['supply', 'turnable'], unknown: 'not visible' }])
  })

  test.each([
    null,
    undefined,
    7,
    'text',
    [],
    { loads: 'x' },
    { loads: [null, 3] },
    { supply: { cables: [{ conductors: [[]] }] } },
    { region: { unknown: 'because' } },
  ])('never throws: %j', document => {
    const { survey: made } = readDraft(document, devices)
    expect(made).toBeUndefined()
  })
})

describe('fieldAt', () => {
  const document = parse(tubs.find(([file]) => file.startsWith('everyday-240-plain'))?.[1] ?? '')
  test.each([
    [['region'], 'choice'],
    [['supply', 'breaker'], 'known'],
    [['supply', 'frequency'], 'quantity'],
    [['supply', 'turnable'], 'yes-no'],
    [['loads', 'pump-a', 'leads', 'high', 'size'], 'size'],
    [['loads', 'pump-a', 'circuits', 'high', 'powerFactor'], 'number'],
    [['loads', 'pump-a', 'movesWaterThroughHeater'], 'names'],
    [['title'], 'text'],
  ] as const)('%j is asked for as %s', (path, kind) =>
    expect(fieldAt(survey, document, path)?.form.kind).toBe(kind),
  )

  test.each([[['loads']], [['supply']], [['nothing']], [['loads', 'pump-a', 'leads']]])(
    '%j is no field',
    path => expect(fieldAt(survey, document, path)).toBeUndefined(),
  )
})
