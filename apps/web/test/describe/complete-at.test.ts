import { readFileSync } from 'node:fs'
import { ENGLISH } from '@tubwright/words'
import { describe, expect, it } from 'vitest'
import { completeAt, fieldUnder } from '../../src/screens/describe/complete-at.ts'

const BOX = readFileSync(
  new URL('../../../../packages/catalog/data/boxes/bittern-8.yaml', import.meta.url),
  'utf8',
)

/** What is offered at the bar of a text that is put in the place of a line. */
function offered(line: RegExp, now: string): { texts: readonly string[]; typed: string } {
  const whole = BOX.replace(line, () => now)
  expect(whole).toContain('|')
  const offset = whole.indexOf('|')
  const text = whole.replace('|', '')
  const found = completeAt(text, offset)
  return {
    texts: found?.offers.map(each => each.text) ?? [],
    typed: text.slice(found?.from ?? offset, offset),
  }
}

const A1 = /^ {4}- \{ id: A1, .*$/mu

describe('keys that may stand at the cursor', () => {
  it('at the top, without those that are there', () => {
    const { texts } = offered(/^largestBreaker.*$/mu, 'lar|')
    expect(texts).toContain('largestBreaker')
    expect(texts).not.toContain('board')
  })

  it('before a comment', () => {
    expect(offered(/^largestBreaker.*$/mu, 'lar|  # what it may stand behind').texts).toContain(
      'largestBreaker',
    )
  })

  it('in a block, on a line of its own', () => {
    const { texts, typed } = offered(/^ {2}earth: PE$/mu, '  ear|')
    expect(texts).toContain('earth')
    expect(texts).not.toContain('terminals')
    expect(typed).toBe('ear')
  })

  it('in a pair of braces, closed or not', () => {
    for (const now of ['    - { id: A1, ra| }', '    - { id: A1, ra|'])
      expect(offered(A1, now).texts).toEqual(expect.arrayContaining(['rated', 'node', 'holds']))
  })

  it('of a part by its kind, and the kind first of one that has none', () => {
    const line = /^ {4}- \{ id: \w+, kind: fuse.*$/mu
    expect(offered(line, '    - { id: F1, kind: fuse, | }').texts.toSorted()).toEqual([
      'across',
      'rated',
    ])
    expect(offered(line, '    - { id: F1, | }').texts).toContain('kind')
    expect(offered(line, '    - { id: F1, kind: | }').texts).toContain('transformer')
  })

  it('on the first line of a list entry', () => {
    expect(offered(A1, '    - i|').texts).toContain('id')
  })

  it('of leads that a feed lands, and of commands that it counts', () => {
    expect(offered(/^( {4}lands: ).*$/mu, '    lands: { leg1: A1, | }').texts).toContain('neutral')
    expect(offered(/^ {4}assumes: .*$/mu, '    assumes: { | }').texts).toContain('heat')
  })

  it('say what each is for', () => {
    const text = BOX.replace(A1, '    - { id: A1,  }')
    const found = completeAt(text, text.indexOf('{ id: A1,  }') + '{ id: A1, '.length)
    const rated = found?.offers.find(each => each.text === 'rated')
    expect(rated?.field).toBe('board.terminals.rated')
    expect(ENGLISH.fieldText(rated?.field ?? '')).toBe('what it may carry')
    for (const { field } of found?.offers ?? [])
      expect(ENGLISH.fieldText(field ?? '')).toBeDefined()
  })
})

describe('values that may stand at the cursor', () => {
  it('words of a choice', () => {
    expect(offered(A1, '    - { id: A1, class: ma| }')).toEqual({
      texts: ['mains', 'earth', 'low-voltage', 'sensor'],
      typed: 'ma',
    })
    expect(offered(/^regions: .*$/mu, 'regions: [US, | ]').texts).toContain('CA')
  })

  it('nodes, terminals and commands that the text has', () => {
    expect(offered(A1, '    - { id: A1, node: P| }').texts).toContain('PA-HI')
    expect(offered(/^ {4}- \{ id: XB.*$/mu, "    - { id: XB, pins: { '1': B| } }").texts).toContain(
      'B4',
    )
    expect(offered(/^heat: .*$/mu, 'heat: |').texts).toContain('heat')
  })

  it('in a list of words, each on its line', () => {
    expect(offered(/^regions: .*$/mu, 'regions:\n  - US\n  - C|').texts).toContain('CA')
  })

  it('never the mark itself', () => {
    expect(offered(A1, '    - { id: A1, node: | }').texts.join(' ')).not.toMatch(/mark/u)
  })

  it('an amount with each of its units, a size with its gauge', () => {
    expect(offered(/^largestBreaker.*$/mu, 'largestBreaker: 60|').texts).toContain('60 A')
    expect(offered(A1, '    - { id: A1, holds: { from: 10 A| } }')).toMatchObject({
      texts: expect.arrayContaining(['10 AWG']),
      typed: '10 A',
    })
  })

  it('nothing in a comment, nothing in a label', () => {
    expect(offered(/^heat: .*$/mu, 'heat: heat # he|').texts).toEqual([])
    expect(offered(/^label: .*$/mu, 'label: Bit|').texts).toEqual([])
  })
})

describe('a text that is no YAML', () => {
  it.each([
    ['', 0],
    ['[[[[', 4],
    ['- - - -', 7],
    ['a: *a', 5],
    [`${'['.repeat(20_000)}`, 20_000],
  ])('offers something or nothing, and never throws: %#', (text, offset) => {
    expect(() => completeAt(text, offset)).not.toThrow()
    expect(() => fieldUnder(text, offset)).not.toThrow()
  })

  it('of no characters offers the keys of a box', () => {
    expect(completeAt('', 0)?.offers.map(each => each.text)).toContain('schema')
  })
})

describe('the field under the cursor', () => {
  it('is that of the key and of the value alike', () => {
    const at = (part: string) => fieldUnder(BOX, BOX.indexOf(part) + 2)
    expect(at('largestBreaker')).toBe('control-box.largestBreaker')
    expect(at('60 A\nboard')).toBe('control-box.largestBreaker')
    expect(at('torque')).toBe('board.terminals.torque')
    expect(at('board:')).toBe('control-box.board')
  })
})
