import { assert, test } from 'vitest'
import { complex, magnitude } from '../../../../src/base/complex.ts'
import {
  compileNetwork,
  contactIndex,
  contactStates,
  elementIndex,
  nodeIndex,
} from '../../../../src/engines/circuit/compile-network.ts'
import {
  currentAt,
  solveInto,
  solveNetwork,
} from '../../../../src/engines/circuit/solve-network.ts'
import { makeWorkspace } from '../../../../src/engines/circuit/workspace.ts'
import { netlist } from '../support/netlist.ts'
import { distance, solved } from '../support/solve.ts'

const isNear = (value: number, expected: number, allowed: number): void =>
  assert.isAtMost(Math.abs(value - expected), allowed)

// 12 V over 2 Ω and 4 Ω: 2 A and 8 V; the source absorbs −24 W, of which its own 2 Ω took 8 W.
test('solving: signs are those the README states', () => {
  const solution = solved(netlist('source s a n 12 2\nimpedance r a n 4'))
  assert.deepEqual(solution.volts('n'), complex(0))
  assert.isAtMost(distance(solution.volts('a'), complex(8)), 1e-14)
  assert.isAtMost(distance(solution.current('r'), complex(2)), 1e-14)
  assert.isAtMost(distance(solution.current('s'), complex(-2)), 1e-14)
  assert.isAtMost(distance(solution.power('r'), complex(16)), 1e-13)
  assert.isAtMost(distance(solution.power('s'), complex(-16)), 1e-13)
})

test('solving: an inductor absorbs vars and a capacitor gives them', () => {
  const solution = solved(
    netlist('source s a n 10 1e-6\nimpedance x a n 0,5\ncapacitor c a n 1e-3'),
  )
  assert.isAtMost(distance(solution.current('x'), complex(0, -2)), 1e-4)
  isNear(solution.power('x').im, 20, 1e-3)
  isNear(solution.power('c').im, -100 * 2 * Math.PI * 60 * 1e-3, 1e-2)
})

test('solving: a node on insulation alone stands where the insulation puts it', () => {
  const text = 'source s a n 120\nimpedance i a f 2e7\nimpedance j f n 1e7\ncontact k f g closed'
  const solution = solved(netlist(text))
  isNear(solution.volts('g').re, (120 * 1e7) / (3e7 + 1e-5), 1e-13)
  const current = magnitude(solution.current('i'))
  isNear(current, 4e-6, 1e-16)
})

test('solving: a floating source drives nothing through the leak that ties it', () => {
  const text =
    'source s a b 120 0.025\nimpedance r a b 10\nimpedance i a n 1e9\nimpedance j b n 3e9'
  const solution = solved(netlist(text))
  const load = 1 / (1 / 10 + 1 / 4e9)
  const across = (120 * load) / (load + 0.025)
  isNear(solution.volts('a').re, across / 4, 1e-12)
  isNear(solution.volts('b').re, (-3 * across) / 4, 1e-12)
})

// A meter of 10 MΩ across the lower of two 10 MΩ sees a third, not a half.
test('meter: its own impedance loads what it reads', () => {
  const divider = 'source s a n 120\nimpedance i a f 1e7\nimpedance j f n 1e7'
  isNear(solved(netlist(divider)).volts('f').re, 60, 1e-9)
  isNear(solved(netlist(`${divider}\nmeter m f n 1e7`)).volts('f').re, 40, 1e-9)
  isNear(solved(netlist(`${divider}\nmeter m f n 3e3`)).volts('f').re, 0.036, 1e-4)
})

const SWITCHED = netlist('source s a n 120\ncontact k a b open\nimpedance r b n 12')

test('contacts: initial states, given states, and ids of no contact', () => {
  const on = new Set(['k', 'a contact that was left out'])
  assert.isBelow(magnitude(solved(SWITCHED).volts('b')), 1e-5)
  assert.isAbove(magnitude(solved(SWITCHED, on).volts('b')), 119)
  assert.isBelow(magnitude(solved(SWITCHED, new Set()).volts('b')), 1e-5)
})

test('contacts: one workspace serves any order of states, each solved afresh', () => {
  const compiled = compileNetwork(SWITCHED)
  assert(compiled.ok)
  const work = makeWorkspace(compiled.value)
  const b = nodeIndex(compiled.value, 'b') ?? -1
  const r = elementIndex(compiled.value, 'r') ?? -1
  const states = contactStates(compiled.value, undefined)
  const read = (closed: number): readonly number[] => {
    states[contactIndex(compiled.value, 'k') ?? -1] = closed
    solveInto(compiled.value, states, work)
    return [work.re[b] ?? Number.NaN, currentAt(compiled.value, work, r).re]
  }
  const first = [read(0), read(1)]
  assert.deepEqual([read(0), read(1)], first)
  const named = solveNetwork(compiled.value, new Set(['k']))
  assert.deepEqual(first[1], [named.volts('b').re, named.current('r').re])
})

test('a part with both ends on one node carries its own current and disturbs nothing', () => {
  const text = 'source s a n 120\nimpedance r a n 10'
  const loop = `${text}\nimpedance x a a 5\ncontact k n n closed\nsource t a a 12 3`
  const [plain, looped] = [solved(netlist(text)), solved(netlist(loop))]
  assert.deepEqual(looped.volts('a'), plain.volts('a'))
  assert.strictEqual(magnitude(looped.current('x')), 0)
  isNear(looped.current('t').re, -4, 1e-12)
})

test('an exact resonance has no answer, and the bound says so', () => {
  const text = 'source s a n 120\nimpedance r a n 10\nimpedance l b n 0,10\nimpedance c b n 0,-10'
  for (const route of [{}, { route: 'pivoted-lu' }] as const) {
    const compiled = compileNetwork(netlist(text), route)
    assert(compiled.ok)
    assert.strictEqual(solveNetwork(compiled.value).errorBound, Number.POSITIVE_INFINITY)
  }
})

test('a name that the network does not have is a programmer’s error', () => {
  const solution = solved(SWITCHED)
  assert.throws(() => solution.volts('q'), 'no node "q"')
  assert.throws(() => solution.current('q'), 'no element "q"')
  assert.throws(() => solution.secondaryCurrent('r'), 'no secondary')
})

test('too few refinements show in the bound, never in silence', () => {
  const text = `source s l1 n 120
    transformer t l1 n a b 10 1 0,5e3
    contact k a c closed
    impedance e c b 20
    impedance i a l1 1e9
    impedance j b n 2e9`
  const compiled = compileNetwork(netlist(text))
  assert(compiled.ok)
  const bounds = [0, 12].map(
    refinementsMax => solveNetwork(compiled.value, undefined, { refinementsMax }).errorBound,
  )
  assert.isAbove(bounds[0] ?? 0, 1e-3)
  assert.isBelow(bounds[1] ?? 1, 1e-11)
})
