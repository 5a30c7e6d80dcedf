import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import * as z from 'zod'
import { describable, exercisedBy, type FILES } from './describable.ts'
import { coverage, EXCEPT, lacks, MATRIX, printed } from './matrix.ts'

const all = coverage()

describe('what can be described', () => {
  test('is exercised by the catalogue and named by a test, row by row', () => {
    const missing = all.flatMap(row => lacks(row).map(each => `${row.name}: no ${each}`))
    expect(missing).toEqual([])
  })

  test('what is excepted is a row that no file exercises', () => {
    const exercised = all.filter(row => Object.values(row.by).some(each => each.length > 0))
    for (const name of Object.keys(EXCEPT)) {
      expect(all.map(each => each.name)).toContain(name)
      expect(exercised.map(each => each.name)).not.toContain(name)
    }
  })

  test('stands in docs/coverage.md as it is (npm run coverage writes it)', () => {
    const text = printed(all)
    if (process.env['COVERAGE'] === 'write') writeFileSync(MATRIX, text)
    expect(existsSync(MATRIX) ? readFileSync(MATRIX, 'utf8') : '').toBe(text)
  })
})

describe('the walk through the schemas', () => {
  const names = new Set(describable().map(each => each.name))

  test.each([
    'supply.system = two-lives-230',
    'box.feeds.lands = second-leg2',
    'box.feeds.assumesOn',
    'board.parts.kind = ground-fault',
    'board.terminals.at.pin',
    'load.kind = sanitiser',
    'load.leads.function = data',
    'known.unknown = not visible',
    'device.tails.lands',
  ])('finds %s', name => {
    expect(names).toContain(name)
  })

  test('finds a new word and a new key by itself', () => {
    const grown = z.strictObject({ id: z.string(), mood: z.enum(['calm', 'wild']).optional() })
    const file = { schema: grown, name: 'tub' } as unknown as (typeof FILES)['tubs']
    expect([...exercisedBy(file, { id: 'a', mood: 'wild' })]).toEqual([
      'tub.id',
      'tub.mood',
      'tub.mood = wild',
    ])
  })

  test('every row that a file exercises is a row', () => {
    const exercised = all.filter(row => Object.values(row.by).some(each => each.length > 0))
    expect(exercised.length).toBeGreaterThan(100)
    for (const row of exercised) expect(names).toContain(row.name)
  })
})
