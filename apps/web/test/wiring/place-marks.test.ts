import { describe, expect, test } from 'vitest'
import { sheetOf } from '../../../../packages/core/test/stages/sheet/sheets.ts'
import { isOver, runsOf } from '../../../../packages/documents/src/board/scene.ts'
import type { Charge } from '../../src/screens/wiring/place-marks.ts'
import { placeAlong, placeChips, placeSigns } from '../../src/screens/wiring/place-marks.ts'
import { shapesOfPanel } from './shapes-of-scene.ts'

const BOARDS = [
  ['large-60', 'bittern-8', 'box'],
  ['large-60', 'bittern-8', 'disconnect'],
  ['everyday-240-circulation', 'heron-4', 'box'],
  ['garden-230', 'sorrel-32', 'box'],
] as const

const chargeOf = (number: number): Charge => ({
  number,
  kind: number % 3 === 0 ? 'stays' : 'live',
  texts: ['11.4 A · 120 V', '11.4 A', '120 V'],
  amps: number,
})

describe.each(BOARDS)('figures on %s, %s, %s, every wire with some', (tub, box, panel) => {
  const shapes = shapesOfPanel(sheetOf(tub, box), panel)
  const charges = shapes.wires.map(each => chargeOf(each.number))
  const signs = placeSigns(shapes, charges)
  const chips = placeChips(shapes, charges, signs, { size: 2.4, first: new Set() })

  test('most find room, each wire at most once', () => {
    expect(new Set(chips.map(each => each.number)).size).toBe(chips.length)
    expect(chips.length).toBeGreaterThan(shapes.wires.length * 0.6)
  })

  test('cover no word of the drawing, no terminal, no other wire and not each other', () => {
    for (const chip of chips) {
      for (const each of [...shapes.texts, ...shapes.partners, ...shapes.jumpers])
        expect(isOver(chip.box, each)).toBe(false)
      for (const { number, points } of shapes.wires)
        if (number !== chip.number)
          expect(runsOf(points, 0.6).some(run => isOver(run, chip.box))).toBe(false)
      for (const other of chips) if (other !== chip) expect(isOver(other.box, chip.box)).toBe(false)
    }
  })

  test('every wire has its sign, at its own terminal', () => {
    expect(signs.map(each => each.number)).toEqual(charges.map(each => each.number))
    for (const { number, x, y } of signs) {
      const [first] = shapes.wires.find(each => each.number === number)?.points ?? []
      expect(Math.hypot(x - (first?.x ?? 0), y - (first?.y ?? 0))).toBeLessThan(3)
    }
  })

  test('the net that is traced chooses first', () => {
    const [last] = [...charges].reverse()
    if (!last) throw new Error('no wire')
    const small = { ...last, amps: 0 }
    const others = charges.filter(each => each !== last)
    const placed = placeChips(shapes, [...others, small], signs, {
      size: 2.4,
      first: new Set([small.number]),
    })
    expect(placed[0]?.number).toBe(small.number)
  })
})

test('a place along a line is counted round its bends, and ends at its end', () => {
  const line = [
    { x: 0, y: 0 },
    { x: 3, y: 0 },
    { x: 3, y: 4 },
  ]
  expect(placeAlong(line, 2)).toEqual({ x: 2, y: 0 })
  expect(placeAlong(line, 5)).toEqual({ x: 3, y: 2 })
  expect(placeAlong(line, 99)).toEqual({ x: 3, y: 4 })
})

test('five hundred wires are written on within a blink', () => {
  const one = shapesOfPanel(sheetOf('large-60', 'bittern-8'), 'box')
  const copies = Math.ceil(500 / one.wires.length)
  const wires = Array.from({ length: copies }, (_, copy) =>
    one.wires.map(each => ({
      ...each,
      number: each.number + 100 * copy,
      points: each.points.map(({ x, y }) => ({ x: x + copy * 200, y })),
    })),
  ).flat()
  const texts = Array.from({ length: copies }, (_, copy) =>
    one.texts.map(each => ({ ...each, x: each.x + copy * 200 })),
  ).flat()
  const many = { ...one, width: one.width * copies, wires, texts }
  const charges = wires.map(each => chargeOf(each.number))
  const began = performance.now()
  const placed = placeChips(many, charges, placeSigns(many, charges), {
    size: 2.4,
    first: new Set(),
  })
  expect(placed.length).toBeGreaterThan(250)
  expect(performance.now() - began).toBeLessThan(400)
})
