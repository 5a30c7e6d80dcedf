import { assert, test } from 'vitest'
import { magnitude } from '../../../src/base/complex.ts'
import { resistanceBetween } from '../../../src/engines/circuit/resistance-between.ts'
import { netlist } from '../../engines/circuit/support/netlist.ts'
import { titleOf } from '../../engines/circuit/support/printed.ts'
import { distance, solved } from '../../engines/circuit/support/solve.ts'
import { CASES } from './cases.ts'

// Half a unit of the last printed digit; an open contact of 1 GΩ moves none of them.
const TOLERANCE = { volts: 0.1, amps: 1e-4, watts: 0.1, ohms: 0.1 }

for (const each of CASES) {
  const [first, second] = each.ratedWatts.map(watts => 120 ** 2 / watts)
  const network = netlist(`
    source s1 l1 n 120
    source s2 l2 n -120
    impedance first l1 m ${first}
    impedance second m l2 ${second}
    contact neutral m n open`)

  test(titleOf(each), () => {
    const open = solved(network)
    const isNear = (value: number, printed: number, allowed: number): void =>
      assert.isAtMost(Math.abs(value - printed), allowed)
    isNear(magnitude(open.current('first')), each.amps, TOLERANCE.amps)
    isNear(distance(open.volts('l1'), open.volts('m')), each.volts[0], TOLERANCE.volts)
    isNear(distance(open.volts('m'), open.volts('l2')), each.volts[1], TOLERANCE.volts)
    isNear(open.power('first').re, each.actualWatts[0], TOLERANCE.watts)
    isNear(open.power('second').re, each.actualWatts[1], TOLERANCE.watts)
    const ohms = resistanceBetween(network, 'l1', 'm')
    assert(ohms.ok)
    isNear(ohms.value, each.ohms[0], TOLERANCE.ohms)
  })

  test(`${each.id}: with the neutral closed both get their 120 V`, () => {
    const closed = solved(network, new Set(['neutral']))
    assert.isAtMost(Math.abs(closed.power('first').re - each.ratedWatts[0]), 5)
    assert.isAtMost(Math.abs(closed.power('second').re - each.ratedWatts[1]), 5)
  })
}
