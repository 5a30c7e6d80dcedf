import { assert, test } from 'vitest'
import { complex } from '../../../../src/base/complex.ts'
import { compileNetwork } from '../../../../src/engines/circuit/compile-network.ts'
import type { Element, Network } from '../../../../src/engines/circuit/network.ts'
import { findStructuralFaults } from '../../../../src/engines/circuit/structure.ts'
import { netlist } from '../support/netlist.ts'

const SOUND = `
  source s l1 n 120
  impedance h l1 n 10`

const CASES: readonly { name: string; network: Network; faults: readonly unknown[] }[] = [
  { name: 'a sound network', network: netlist(SOUND), faults: [] },
  {
    name: 'a lead in the air',
    network: netlist(`${SOUND}\nimpedance lead l1 air 0.01`),
    faults: [{ reason: 'dangling-node', node: 'air', element: 'lead' }],
  },
  {
    name: 'two parts without a path to the reference',
    network: netlist(`${SOUND}\nimpedance p a b 5\nimpedance q b a 5\nimpedance r x y 5`),
    faults: [
      { reason: 'island-without-reference', nodes: ['a', 'b'] },
      { reason: 'island-without-reference', nodes: ['x', 'y'] },
      { reason: 'dangling-node', node: 'x', element: 'r' },
      { reason: 'dangling-node', node: 'y', element: 'r' },
    ],
  },
  {
    name: 'an open contact joins: it has a finite resistance',
    network: netlist(`${SOUND}\ncontact k l1 a open\nimpedance p a n 5`),
    faults: [],
  },
  {
    name: 'the sides of a transformer do not join',
    network: netlist(`${SOUND}\ntransformer t l1 n a b 10 1 0,5000\nimpedance p a b 5`),
    faults: [{ reason: 'island-without-reference', nodes: ['a', 'b'] }],
  },
  {
    name: 'a secondary with one tie',
    network: netlist(`${SOUND}\ntransformer t l1 n a b 10 1 0,5000\nimpedance p a n 5`),
    faults: [{ reason: 'dangling-node', node: 'b', element: 't' }],
  },
  {
    name: 'an id used three times is named once',
    network: netlist(`${SOUND}\nimpedance h l1 n 10\nmeter h l1 n 10`),
    faults: [{ reason: 'duplicate-element', element: 'h' }],
  },
  {
    name: 'ideal sources that close a loop, and a firm one that does not count',
    network: netlist(`
      source a l1 n 120 1e-7
      source firm l2 n 120 1e-6
      source b l2 l1 240 1e-7
      source c n l2 120 1e-7
      impedance h l1 n 10`),
    faults: [{ reason: 'source-loop', elements: ['a', 'b', 'c'] }],
  },
  {
    name: 'ideal sources in parallel',
    network: netlist('source a l1 n 120 1e-7\nsource b l1 n 120 1e-7\nimpedance h l1 n 10'),
    faults: [{ reason: 'source-loop', elements: ['a', 'b'] }],
  },
  {
    name: 'a frequency that is none',
    network: netlist(SOUND, 0),
    faults: [{ reason: 'bad-frequency', hertz: 0 }],
  },
]

for (const { name, network, faults } of CASES)
  test(`structure: ${name}`, () => {
    assert.deepEqual(findStructuralFaults(network), faults)
  })

const BETWEEN = ['l1', 'n'] as const
const transformer = {
  kind: 'transformer',
  id: 'x',
  primary: BETWEEN,
  secondary: ['l1', 'n'],
  ratio: 10,
  seriesOhms: complex(1),
  magnetisingOhms: complex(0, 1e4),
} as const
const contact = {
  kind: 'contact',
  id: 'x',
  between: BETWEEN,
  closedOhms: 1,
  openOhms: 2,
  closed: true,
} as const
const source = {
  kind: 'source',
  id: 'x',
  between: BETWEEN,
  volts: complex(1),
  ohms: complex(1),
} as const

const BAD_VALUES: readonly [what: string, element: Element][] = [
  ['ohms', { kind: 'impedance', id: 'x', between: BETWEEN, ohms: complex(0) }],
  ['ohms', { kind: 'impedance', id: 'x', between: BETWEEN, ohms: complex(-1, 5) }],
  ['ohms', { kind: 'impedance', id: 'x', between: BETWEEN, ohms: complex(Number.NaN) }],
  ['ohms', { kind: 'impedance', id: 'x', between: BETWEEN, ohms: complex(1e16) }],
  ['ohms', { kind: 'impedance', id: 'x', between: BETWEEN, ohms: complex(1e-10) }],
  ['ohms', { kind: 'meter', id: 'x', between: BETWEEN, ohms: Number.POSITIVE_INFINITY }],
  ['ohms', { kind: 'meter', id: 'x', between: BETWEEN, ohms: -1e6 }],
  ['farads', { kind: 'capacitor', id: 'x', between: BETWEEN, farads: 0 }],
  ['farads', { kind: 'capacitor', id: 'x', between: BETWEEN, farads: Number.NaN }],
  ['closedOhms', { ...contact, closedOhms: 0 }],
  ['openOhms', { ...contact, openOhms: 0.5 }],
  ['openOhms', { ...contact, openOhms: Number.POSITIVE_INFINITY }],
  ['volts', { ...source, volts: complex(0, Number.NaN) }],
  ['ohms', { ...source, ohms: complex(0) }],
  ['ratio', { ...transformer, ratio: 0 }],
  ['ratio', { ...transformer, ratio: -10 }],
  ['seriesOhms', { ...transformer, seriesOhms: complex(0) }],
  ['magnetisingOhms', { ...transformer, magnetisingOhms: complex(0) }],
]

for (const [index, [what, element]] of BAD_VALUES.entries())
  test(`structure: value ${index}, ${what} of ${element.kind}`, () => {
    const sound = netlist(SOUND)
    const network = { ...sound, elements: [...sound.elements, element] }
    const faults = [{ reason: 'bad-value' as const, element: 'x', what }]
    assert.deepEqual(findStructuralFaults(network), faults)
    assert.deepEqual(compileNetwork(network), {
      ok: false,
      failure: { reason: 'structure', faults },
    })
  })

test('compiling: a dangling node is no obstacle, an island is', () => {
  const dangling = netlist(`${SOUND}\nimpedance lead l1 air 0.01`)
  const island = netlist(`${SOUND}\nimpedance p a b 5`)
  assert.isTrue(compileNetwork(dangling).ok)
  assert.deepEqual(compileNetwork(island), {
    ok: false,
    failure: {
      reason: 'structure',
      faults: [{ reason: 'island-without-reference', nodes: ['a', 'b'] }],
    },
  })
})
