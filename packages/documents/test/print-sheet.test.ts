import type { JobSheet } from '@tubwright/core'
import { SHEET_MESSAGES } from '@tubwright/core'
import { describe, expect, test } from 'vitest'
import { freshSheets, sheetOf, sheetsOf } from '../../core/test/stages/sheet/sheets.ts'
import { demoIds } from '../../core/test/support/demo.ts'
import { escapeStyle } from '../src/escape.ts'
import { drawBoard, escapeText, printSheet } from '../src/index.ts'
import { WORDS } from './words-en.ts'

const sheet = sheetOf('everyday-240-circulation', 'heron-4')

describe('escaping', () => {
  const ATTACK = `</style></title><script>alert(1)</script><img src=x onerror="a('b')">&amp;]]>`

  /** Every text in a sheet that comes from a file, made hostile; ids and units stay what they are. */
  function hostile<Value>(value: Value, key = ''): Value {
    const KEPT = [
      'message',
      'kind',
      'severity',
      'role',
      'symbol',
      'class',
      'unit',
      'name',
      'verdict',
      'style',
      'zone',
      'side',
      'sides',
    ]
    if (typeof value === 'string')
      return (KEPT.includes(key) || value in SHEET_MESSAGES ? value : `${value}${ATTACK}`) as Value
    if (Array.isArray(value)) return value.map(each => hostile(each, key)) as Value
    if (typeof value !== 'object' || value === null) return value
    return Object.fromEntries(
      Object.entries(value).map(([name, each]) => [name, hostile(each, name)]),
    ) as Value
  }

  const page = printSheet(hostile(sheet), WORDS)

  test('no data becomes markup', () => {
    expect(page).toContain('&lt;script&gt;')
    expect(page).not.toMatch(/<script|<img|onerror="/iu)
    expect(page.match(/<\/style>/gu)).toHaveLength(1)
    expect(page.match(/<\/title>\s*<style>/gu)).toHaveLength(1)
  })

  test('tags are those of the page itself, balanced', () => {
    const open: string[] = []
    const VOID = ['meta', 'col', 'br', 'path', 'rect', 'circle']
    for (const [, slash, name = '', rest = ''] of page.matchAll(/<(\/?)([a-z0-9]+)([^>]*)>/gu)) {
      if (slash === '/') expect(open.pop()).toBe(name)
      else if (!VOID.includes(name) && !rest.endsWith('/')) open.push(name)
    }
    expect(open).toEqual([])
  })

  test('characters no document may hold are replaced', () => {
    expect(escapeText('a\u0000b\uD800c')).toBe('a\uFFFDb\uFFFDc')
    expect(escapeText('Ω 😀 é')).toBe('Ω 😀 é')
    expect(escapeStyle('a"\\}</style>é')).toMatch(/^[A-Za-z0-9 \\]+$/u)
  })
})

/** Text of a page as a person reads it. */
const read = (page: string): string =>
  page
    .replace(/<(style|title)>[\s\S]*?<\/\1>/gu, ' ')
    .replace(/<[^>]+>/gu, ' ')
    .replace(/\s+/gu, ' ')

describe('the page', () => {
  const page = printSheet(sheet, WORDS)

  test('is one file that fetches and runs nothing', () => {
    expect(page).not.toMatch(/<script|<link|<iframe|@import|url\(|src=|href=/iu)
    expect(page.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:/iu)
  })

  test('has a language, a title, headings in order and heads to every table', () => {
    expect(page).toMatch(/^<!doctype html>\n<html lang="en">/u)
    expect(page).toMatch(/<title>Work sheet: [^<]+<\/title>/u)
    const levels = [...page.matchAll(/<h([1-6])/gu)].map(each => Number(each[1]))
    expect(levels[0]).toBe(1)
    levels.slice(1).forEach((level, index) => {
      expect(level - (levels[index] ?? 0)).toBeLessThanOrEqual(1)
    })
    expect(page).not.toMatch(/<th(?![^>]*scope=)[ >]/u)
    expect(page.match(/<table/gu)?.length).toBe(page.match(/<thead>/gu)?.length)
  })

  test('names every wire of the table in the drawing by its number', () => {
    const wires = sheet.wires.flatMap(each => each.wires)
    const drawings = sheet.panels.map(each => drawBoard(sheet, WORDS, each.id)).join('')
    for (const { number, ends } of wires.filter(each =>
      each.ends.some(end => end.terminal !== undefined),
    )) {
      expect(drawings).toContain(`data-wire="${number}"`)
      expect(drawings).toMatch(
        new RegExp(`<text class="tag"[^>]*>${number} [A-Z]+\\*?</text>`, 'u'),
      )
      expect(ends.length).toBeGreaterThan(0)
    }
    expect(wires.length).toBe(29)
  })

  test('tells every drawing by a title and a description to whoever does not see it', () => {
    const drawn = [
      ...page.matchAll(
        /<svg [^>]*role="img"[^>]*>(<title id="([^"]+)">[^<]+<\/title><desc id="([^"]+)">[^<]+<\/desc>)?/gu,
      ),
    ]
    expect(drawn.length).toBe(sheet.panels.length + sheet.ladder.sections.length)
    for (const [svg, , title, says] of drawn)
      expect(svg).toContain(`aria-labelledby="${title} ${says}"`)
    const ids = [...page.matchAll(/ id="([^"]+)"/gu)].map(each => each[1])
    expect(new Set(ids).size).toBe(ids.length)
  })

  test('has no text below 2.5 mm, drawn or set', () => {
    const drawn = [...page.matchAll(/<text[^>]* font-size="([\d.]+)"/gu)].map(each =>
      Number(each[1]),
    )
    expect(drawn.length).toBeGreaterThan(80)
    expect(Math.min(...drawn)).toBeGreaterThanOrEqual(2.5)
    const style = /<style>([\s\S]*)<\/style>/u.exec(page)?.[1] ?? ''
    const root = 10 * (25.4 / 72) // [mm] html { font-size: 10pt }
    expect(style).toContain('html { font-size: 10pt; }')
    const rems = [...style.matchAll(/([\d.]+)rem/gu)].map(each => Number(each[1]) * root)
    const points = [...style.matchAll(/([\d.]+)pt/gu)].map(each => Number(each[1]) * (25.4 / 72))
    expect(Math.min(...rems, ...points)).toBeGreaterThanOrEqual(2.5)
  })

  test('draws in measures that A4 and Letter both have between their margins', () => {
    const [left, right] = [12, 12]
    expect(page).toContain('margin: 13mm 12mm 12mm 12mm')
    for (const [, width = ''] of page.matchAll(/<svg [^>]*class="board"[^>]* width="([\d.]+)mm"/gu))
      expect(Number(width)).toBeLessThanOrEqual(Math.min(210, 215.9) - left - right)
  })

  test('says the cautions, the severities and the last word of maker and code', () => {
    const text = read(page)
    for (const each of ['DANGER', 'WARNING', 'CAUTION', 'NOTICE']) expect(text).toContain(each)
    expect(text).toContain('The maker’s instructions and the local code win over this sheet.')
    expect(text).toContain('Ask the authority:')
    expect(text.match(/Normally licensed work here/gu)).toHaveLength(6)
  })
})

describe('what a person must not overlook', () => {
  const text = read(printSheet(sheet, WORDS))

  test('a plan with a warning is not headed as proven', () => {
    expect(text).toContain('WARNING')
    expect(text).toContain('The plan holds PROVIDED you heed !1 below.')
    expect(text).not.toMatch(/Plan proven/iu)
  })

  test('what to do outside a band stands under its readings, with nothing to tick', () => {
    const outside = /<div class="outside">[\s\S]*?<\/div>/gu
    const blocks = printSheet(sheet, WORDS).match(outside) ?? []
    expect(blocks.length).toBe(sheet.steps.filter(each => each.outside.length > 0).length)
    expect(blocks.join('')).toContain('Motor amps above: off, lock, do not go on.')
    expect(blocks.join('')).not.toContain('class="tick"')
  })

  test('the supply end draws the control box as a plain box', () => {
    expect(drawBoard(sheet, WORDS, 'gf')).toContain('M-4 -2.4H4V2.4H-4Z')
    expect(drawBoard(sheet, WORDS, 'box')).not.toContain('M-4 -2.4H4V2.4H-4Z')
  })
})

test('the same job gives the same bytes', () => {
  const print = () => freshSheets('three-wire-240').map(each => printSheet(each, WORDS))
  expect(print()).toEqual(print())
})

test('no sheet of the demo shows a hole, an id of a message or a number that is none', () => {
  const sheets: readonly JobSheet[] = demoIds('tubs').flatMap(sheetsOf)
  expect(sheets.length).toBeGreaterThan(9)
  for (const each of sheets) {
    const text = read(printSheet(each, WORDS))
    expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|\{\w+(:\w+)?\}/u)
    for (const message of Object.keys(SHEET_MESSAGES)) expect(text).not.toContain(` ${message} `)
  }
})
