import { assert, test } from 'vitest'
import { complex, scale, subtract } from '../../../../src/base/complex.ts'
import type { Route } from '../../../../src/engines/circuit/compile-network.ts'
import { compileNetwork } from '../../../../src/engines/circuit/compile-network.ts'
import { solveNetwork } from '../../../../src/engines/circuit/solve-network.ts'
import { netlist } from '../support/netlist.ts'
import { distance, largestDistance, solved } from '../support/solve.ts'

const SUPPLY = 'source s1 l1 n 120 0.025\nsource s2 l2 n -120 0.025\n'

/** Which route each shape takes, and why. */
const ROUTES: readonly { why: string; text: string; route: Route }[] = [
  { why: 'no transformer', text: 'impedance h l1 l2 10', route: 'star-mesh' },
  {
    why: 'one tie of insulation',
    text: 'transformer t l1 n a b 10 1 0,5e3\nimpedance e a b 50\nimpedance i b n 5e6',
    route: 'star-mesh',
  },
  {
    why: 'an end of the secondary lies on the reference itself',
    text: 'transformer t l1 l2 a n 10 1 0,5e3\nimpedance e a n 50',
    route: 'star-mesh',
  },
  {
    why: 'an end of the secondary lies on a live node, which is still one tie',
    text: 'transformer t l1 n a l2 10 1 0,5e3\nimpedance e a l2 50',
    route: 'star-mesh',
  },
  {
    why: 'two ties to one and the same node close no loop through the primary',
    text: 'transformer t l1 l2 a b 10 1 0,5e3\nimpedance i a n 5e6\nimpedance j b n 5e6',
    route: 'star-mesh',
  },
  {
    why: 'two ties to two nodes of the primary side',
    text: 'transformer t l1 n a b 10 1 0,5e3\nimpedance i a l1 5e6\nimpedance j b n 5e6',
    route: 'pivoted-lu',
  },
  {
    why: 'an open contact counts as a tie',
    text: 'transformer t l1 n a b 10 1 0,5e3\ncontact k a l1 open\nimpedance j b n 5e6',
    route: 'pivoted-lu',
  },
  {
    why: 'an autotransformer',
    text: 'transformer t l1 m m n 1 1 0,5e3\nimpedance e m n 50',
    route: 'pivoted-lu',
  },
  {
    why: 'a booster in series with the load',
    text: 'transformer t l1 n b l1 10 1 0,5e3\nimpedance e b n 50',
    route: 'pivoted-lu',
  },
  {
    why: 'a secondary that feeds a second transformer',
    text: `transformer t l1 n a b 10 1 0,5e3\nimpedance i b n 5e6
      transformer u a b c d 2 1 0,50\nimpedance e c d 5\nimpedance j d a 5e6`,
    route: 'star-mesh',
  },
  {
    why: 'two secondaries in parallel close a loop of windings',
    text: `transformer t l1 n a b 10 1 0,5e3\ntransformer u l1 n a b 10 1 0,5e3
      impedance e a b 5\nimpedance i b n 5e6`,
    route: 'pivoted-lu',
  },
  {
    why: 'a winding shorted upon one node',
    text: 'transformer t l1 n a a 10 1 0,5e3\nimpedance i a n 5e6',
    route: 'pivoted-lu',
  },
]

for (const { why, text, route } of ROUTES)
  test(`transformer: ${route} for ${why}`, () => {
    const network = netlist(SUPPLY + text)
    const solution = solved(network)
    assert.strictEqual(solution.route, route)
    const general = solved(network, undefined, { route: 'pivoted-lu' })
    const bound = solution.errorBound + general.errorBound
    assert.isAtMost(largestDistance(network, solution, general), bound)
    assert.isBelow(bound, 1e-9)
  })

// By hand: 12 V behind 0.5 Ω over 2.5 Ω gives 4 A and 10 V; the primary takes a tenth of it, and
// 120 V over j600 Ω magnetises with −j0.2 A.
test('transformer: volts, amps and watts by hand', () => {
  const text = 'transformer t l1 n a b 10 0.5 0,600\nimpedance e a b 2.5\nimpedance i b n 5e6'
  const solution = solved(netlist(`source s l1 n 120 1e-6\n${text}`))
  const close = (value: { re: number; im: number }, re: number, im = 0) =>
    assert.isAtMost(distance(value, complex(re, im)), 1e-5)
  close(subtract(solution.volts('a'), solution.volts('b')), 10)
  close(solution.volts('b'), 0)
  close(solution.secondaryCurrent('t'), -4)
  close(solution.current('e'), 4)
  close(solution.current('t'), 0.4, -0.2)
  close(solution.current('i'), 0)
  close(solution.power('t'), 8, 24) // 4²·0.5 W and 120·0.2 var
  close(solution.power('e'), 40)
  close(solution.power('s'), -48, -24)
})

test('transformer: polarity follows the order of the terminals', () => {
  const volts = (secondary: string): number => {
    const text = `transformer t l1 n ${secondary} 10 0.5 0,600\nimpedance e a b 2.5`
    const solution = solved(netlist(`${SUPPLY + text}\nimpedance i b n 5e6`))
    return solution.volts('a').re
  }
  assert.isAbove(volts('a b'), 9)
  assert.isBelow(volts('b a'), -9)
})

test('transformer: a secondary rides on what it is tied to', () => {
  const text = 'transformer t l1 n a b 10 0.5 0,600\nimpedance e a b 2.5'
  const low = solved(netlist(`${SUPPLY + text}\nimpedance i b n 5e6`))
  const high = solved(netlist(`${SUPPLY + text}\nimpedance i b l2 5e6`))
  assert.isAtMost(distance(high.volts('b'), high.volts('l2')), 1e-10)
  const shift = subtract(high.volts('a'), low.volts('a'))
  assert.isAtMost(distance(shift, high.volts('l2')), 1e-10)
})

test('transformer: two in a row divide twice, from either end', () => {
  const chain = `transformer t l1 n a b 10 1e-3 0,5e3
    transformer u a b c d 2 1e-3 0,500
    impedance e c d 60
    impedance i b n 5e6
    impedance j d n 5e6`
  const solution = solved(netlist(SUPPLY + chain))
  assert.strictEqual(solution.route, 'star-mesh')
  const out = subtract(solution.volts('c'), solution.volts('d'))
  assert.isAtMost(distance(out, complex(6)), 0.01)
})

test('transformer: seen from its secondary when the supply is there', () => {
  const text = `source s l1 n 12 0.01
    transformer t a b l1 n 10 0.05 1e4
    impedance e a b 500
    impedance i b n 5e6`
  const network = netlist(text)
  const solution = solved(network)
  assert.strictEqual(solution.route, 'star-mesh')
  const out = subtract(solution.volts('a'), solution.volts('b'))
  // 12 V behind 0.06 Ω over (500 ∥ 1e4)/100 Ω, times 10.
  const seen = 1 / (1 / 5 + 1 / 100)
  assert.isAtMost(distance(out, complex((120 * seen) / (seen + 0.06))), 1e-9)
  assert.isAtMost(distance(scale(solution.current('t'), -1), solution.current('e')), 1e-9)
})

// 1e-9 Ω against 1e9 Ω is more than a double can hold in one sum.
test('transformer: the general route says when decades lie too far apart for it', () => {
  const boundWith = (ohms: number): number => {
    const text = `transformer t l1 n a b 10 1 0,5e3
      impedance k a c ${ohms}
      impedance e c b 20
      impedance i a l1 1e9
      impedance j b n 2e9`
    const compiled = compileNetwork(netlist(SUPPLY + text))
    assert(compiled.ok)
    assert.strictEqual(compiled.value.route, 'pivoted-lu')
    return solveNetwork(compiled.value).errorBound
  }
  assert.isBelow(boundWith(1e-3), 1e-11)
  assert.isAbove(boundWith(1e-9), 1)
})
