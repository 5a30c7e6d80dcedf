import { assert, test } from 'vitest'
import { netlist } from '../../engines/circuit/support/netlist.ts'
import { titleOf } from '../../engines/circuit/support/printed.ts'
import { solved } from '../../engines/circuit/support/solve.ts'
import { CASES } from './cases.ts'

const RATED_WATTS = 1000

for (const each of CASES)
  test(titleOf(each), () => {
    const ohms = each.ratedVolts ** 2 / RATED_WATTS
    const solution = solved(netlist(`source s l n ${each.volts}\nimpedance h l n ${ohms}`))
    const percent = (100 * solution.power('h').re) / RATED_WATTS
    assert.isAtMost(Math.abs(percent - each.percent), each.tolerancePercent)
  })
