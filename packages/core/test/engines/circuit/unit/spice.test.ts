import { assert, test } from 'vitest'
import { magnitude, subtract } from '../../../../src/base/complex.ts'
import { writeSpiceNetlist } from '../../../../src/engines/circuit/spice.ts'
import { netlist } from '../support/netlist.ts'
import { startSimulator } from '../support/simulator.ts'
import { solved } from '../support/solve.ts'

const EVERY_KIND = netlist(
  `source s1 l1 n 0,-120 0.025,0.01
   impedance load l1 n 10,5
   impedance odd l1 m 10,-5
   impedance coil m n 0,5
   capacitor c l1 n 1e-5
   contact k l1 a closed
   contact off a n open
   meter v a n 1e7
   transformer t l1 n p q 10 0.7 1,14000
   impedance e p q 20
   impedance i q n 5e6`,
  50,
)

// The reactances over 2π·50 Hz are the only figures here that are not in the lines above.
const OMEGA = 2 * Math.PI * 50
const EXPECTED = `* one frequency, 50 Hz, RMS
R1 1 1x 0.025
L1 1x 1e ${0.01 / OMEGA}
V1 1e 0 DC 0 AC 120 -90
R2 1 2x 10
L2 2x 0 ${5 / OMEGA}
R3 1 3x 10
C3 3x 2 ${1 / (OMEGA * 5)}
L4 2 0 ${5 / OMEGA}
C5 1 0 0.00001
R6 1 3 0.002
R7 3 0 1000000000
R8 3 0 10000000
R9m 1 9mx 1
L9m 9mx 0 ${14000 / OMEGA}
R9s 4 9a 0.7
V9s 9a 9e DC 0
E9 9e 5 1 0 0.1
F9 1 0 V9s -0.1
R10 4 5 20
R11 5 0 5000000
.ac lin 1 50 50
.end
`

test('spice: every kind of element, line by line', () => {
  assert.strictEqual(writeSpiceNetlist(EVERY_KIND).text, EXPECTED)
})

test('spice: the map leads back to our ids and survives JSON', () => {
  const { map } = writeSpiceNetlist(EVERY_KIND)
  assert.deepEqual(map.nodes, { 0: 'n', 1: 'l1', 2: 'm', 3: 'a', 4: 'p', 5: 'q' })
  assert.strictEqual(map.elements['C3'], 'odd')
  assert.strictEqual(map.elements['F9'], 't')
  assert.strictEqual(map.elements['V1'], 's1')
  assert.lengthOf(Object.keys(map.elements), 20)
  assert.deepEqual(JSON.parse(JSON.stringify(map)), map)
})

test('spice: contacts are written in the state asked for', () => {
  const { text } = writeSpiceNetlist(EVERY_KIND, new Set(['off']))
  assert.include(text, 'R6 1 3 1000000000\nR7 3 0 0.002\n')
})

test('spice: no id of ours reaches the text', () => {
  const hostile = netlist('source s\u00a0x l1 n 120\nimpedance .end l1 n 10')
  const { text } = writeSpiceNetlist(hostile)
  assert.strictEqual(text.split('.end').length, 2)
})

test('spice: the simulator solves what is written, transformer and all', async () => {
  const solution = solved(EVERY_KIND)
  const theirs = await (await startSimulator()).solve(writeSpiceNetlist(EVERY_KIND))
  for (const [node, volts] of theirs)
    assert.isAtMost(magnitude(subtract(volts, solution.volts(node))), 1e-9 * 120, node)
  assert.strictEqual(theirs.size, 6)
}, 20_000)

test('spice: a netlist that the simulator cannot solve is an error, not a voltage of 0', async () => {
  const simulator = await startSimulator()
  const broken = { text: 'nonsense\nR1 1\n.end\n', map: { nodes: { 1: 'a' }, elements: {} } }
  const thrown = await simulator.solve(broken).then(
    () => undefined,
    (error: unknown) => error,
  )
  assert.instanceOf(thrown, Error)
}, 20_000)
