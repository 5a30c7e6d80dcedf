import { assert, test } from 'vitest'
import type { ResistanceOptions } from '../../../../src/engines/circuit/resistance-between.ts'
import { resistanceBetween } from '../../../../src/engines/circuit/resistance-between.ts'
import { netlist } from '../support/netlist.ts'

interface Case {
  readonly name: string
  readonly text: string
  readonly options?: ResistanceOptions
  /** Ohms between a and b, or undefined for no path. */
  readonly ohms: number | undefined
}

const CASES: readonly Case[] = [
  { name: 'one resistor', text: 'impedance r a b 12.8', ohms: 12.8 },
  { name: 'reactance does not count', text: 'impedance r a b 4,400', ohms: 4 },
  { name: 'a pure inductance is a short', text: 'impedance r a b 0,400', ohms: 0 },
  {
    name: 'a short leads on',
    text: 'impedance r a x 0,4\nimpedance s x b 5\nimpedance t b y 0,4\nimpedance u y a 20',
    ohms: 4,
  },
  { name: 'a capacitor is open', text: 'capacitor c a b 1e-5', ohms: undefined },
  { name: 'so is a capacitive reactance', text: 'impedance r a b 4,-400', ohms: undefined },
  { name: 'a closed contact', text: 'contact k a b closed', ohms: 0.002 },
  { name: 'an open contact is its insulation', text: 'contact k a b open', ohms: 1e9 },
  {
    name: 'contacts as asked, not as they start',
    text: 'contact k a b open\ncontact l a b closed',
    options: { closedContacts: new Set(['k']) },
    ohms: 1 / (1 / 0.002 + 1e-9),
  },
  { name: 'a source is unplugged', text: 'source s a b 120 0.5', ohms: undefined },
  {
    name: 'a source leaves its resistance when asked',
    text: 'source s a b 120 0.5,3',
    options: { sources: 'resistance' },
    ohms: 0.5,
  },
  { name: 'a meter that stays connected', text: 'meter m a b 1e7', ohms: 1e7 },
  { name: 'a primary', text: 'transformer t a b p q 10 0.7 35,14000', ohms: 35 },
  { name: 'a secondary', text: 'transformer t p q a b 10 0.7 35,14000', ohms: 0.7 },
  { name: 'through a transformer', text: 'transformer t a p q b 10 0.7 35,14000', ohms: undefined },
  {
    name: 'a bridge that balances, its middle without effect',
    text: `impedance p a x 1\nimpedance q x b 2\nimpedance r a y 10\nimpedance s y b 20
      impedance m x y 7`,
    ohms: 1 / (1 / 3 + 1 / 30),
  },
  {
    name: 'one element of two open doubles the reading',
    text: 'impedance p a b 12.8\ncontact k a x open\nimpedance q x b 12.8',
    ohms: 1 / (1 / 12.8 + 1 / (1e9 + 12.8)),
  },
  {
    name: 'parts that nothing joins to the two do not count',
    text: 'impedance r a b 5\nimpedance s x y 5',
    ohms: 5,
  },
]

for (const { name, text, options, ohms } of CASES)
  test(`resistance: ${name}`, () => {
    const network = netlist(text)
    for (const [from, to] of [['a', 'b'] as const, ['b', 'a'] as const]) {
      const read = resistanceBetween(network, from, to, options)
      if (ohms === undefined) {
        assert.deepEqual(read, { ok: false, failure: { reason: 'no-path', between: [from, to] } })
        continue
      }
      assert(read.ok)
      assert.isAtMost(Math.abs(read.value - ohms), 1e-14 * ohms)
    }
  })

test('resistance: twelve decades in one path keep every digit', () => {
  const text = 'contact k a x closed\nimpedance i x b 2e9\nimpedance j x y 5\nimpedance l y b 1e7'
  const read = resistanceBetween(netlist(text), 'a', 'b')
  assert(read.ok)
  const exact = 0.002 + 1 / (1 / 2e9 + 1 / (1e7 + 5))
  assert.isAtMost(Math.abs(read.value - exact), 1e-15 * exact)
})

test('resistance: of a node to itself, of a node that is not there, of a value that is none', () => {
  const network = netlist('impedance r a b 5')
  assert.deepEqual(resistanceBetween(network, 'a', 'a'), { ok: true, value: 0 })
  assert.deepEqual(resistanceBetween(network, 'a', 'q'), {
    ok: false,
    failure: { reason: 'unknown-node', node: 'q' },
  })
  assert.deepEqual(resistanceBetween(netlist('impedance r a b -5'), 'a', 'b'), {
    ok: false,
    failure: {
      reason: 'structure',
      faults: [{ reason: 'bad-value', element: 'r', what: 'ohms' }],
    },
  })
})
