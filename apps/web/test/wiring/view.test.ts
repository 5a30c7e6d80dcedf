import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Point, Size, View } from '../../src/screens/wiring/view.ts'
import {
  fitted,
  keptIn,
  pinched,
  scaledAbout,
  scaleWithin,
  shiftToShow,
  toPaper,
  toWindow,
} from '../../src/screens/wiring/view.ts'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const point: fc.Arbitrary<Point> = fc.record({ x: number(-500, 1500), y: number(-500, 1500) })
const view: fc.Arbitrary<View> = fc.record({
  scale: number(0.2, 30),
  x: number(-4000, 4000),
  y: number(-4000, 4000),
})
const size = (min: number, max: number): fc.Arbitrary<Size> =>
  fc.record({ width: number(min, max), height: number(min, max) })

const near = (a: Point, b: Point): void => {
  expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(1e-6 * (1 + Math.hypot(a.x, a.y)))
}

describe('a view', () => {
  test('shows at a place of the window what is there, and back', () => {
    fc.assert(fc.property(view, point, (v, at) => near(toWindow(v, toPaper(v, at)), at)))
  })

  test('that is scaled keeps the place under the pointer', () => {
    fc.assert(
      fc.property(view, point, number(0.2, 30), (v, at, scale) =>
        near(toPaper(scaledAbout(v, at, scale), at), toPaper(v, at)),
      ),
    )
  })

  test('that is pinched keeps the place between the fingers between them, wherever they go', () => {
    const middle = (a: Point, b: Point) => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 })
    fc.assert(
      fc.property(view, point, point, point, point, (v, a, b, c, d) => {
        const after = pinched(v, [a, b], [c, d], scale => Math.min(26, Math.max(0.5, scale)))
        near(toPaper(after, middle(c, d)), toPaper(v, middle(a, b)))
      }),
    )
  })

  test('that is pinched keeps what is under each finger there, where the scale is allowed', () => {
    const v: View = { scale: 2, x: 10, y: 20 }
    const before = [
      { x: 100, y: 100 },
      { x: 200, y: 100 },
    ] as const
    const after = [
      { x: 60, y: 130 },
      { x: 280, y: 130 },
    ] as const
    const pinch = pinched(v, before, after, scale => scale)
    for (const [index, at] of before.entries())
      near(toPaper(pinch, after[index] ?? at), toPaper(v, at))
  })

  test('that fits has the whole paper in the window', () => {
    fc.assert(
      fc.property(size(20, 700), size(100, 2000), (paper, room) => {
        const v = fitted(paper, room)
        const [from, to] = [
          toWindow(v, { x: 0, y: 0 }),
          toWindow(v, { x: paper.width, y: paper.height }),
        ]
        expect(Math.min(from.x, from.y)).toBeGreaterThanOrEqual(-1e-6)
        expect(to.x).toBeLessThanOrEqual(room.width + 1e-6)
        expect(to.y).toBeLessThanOrEqual(room.height + 1e-6)
      }),
    )
  })

  test('never loses the paper, and is left alone where it has it', () => {
    fc.assert(
      fc.property(view, size(20, 700), size(200, 2000), (v, paper, room) => {
        const scale = scaleWithin(v.scale, paper, room)
        const kept = keptIn({ ...v, scale }, paper, room)
        expect(kept.x).toBeLessThan(room.width)
        expect(kept.y).toBeLessThan(room.height)
        expect(kept.x + paper.width * scale).toBeGreaterThan(0)
        expect(kept.y + paper.height * scale).toBeGreaterThan(0)
        expect(keptIn(kept, paper, room)).toEqual(kept)
      }),
    )
    const fit = fitted({ width: 186, height: 200 }, { width: 360, height: 320 })
    expect(keptIn(fit, { width: 186, height: 200 }, { width: 360, height: 320 })).toEqual(fit)
  })

  test('moves only as far as it must to show something', () => {
    const room = { width: 300, height: 300 }
    const v: View = { scale: 4, x: 0, y: 0 }
    expect(shiftToShow(v, { x: 20, y: 20, width: 10, height: 10 }, room)).toEqual({ x: 0, y: 0 })
    const by = shiftToShow(v, { x: 100, y: 20, width: 10, height: 10 }, room)
    expect(by).toEqual({ x: 300 - 24 - 440, y: 0 })
  })
})
