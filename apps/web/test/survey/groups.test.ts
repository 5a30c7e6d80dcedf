import { readdirSync, readFileSync } from 'node:fs'
import { survey } from '@tubwright/core'
import { fieldsBelow, growingBelow } from '@tubwright/formats'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import type { Document } from '../../src/ask/protocol.ts'
import { stateOf } from '../../src/screens/survey/group-state.ts'
import { groupFor, groupsOf } from '../../src/screens/survey/groups.ts'

const folder = new URL('../../../../packages/catalog/data/tubs/', import.meta.url)
const tubs = readdirSync(folder).sort()

const isBelow = (path: readonly string[], above: readonly string[]): boolean =>
  above.every((step, index) => path[index] === step)

describe.each(tubs)('%s', file => {
  const document = parse(readFileSync(new URL(file, folder), 'utf8')) as Document
  const groups = groupsOf(document)

  test('every field of the schema is asked for in one group', () => {
    const paths = fieldsBelow(survey, document)
    expect(paths.length).toBeGreaterThan(20)
    for (const path of paths) {
      const asking = groups.filter(each => each.covers.some(above => isBelow(path, above)))
      expect(
        asking.map(each => each.id),
        path.join('.'),
      ).toHaveLength(1)
      expect(groupFor(groups, path)?.id, path.join('.')).toBe(asking[0]?.id)
    }
  })

  test('whatever may be listed or named can be added to in a group', () => {
    const growing = growingBelow(survey, document).map(each => each.path)
    expect(growing).toContainEqual(['supply', 'devices'])
    expect(growing).toContainEqual(['supply', 'cables'])
    for (const path of growing)
      if (path.join() !== 'loads') {
        const asking = groups.some(each => each.covers.some(above => isBelow(path, above)))
        expect(asking, path.join('.')).toBe(true)
      }
  })
})

test('a pump can be given capacitors, straps and pins that it has none of yet', () => {
  const document = { loads: [{ id: 'pump', kind: 'pump', leads: [{ id: 'hot' }] }] }
  const paths = growingBelow(survey, document, ['loads', 'pump']).map(each => each.path.join('.'))
  expect(paths).toEqual(
    expect.arrayContaining([
      'loads.pump.leads',
      'loads.pump.circuits',
      'loads.pump.capacitors',
      'loads.pump.straps.positions',
      'loads.pump.plug.pins',
    ]),
  )
})

describe('how far a group is', () => {
  const told = (document: Document, ...open: readonly string[]) => {
    const groups = groupsOf(document)
    const paths = open.map(each => each.split('.'))
    const entries = groups.map(each => {
      const state = stateOf(each, groups, document, paths)
      return [each.id, 'count' in state ? `${state.kind} ${state.count}` : state.kind]
    })
    return Object.fromEntries(entries) as Readonly<Record<string, string>>
  }

  test('nothing in it: not begun, though the whole of it is one open field elsewhere', () => {
    const all = told({ title: 'A tub' }, 'region', 'supply', 'loads')
    expect(all).toMatchObject({ tub: 'open 1', supply: 'not-begun', protection: 'not-begun' })
    expect(all).toMatchObject({ run: 'not-begun', loads: 'not-begun', room: 'not-begun' })
    expect(all).toMatchObject({ yard: 'optional', photos: 'says-nothing' })
  })

  test('answered once all that it asks is answered or said to be unknown', () => {
    const bay = { width: '400 mm', height: { unknown: 'not visible' }, depth: '300 mm' }
    expect(told({ bay })['room']).toBe('open 2')
    const keypadHole = { width: { unknown: 'does not exist' }, height: '80 mm' }
    expect(told({ bay, keypadHole })['room']).toBe('answered')
    expect(told({ supply: { system: 'split-phase' } }, 'supply.breaker')['supply']).toBe('open 1')
    expect(told({ supply: { system: 'split-phase' } })['supply']).toBe('answered')
  })

  test('of what is optional the answers are counted, and what is open first', () => {
    const yard = { setting: 'outdoors', rimHeight: '36 in' }
    expect(told({ yard })['yard']).toBe('answers 2')
    expect(told({ yard }, 'yard.switches.a.label')['yard']).toBe('open 1')
  })
})
