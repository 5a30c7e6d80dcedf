import type { JobSheet, SheetPanel } from '@tubwright/core'
import { describe, expect, test } from 'vitest'
import { sheetOf } from '../../core/test/stages/sheet/sheets.ts'
import { drawBoard } from '../src/index.ts'
import { WORDS } from './words-en.ts'

const JOBS = [
  ['everyday-240-circulation', 'heron-4'],
  ['large-60', 'bittern-8'],
  ['garden-230', 'sorrel-32'],
] as const

const all = (svg: string, attribute: string): readonly string[] =>
  [...svg.matchAll(new RegExp(` data-${attribute}="([^"]*)"`, 'gu'))].map(each => each[1] ?? '')

const landedOn = (sheet: JobSheet, panel: SheetPanel) =>
  sheet.wires
    .flatMap(each => each.wires)
    .flatMap(wire =>
      wire.ends
        .filter(each => each.panel === panel.id && each.terminal !== undefined)
        .map(({ end }) => ({ end, number: String(wire.number) })),
    )

describe.each(JOBS)('what a screen finds in the drawing of %s on %s', (tub, box) => {
  const sheet = sheetOf(tub, box)
  const drawn = sheet.panels.map(panel => ({ panel, svg: drawBoard(sheet, WORDS, panel.id) }))

  test('every end that lands here, with its wire, once', () => {
    for (const { panel, svg } of drawn) {
      const pairs = [...svg.matchAll(/data-wire="(\d+)" data-end="([^"]+)"/gu)]
      const found = pairs.map(([, number, end]) => ({ end, number }))
      const byEnd = (a: { end?: string | undefined }, b: { end?: string | undefined }) =>
        (a.end ?? '').localeCompare(b.end ?? '')
      expect(found.sort(byEnd)).toEqual([...landedOn(sheet, panel)].sort(byEnd))
    }
  })

  test('every terminal by its name in a landing, and every jumper that has a place', () => {
    for (const { panel, svg } of drawn) {
      const names = panel.terminals.map(each => `${panel.id}.${each.id}`)
      expect(all(svg, 'terminal')).toEqual(names)
      expect(all(svg, 'jumper')).toEqual(panel.jumpers.filter(each => each.at).map(each => each.id))
    }
  })

  test('the words beside a wire say whose they are', () => {
    for (const { panel, svg } of drawn) {
      const landed = landedOn(sheet, panel).map(each => each.number)
      expect([...all(svg, 'of')].sort()).toEqual([...landed, ...landed].sort())
    }
  })
})
