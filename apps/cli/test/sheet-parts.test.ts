import { SHEET_PARTS as PARTS } from '@tubwright/documents'
import { describe, expect, it } from 'vitest'
import { SHEET_PARTS } from '../src/run.ts'
import { tubwright } from './support/program.ts'

const sheet = (...words: readonly string[]) =>
  tubwright(['sheet', 'everyday-240-circulation', '--box', 'heron-4', ...words])

describe('one part of the sheet', () => {
  it('is named in the help as the documents name it', () => {
    expect(SHEET_PARTS.split(', ')).toEqual(PARTS)
  })

  it.each([
    ['load-sheet', 'class="loads"', 'class="rungs"'],
    ['ladder', 'class="rungs"', 'class="loads"'],
    ['board', 'class="board"', 'class="rungs"'],
    ['wires', 'class="wires"', 'class="rungs"'],
  ])('%s alone, and nothing else', (part, has, hasNot) => {
    const { stdout } = sheet('--part', part)
    expect(stdout).toContain(has)
    expect(stdout).not.toContain(hasNot)
    expect(stdout).toContain('One part of the work sheet. The whole sheet wins over it.')
  })

  it.each(['board', 'ladder'])('the drawing %s as plain SVG', drawing => {
    const { stdout } = sheet('--svg', drawing)
    expect(stdout).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/u)
    expect(stdout.trimEnd()).toMatch(/<\/svg>$/u)
  })

  it.each([
    [['--part', 'ladders'], 'It may be: front, bring, board, ladder'],
    [['--svg', 'wires'], 'It may be: board, ladder'],
    [['--svg', 'board', '--part', 'board'], 'name one of them'],
  ])('refuses %j', (words, told) => {
    const { status, stdout, stderr } = sheet(...words)
    expect(status).toBe(2)
    expect(stdout).toBe('')
    expect(stderr).toContain(told)
  })
})
