import { describe, expect, it } from 'vitest'
import { fieldNameAt, placeOfMark } from '../src/index.ts'

const MARK = 'MARK'
const found = (text: string) => placeOfMark(text, MARK)

describe('a mark in a text that is being written', () => {
  it.each([
    ['MARK', 'value', []],
    ['MARK:', 'key', []],
    ['a: { b: 1, MARK }', 'key', ['a']],
    ['a: { b: 1, MARK', 'key', ['a']],
    ['a:\n  - b: 1\n    MARK:\n', 'key', ['a', 0]],
    ['a:\n  - b: MARK\n', 'value', ['a', 0, 'b']],
    ['a: [1, MARK', 'value', ['a', 1]],
    ["a: { '1': x MARK }", 'value', ['a', '1']],
  ])('is found: %s', (text, at, path) => {
    expect(found(text)).toMatchObject({ at, path })
  })

  it('is found where its value begins, with what the text says besides', () => {
    const place = found('a: b\nc: 14 MARK\n')
    expect(place?.from).toBe(8)
    expect(place?.document).toEqual({ a: 'b', c: '14 MARK' })
  })

  it.each(['# MARK', 'a: 1', '', `${'[ '.repeat(50_000)}MARK`])('is not found: %#', text => {
    expect(found(text)).toBeUndefined()
  })
})

describe('the name of a field', () => {
  const box = { places: [{ lands: { hot: 'B1' } }], supplied: [{ kind: 'heater' }] }

  it.each([
    [[], 'control-box'],
    [['board'], 'control-box.board'],
    [['board', 'terminals', 3, 'rated'], 'board.terminals.rated'],
    [['places', 0, 'lands', 'hot'], 'control-box.places.lands'],
    [['supplied'], 'control-box.supplied'],
    [['supplied', 0, 'leads', 1, 'size'], 'load.leads.size'],
  ])('at %o', (path, name) => {
    expect(fieldNameAt('control-box', box, path)).toBe(name)
  })
})
