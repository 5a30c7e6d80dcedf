import { describe, expect, test } from 'vitest'
import type { Complex } from '../../../src/base/complex.ts'
import { add, complex, divide, multiply } from '../../../src/base/complex.ts'
import { around, boxOf, magnitudes } from '../../../src/stages/diagnose/supply/phasor-box.ts'

const NO_LEAKS = { aside: complex(0), leak: 0, ghost: 0 }
const DEGREE = Math.PI / 180

/** Volts from another conductor to the end of a joint of so many ohms, behind it a load of 1 Ω. */
function volts(ohms: number, lag: number, turn: number, other: number): Complex {
  const load = complex(Math.cos(lag * DEGREE), Math.sin(lag * DEGREE))
  const share = divide(load, add(load, complex(ohms)))
  const source = complex(240 * Math.cos(turn * DEGREE), 240 * Math.sin(turn * DEGREE))
  return add(multiply(source, share), complex(other))
}

describe('a box around two phasors', () => {
  test('holds all that lies between them on their circle, whichever way it is turned', () => {
    let bowed = 0
    for (let turn = 0; turn < 360; turn += 7)
      for (const other of [0, 120, -120])
        for (const lag of [0, 26, 45])
          for (let ohms = 0.05; ohms < 40; ohms *= 2) {
            const ends = [volts(ohms, lag, turn, other), volts(2 * ohms, lag, turn, other)]
            const [one, two] = ends.map(each => boxOf(each, NO_LEAKS))
            if (!one || !two) throw new Error('two ends')
            const box = around(one, two)
            const { from, to } = magnitudes(box)
            for (let step = 0; step <= 16; step++) {
              const { re, im } = volts(ohms * (1 + step / 16), lag, turn, other)
              const length = Math.hypot(re, im)
              expect(length).toBeLessThanOrEqual(to + 1e-9)
              expect(length).toBeGreaterThanOrEqual(from - 1e-9)
              const isInside =
                re >= box.re.from && re <= box.re.to && im >= box.im.from && im <= box.im.to
              if (!isInside) bowed++
            }
          }
    // Some of it lies outside the bare box of the two ends.
    expect(bowed).toBeGreaterThan(100)
  })

  test('a ghost may be anything up to its most', () => {
    const box = boxOf(complex(30), { ...NO_LEAKS, ghost: 102 })
    expect(magnitudes(box)).toEqual({ from: 0, to: 102 })
    expect(magnitudes(around(box, boxOf(complex(119), NO_LEAKS))).to).toBeGreaterThan(119)
  })

  test('leaks move it any way, electronics one way', () => {
    const leaking = magnitudes(boxOf(complex(100), { ...NO_LEAKS, leak: 2 }))
    expect(leaking.from).toBeCloseTo(98, 9)
    expect(leaking.to).toBeGreaterThan(102)
    const aside = magnitudes(boxOf(complex(100), { ...NO_LEAKS, aside: complex(-10) }))
    expect(aside.from).toBeCloseTo(89.5, 9)
    expect(aside.to).toBeLessThan(101)
  })
})
