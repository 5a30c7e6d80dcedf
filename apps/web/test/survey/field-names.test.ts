import { readdirSync, readFileSync } from 'node:fs'
import { survey } from '@tubwright/core'
import { fieldsBelow, growingBelow } from '@tubwright/formats'
import { ENGLISH } from '@tubwright/words/en'
import { SPANISH } from '@tubwright/words/es'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { fieldName } from '../../src/screens/survey/field-name.ts'
import { unitsOf, usualUnit } from '../../src/screens/survey/units-of.ts'

interface Tub {
  readonly loads: {
    readonly kind: string
    readonly circuits?: readonly unknown[]
    capacitors?: unknown
    straps?: unknown
  }[]
}

const folder = new URL('../../../../packages/catalog/data/tubs/', import.meta.url)

/** Every tub of the demo, with all that a load may have. */
const tubs = readdirSync(folder).map(file => {
  const tub = parse(readFileSync(new URL(file, folder), 'utf8')) as Tub
  for (const load of tub.loads) {
    if (load.kind.endsWith('pump')) load.capacitors ??= [{ id: 'capacitor' }]
    if (load.circuits) load.straps ??= { positions: { high: { amps: { run: '1 A' } } } }
  }
  return tub
})

/** What is asked by a question of its own. */
const ASKED = [
  /^survey\.supply\.(system|frequency|breaker|breakerType|earthing|earthLoop)$/u,
  /^survey\.supply\.devices\.(device|terminals|enclosure|heatMark)$/u,
  /^survey\.supply\.cables\.(?!label|moulded|conductors$)/u,
]

const names = new Set(
  tubs.flatMap(tub =>
    ['supply', 'loads']
      .flatMap(key => [
        ...fieldsBelow(survey, tub, [key]),
        ...growingBelow(survey, tub, [key]).map(each => each.path),
      ])
      .filter(path => !['loads', 'supply/devices', 'supply/cables'].includes(path.join('/')))
      .map(fieldName)
      .filter(name => !ASKED.some(each => each.test(name))),
  ),
)

describe.each([ENGLISH, SPANISH])('$language', words => {
  const web: Readonly<Record<string, string>> = words.web

  test.each([...names])('%s has a name that no file uses', name => {
    const told = web[`name.${name}`]
    expect(told).toBeDefined()
    expect(told).not.toMatch(/[a-z][A-Z]/u)
  })
})

test('units are those of the region, symbols before letters, and none that no tub needs', () => {
  expect(usualUnit('m', true)).toBe('ft')
  expect(usualUnit('m', false)).toBe('m')
  expect(usualUnit('A', true)).toBeUndefined()
  expect(unitsOf('m', 'ft')).toEqual(['ft', 'm', 'mm', 'cm', 'in'])
  expect(unitsOf('Ω', 'Ω')).toEqual(['Ω', 'mΩ', 'kΩ'])
  expect(unitsOf('Ω', 'mohm')).toEqual(['mohm', 'Ω', 'kΩ'])
  expect(unitsOf('F', 'µF')).toEqual(['µF', 'nF'])
})
