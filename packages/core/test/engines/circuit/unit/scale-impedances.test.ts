import { assert, test } from 'vitest'
import { compileNetwork } from '../../../../src/engines/circuit/compile-network.ts'
import { scaleImpedances } from '../../../../src/engines/circuit/scale-impedances.ts'
import { solveNetwork } from '../../../../src/engines/circuit/solve-network.ts'
import { netlist } from '../support/netlist.ts'

const text = (ohms: string) =>
  `source s a n 120 0.025\ncontact k a b closed\nimpedance m b c ${ohms}\nimpedance w c n 0.1\nimpedance i b n 5e7`

const compiled = (of: string) => {
  const outcome = compileNetwork(netlist(of))
  assert.isTrue(outcome.ok)
  if (!outcome.ok) throw new Error('structure')
  return outcome.value
}

test('scaling: the same as a network written with the other value, bit by bit', () => {
  const scaled = solveNetwork(scaleImpedances(compiled(text('12,8')), new Map([['m', 0.5]])))
  const written = solveNetwork(compiled(text('6,4')))
  for (const node of ['a', 'b', 'c']) assert.deepEqual(scaled.volts(node), written.volts(node))
  for (const id of ['s', 'm', 'w', 'i']) assert.deepEqual(scaled.current(id), written.current(id))
  assert.isAtMost(scaled.kclResidual, 1e-12)
  assert.isAtMost(scaled.powerBalance, 1e-12)
})

test('scaling: the network that was given stays as it was, names it does not have are ignored', () => {
  const own = compiled(text('12,8'))
  const before = solveNetwork(own).current('m')
  scaleImpedances(
    own,
    new Map([
      ['m', 0.5],
      ['nothing', 2],
      ['k', 3],
    ]),
  )
  assert.deepEqual(solveNetwork(own).current('m'), before)
})
