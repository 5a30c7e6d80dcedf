import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { complex } from '../../../../src/base/complex.ts'
import type { Cold, ColdElement, Network } from '../../../../src/index.ts'
import { ohmBounds, ohmsBetween, resistanceBetween } from '../../../../src/index.ts'
import { coldDemo } from './cold-job.ts'

// Fixed, so that two runs test the same; fast-check prints it with the counterexample.
const RUNS = { seed: 20_261, numRuns: 200 }
const NODES = ['a', 'b', 'c', 'd', 'e', 'f']
const node = fc.constantFrom(...NODES)

/** Ohms over six decades, each with a band. */
const ohms = fc
  .record({
    decade: fc.integer({ min: -2, max: 4 }),
    size: fc.double({ min: 1, max: 10, noNaN: true }),
  })
  .map(({ decade, size }) => size * 10 ** decade)

const element = fc.record({
  between: fc.tuple(node, node),
  ohms,
  share: fc.double({ min: 0, max: 0.5, noNaN: true }),
  isKnown: fc.boolean(),
})

/** A connected network: a ring of all nodes, and some more between any two. */
const elements = (mayAsk: boolean) =>
  fc
    .tuple(fc.array(ohms, { minLength: 6, maxLength: 6 }), fc.array(element, { maxLength: 8 }))
    .map(([ring, more]): readonly ColdElement[] => [
      ...ring.map(
        (value, index): ColdElement => ({
          id: `ring-${index}`,
          between: [NODES[index] ?? 'a', NODES[(index + 1) % 6] ?? 'a'],
          role: 'joint',
          ohms: { least: value, expected: value, greatest: value },
        }),
      ),
      ...more.map(
        ({ between, ohms: value, share, isKnown }, index): ColdElement => ({
          id: `more-${index}`,
          between,
          role: 'part',
          part: { kind: 'winding', subject: `more-${index}`, of: 'a motor', name: `${index}` },
          ...(isKnown || !mayAsk
            ? {
                ohms: {
                  least: value * (1 - share),
                  expected: value,
                  greatest: value * (1 + share),
                },
              }
            : {}),
        }),
      ),
    ])

const coldWith = (of: readonly ColdElement[]): Cold => ({
  ...coldDemo(),
  elements: of,
  isolated: [],
})
const near = (a: number, b: number) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(a, b))
const rises = (a: number, b: number) => expect(a).toBeLessThanOrEqual(b * (1 + 1e-9))

describe('laws of ohms', () => {
  test('the same both ways round', () => {
    fc.assert(
      fc.property(elements(true), node, node, (all, a, b) => {
        const cold = coldWith(all)
        const [to, from] = [ohmBounds(cold, a, b), ohmBounds(cold, b, a)]
        near(to.least, from.least)
        if (to.greatest < Number.POSITIVE_INFINITY) near(to.greatest, from.greatest)
        expect(ohmsBetween(cold, a, b).kind).toBe(ohmsBetween(cold, b, a).kind)
      }),
      RUNS,
    )
  })

  test('never fall when one resistance rises (Rayleigh)', () => {
    fc.assert(
      fc.property(
        elements(false),
        fc.nat(13),
        fc.double({ min: 1, max: 1e3, noNaN: true }),
        node,
        node,
        (all, index, factor, a, b) => {
          const raised = all.map((each, at) =>
            at === index % all.length && each.ohms
              ? {
                  ...each,
                  ohms: {
                    least: each.ohms.least * factor,
                    expected: each.ohms.expected * factor,
                    greatest: each.ohms.greatest * factor,
                  },
                }
              : each,
          )
          const [before, after] = [
            ohmBounds(coldWith(all), a, b),
            ohmBounds(coldWith(raised), a, b),
          ]
          rises(before.least, after.least)
          rises(before.greatest, after.greatest)
        },
      ),
      RUNS,
    )
  })

  test('keep to the triangle: a to c is no more than a to b and b to c', () => {
    fc.assert(
      fc.property(elements(false), node, node, node, (all, a, b, c) => {
        const cold = coldWith(all)
        const ohmsOf = (from: string, to: string) => ohmBounds(cold, from, to).least
        rises(ohmsOf(a, c), ohmsOf(a, b) + ohmsOf(b, c))
      }),
      RUNS,
    )
  })

  test('lie within their bounds wherever in its own each element lies', () => {
    fc.assert(
      fc.property(
        elements(true),
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 14, maxLength: 14 }),
        node,
        node,
        (all, shares, a, b) => {
          fc.pre(a !== b)
          const inside: Network = {
            hertz: 60,
            reference: a,
            elements: all.flatMap((each, index) => {
              const { least, greatest } = each.ohms ?? { least: 0.1, greatest: 1e5 }
              const value = least + (shares[index] ?? 0) * (greatest - least)
              return each.between[0] === each.between[1]
                ? []
                : [
                    {
                      kind: 'impedance' as const,
                      id: each.id,
                      between: each.between,
                      ohms: complex(value),
                    },
                  ]
            }),
          }
          const value = resistanceBetween(inside, a, b)
          if (!value.ok) throw new Error(value.failure.reason)
          const { least, greatest } = ohmBounds(coldWith(all), a, b)
          rises(least, value.value)
          rises(value.value, greatest)
        },
      ),
      RUNS,
    )
  })

  test('are never shown where an unknown decides, and always where none is there', () => {
    fc.assert(
      fc.property(elements(true), node, node, (all, a, b) => {
        const reading = ohmsBetween(coldWith(all), a, b)
        if (all.every(each => each.ohms)) expect(reading.kind).not.toBe('not-shown')
        if (reading.kind === 'not-shown') expect(reading.asks.length).toBeGreaterThan(0)
        if (reading.kind !== 'ohms') return
        expect(reading.low).toBeLessThanOrEqual(reading.expected)
        expect(reading.high).toBeGreaterThanOrEqual(reading.expected)
      }),
      RUNS,
    )
  })

  test('every unknown answered, the reading is shown', () => {
    fc.assert(
      fc.property(elements(true), node, node, (all, a, b) => {
        const reading = ohmsBetween(coldWith(all), a, b)
        if (reading.kind !== 'not-shown') return
        const asked = new Set(reading.asks.map(each => each.subject))
        const answered = all.map(each =>
          each.part && asked.has(each.part.subject)
            ? { ...each, ohms: { least: 5, expected: 5, greatest: 5 } }
            : each,
        )
        expect(ohmsBetween(coldWith(answered), a, b).kind).toBe('ohms')
      }),
      RUNS,
    )
  })
})

describe('the ohmmeter', () => {
  test('two elements side by side: their product over their sum', () => {
    const pair = (r: number, s: number): readonly ColdElement[] =>
      [r, s].map((value, index) => ({
        id: `r${index}`,
        between: ['a', 'b'],
        role: 'joint',
        ohms: { least: value, expected: value, greatest: value },
      }))
    fc.assert(
      fc.property(ohms, ohms, (r, s) => {
        near(ohmBounds(coldWith(pair(r, s)), 'a', 'b').least, (r * s) / (r + s))
      }),
      RUNS,
    )
  })

  test('reads what the engine’s own reads on the same network', () => {
    const { elements: all } = coldDemo()
    const known = all.filter(each => each.ohms)
    const network: Network = {
      hertz: 60,
      reference: 'earth',
      elements: known.map(({ id, between, ohms: value }) => ({
        kind: 'impedance',
        id,
        between,
        ohms: complex(value?.expected ?? 0),
      })),
    }
    for (const [a, b] of [
      ['box:HT-1', 'box:HT-2'],
      ['box:PE', 'gf:EARTH'],
      ['box:RET-A', 'box:L2'],
    ] as const) {
      const engine = resistanceBetween(network, a, b)
      const reading = ohmsBetween(coldWith(known), a, b)
      if (!engine.ok || reading.kind !== 'ohms') throw new Error('no reading')
      near(reading.expected, engine.value)
    }
  })

  test('adds its own accuracy: 1 % and 0.2 Ω', () => {
    const exact = (value: number): Cold =>
      coldWith([
        {
          id: 'r',
          between: ['a', 'b'],
          role: 'joint',
          ohms: { least: value, expected: value, greatest: value },
        },
      ])
    expect(ohmsBetween(exact(100), 'a', 'b')).toMatchObject({ low: 98.8, high: 101.2 })
    expect(ohmsBetween(exact(0.1), 'a', 'b')).toMatchObject({ low: 0 })
    expect(ohmsBetween(exact(2e6), 'a', 'b').kind).toBe('open')
  })
})
