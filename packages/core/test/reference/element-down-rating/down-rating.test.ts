import { assert, test } from 'vitest'
import { magnitude } from '../../../src/base/complex.ts'
import { resistanceBetween } from '../../../src/engines/circuit/resistance-between.ts'
import { netlist } from '../../engines/circuit/support/netlist.ts'
import { titleOf } from '../../engines/circuit/support/printed.ts'
import { solved } from '../../engines/circuit/support/solve.ts'
import { DOWN_RATED } from './cases.ts'

// Half a unit of the last printed digit of each figure.
test(titleOf(DOWN_RATED), () => {
  const network = netlist(`source s l n 208\nimpedance h l n ${240 ** 2 / 5500}`)
  const solution = solved(network)
  const watts = solution.power('h').re
  assert.isAtMost(Math.abs(watts - DOWN_RATED.watts), 0.5)
  assert.isAtMost(Math.abs(watts / 55 - DOWN_RATED.percent), 0.0005)
  assert.isAtMost(Math.abs(magnitude(solution.current('h')) - DOWN_RATED.amps), 0.005)
  const ohms = resistanceBetween(network, 'l', 'n')
  assert(ohms.ok)
  assert.isAtMost(Math.abs(ohms.value - DOWN_RATED.ohms), 0.005)
})
