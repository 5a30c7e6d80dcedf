import { readFileSync } from 'node:fs'
import { fieldText } from '@tubwright/words'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { demoIds, demoText } from '../../core/test/support/demo.ts'
import type { SchemaName } from '../src/index.ts'
import { fieldNames, jsonSchemaOf, SCHEMA_NAMES } from '../src/index.ts'
import { faultsOf } from './support/json-schema.ts'

const schemaOf = (name: SchemaName) => jsonSchemaOf(name, fieldText)
const published = (name: SchemaName): string =>
  readFileSync(new URL(`../../../docs/schema/${name}.json`, import.meta.url), 'utf8')

describe.each(SCHEMA_NAMES)('the schema of a %s', name => {
  it('is published as it is: else npx tubwright describe --schema NAME > docs/schema/NAME.json', () => {
    expect(published(name)).toBe(`${JSON.stringify(schemaOf(name), null, 2)}\n`)
  })

  it('says of every field what it is for', () => {
    expect(fieldNames(name).filter(each => fieldText(each) === undefined)).toEqual([])
    expect(fieldText(name)).toBeDefined()
  })
})

const FILES = [
  ...demoIds('boxes').map(id => ['control-box', 'boxes', id] as const),
  ...demoIds('devices').map(id => ['supply-device', 'devices', id] as const),
  ...demoIds('tubs').map(id => ['survey', 'tubs', id] as const),
]

describe('the demo', () => {
  it.each(FILES)('%s: %s/%s fits', (name, folder, id) => {
    expect(faultsOf(parse(demoText(folder, id)), schemaOf(name))).toEqual([])
  })

  it('fits no other kind', () => {
    const box: unknown = parse(demoText('boxes', 'heron-4'))
    for (const name of ['survey', 'supply-device', 'landing'] as const)
      expect(faultsOf(box, schemaOf(name))).not.toEqual([])
  })

  it.each([
    ['a quantity without its unit', 'rated: 60 A', 'rated: 60'],
    ['a quantity of another kind', 'largestBreaker: 60 A', 'largestBreaker: 60 V'],
    ['a key that nobody knows', 'flowProof:', 'flowproof:'],
    ['a word that may not stand there', 'class: earth', 'class: ground'],
    ['a size that is not sold', 'to: 6 AWG', 'to: 7 AWG'],
    ['a name that is none', 'id: A1', 'id: 1A'],
  ])('does not fit with %s', (_, from, to) => {
    const text = demoText('boxes', 'heron-4')
    expect(text).toContain(from)
    expect(faultsOf(parse(text.replace(from, to)), schemaOf('control-box'))).not.toEqual([])
  })
})

describe('a quantity', () => {
  const quantities = JSON.stringify(schemaOf('control-box'))
  it('is text with a pattern and an example that fits it', () => {
    const found = [
      ...quantities.matchAll(/"pattern":("(?:[^"\\]|\\.)*"),"examples":(\[[^\]]*\])/gu),
    ]
    expect(found.length).toBeGreaterThan(8)
    for (const [, pattern = '', examples = ''] of found)
      for (const each of JSON.parse(examples) as string[])
        expect(each).toMatch(new RegExp(JSON.parse(pattern) as string, 'u'))
  })
})
