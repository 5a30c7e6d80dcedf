import { describe, expect, test } from 'vitest'
import { demoBox, demoDevices, demoIds } from '../../core/test/support/demo.ts'
import { drawDescribed } from '../src/index.ts'
import { WORDS } from './words-en.ts'

const count = (text: string, what: RegExp): number => [...text.matchAll(what)].length

describe('a described board', () => {
  test.each(demoIds('boxes'))('of %s shows each terminal once and every lead of a place', id => {
    const box = demoBox(id)
    const svg = drawDescribed(box, [], WORDS)
    expect(svg).toMatch(/^<svg [\s\S]*<\/svg>$/u)
    expect(count(svg, /class="terminal"><title>/gu)).toBe(box.board.terminals.length)
    const leads = box.places.flatMap(each => Object.values(each.lands))
    expect(count(svg, /class="wire"/gu)).toBeGreaterThanOrEqual(leads.length)
    expect(svg).not.toContain('NaN')
  })

  test.each([...demoDevices.values()])('of device $id is drawn', device => {
    const svg = drawDescribed(device, [], WORDS)
    expect(count(svg, /class="terminal"><title>/gu)).toBe(device.board.terminals.length)
  })

  test('marks what is said of a terminal, a jumper and a place', () => {
    const box = demoBox('heron-4')
    const svg = drawDescribed(
      box,
      [
        { number: 1, path: ['board', 'terminals', 4, 'node'] },
        { number: 2, path: ['board', 'jumpers', 0] },
        { number: 3, path: ['places', 0, 'lands', 'high'] },
        { number: 4, path: ['currentLimit'] },
      ],
      WORDS,
    )
    for (const each of ['!1', '!2', '!3']) expect(svg).toContain(`>${each}<`)
    expect(svg).not.toContain('>!4<')
  })

  test('is the same for the same description, byte for byte', () => {
    expect(drawDescribed(demoBox('rowan-2'), [], WORDS)).toBe(
      drawDescribed(demoBox('rowan-2'), [], WORDS),
    )
  })
})
