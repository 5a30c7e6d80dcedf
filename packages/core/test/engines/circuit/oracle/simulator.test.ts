import { assert, test } from 'vitest'
import { magnitude, subtract } from '../../../../src/base/complex.ts'
import { compileNetwork } from '../../../../src/engines/circuit/compile-network.ts'
import type { Element, Network } from '../../../../src/engines/circuit/network.ts'
import { nodesOf } from '../../../../src/engines/circuit/network.ts'
import { solveNetwork } from '../../../../src/engines/circuit/solve-network.ts'
import { writeSpiceNetlist } from '../../../../src/engines/circuit/spice.ts'
import { checkPhysics } from '../../../support/check-physics.ts'
import { randomNetwork } from '../support/random-network.ts'
import { RANDOM_SHAPES, TIED_SHAPES } from '../support/random-shapes.ts'
import { startSimulator } from '../support/simulator.ts'

const OF_SOURCE = 1e-9
const FIRM_OHMS = 10_000

/** A part that by itself holds one end where the other is, against megohms. */
function isFirm(element: Element): boolean {
  switch (element.kind) {
    case 'impedance':
      return magnitude(element.ohms) <= FIRM_OHMS
    case 'contact':
      return element.closed
    case 'source':
      return true
    default:
      return false
  }
}

/** Every node is joined to the reference by firm parts: nothing hangs on insulation alone. */
function isFirmlyHeld(network: Network): boolean {
  const held = new Set([network.reference])
  for (let before = 0; before < held.size; ) {
    before = held.size
    for (const element of network.elements) {
      if (element.kind === 'transformer' || !isFirm(element)) continue
      const [a, b] = element.between
      if (held.has(a) || held.has(b)) held.add(a).add(b)
    }
  }
  return nodesOf(network).every(node => held.has(node))
}

test(`a general simulator agrees within 1e-9 of the source where all is firmly held`, async () => {
  const simulator = await startSimulator()
  const held = [...TIED_SHAPES, ...RANDOM_SHAPES].map(randomNetwork).filter(isFirmlyHeld)
  let worst = 0
  for (const network of held) {
    const compiled = compileNetwork(network)
    assert(compiled.ok)
    const solution = solveNetwork(compiled.value)
    checkPhysics(network, solution)
    const theirs = await simulator.solve(writeSpiceNetlist(network))
    for (const [node, volts] of theirs)
      worst = Math.max(worst, magnitude(subtract(volts, solution.volts(node))))
  }
  console.log(`${held.length} firmly held networks; worst difference ${worst} V`)
  assert.isAtLeast(held.length, 500)
  assert.isAtMost(worst, OF_SOURCE * 120)
}, 60_000)
