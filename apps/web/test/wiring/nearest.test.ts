import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { sheetOf } from '../../../../packages/core/test/stages/sheet/sheets.ts'
import { awayFromLine, awayFromRun, nearestHit } from '../../src/screens/wiring/nearest.ts'
import { pointsOf, textBox } from '../../src/screens/wiring/shapes.ts'
import { shapesOfPanel } from './shapes-of-scene.ts'

const shapes = shapesOfPanel(sheetOf('large-60', 'bittern-8'), 'box')

describe('how far a finger is off', () => {
  test('a straight run', () => {
    const [from, to] = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
    ]
    expect(awayFromRun({ x: 5, y: 3 }, from, to)).toBe(3)
    expect(awayFromRun({ x: 13, y: 4 }, from, to)).toBe(5)
    expect(awayFromRun({ x: -3, y: -4 }, from, to)).toBe(5)
    expect(awayFromRun({ x: 3, y: 4 }, from, from)).toBe(5)
  })

  test('is never more than the way to any place of the line', () => {
    const place = fc.record({
      x: fc.integer({ min: 0, max: 99 }),
      y: fc.integer({ min: 0, max: 99 }),
    })
    fc.assert(
      fc.property(place, fc.array(place, { minLength: 2, maxLength: 6 }), (at, line) => {
        const least = Math.min(...line.map(each => Math.hypot(at.x - each.x, at.y - each.y)))
        expect(awayFromLine(at, line)).toBeLessThanOrEqual(least + 1e-9)
      }),
    )
  })
})

describe('what a tap means', () => {
  test('on any place of any wire: that wire, or what lies over it there', () => {
    for (const { number, points } of shapes.wires) {
      const [a, b] = [points.at(-2), points.at(-1)]
      if (!a || !b) throw new Error('no run')
      const at = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }
      expect(nearestHit(shapes, at, 0.1)).toEqual({ kind: 'wire', number })
    }
  })

  test('on any terminal: the terminal, though a wire ends on its rim', () => {
    for (const { name, x, y } of shapes.terminals)
      expect(nearestHit(shapes, { x, y }, 5)).toEqual({ kind: 'terminal', name })
  })

  test('on a jumper: the jumper', () => {
    expect(shapes.jumpers.length).toBeGreaterThan(0)
    for (const { id, x, y, width, height } of shapes.jumpers)
      expect(nearestHit(shapes, { x: x + width / 2, y: y + height / 2 }, 5)).toEqual({
        kind: 'jumper',
        id,
      })
  })

  test('beside a thin line, within a thumb: the nearest; further off: nothing', () => {
    const wire = shapes.wires.find(each => each.number === 27)
    const [from, to] = wire?.points ?? []
    if (!from || !to) throw new Error('no wire 27')
    const at = { x: from.x - 3, y: (from.y + to.y) / 2 }
    expect(nearestHit(shapes, at, 22 / 4)).toEqual({ kind: 'wire', number: 27 })
    expect(nearestHit(shapes, { x: 60, y: 100 }, 22 / 26)).toBeUndefined()
  })

  test('the smaller the drawing, the further a finger reaches on it', () => {
    const inside = { x: 62, y: 85 }
    const far = nearestHit(shapes, inside, 22 / 1.5)
    expect(far).toBeDefined()
    expect(nearestHit(shapes, inside, 22 / 26)).toBeUndefined()
  })
})

test('a path of straight runs is read as it was written', () => {
  expect(pointsOf('M1.5 -2L3 4L-0.25 0')).toEqual([
    { x: 1.5, y: -2 },
    { x: 3, y: 4 },
    { x: -0.25, y: 0 },
  ])
})

test('a turned text takes its room upwards', () => {
  const [flat, turned] = [false, true].map(each => textBox({ x: 10, y: 10 }, '120 V', 2, each))
  expect(flat?.width).toBe(turned?.height)
  expect(flat?.height).toBe(turned?.width)
  expect((flat?.x ?? 0) + (flat?.width ?? 0) / 2).toBeCloseTo(10)
})
