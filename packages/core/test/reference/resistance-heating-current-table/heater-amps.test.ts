import { assert, test } from 'vitest'
import { magnitude } from '../../../src/base/complex.ts'
import { netlist } from '../../engines/circuit/support/netlist.ts'
import { titleOf } from '../../engines/circuit/support/printed.ts'
import { solved } from '../../engines/circuit/support/solve.ts'
import { TABLE } from './cases.ts'

// The table rounds, sometimes up: one unit of its last digit either way.
const TOLERANCE = 0.1

for (const volts of [120, 208, 240] as const)
  for (const [index, kilowatts] of TABLE.kilowatts.entries())
    test(`${titleOf(TABLE)}: ${kilowatts} kW at ${volts} V`, () => {
      const ohms = volts ** 2 / (1000 * kilowatts)
      const solution = solved(netlist(`source s l n ${volts}\nimpedance h l n ${ohms}`))
      const printed = TABLE.ampsAtVolts[volts][index] ?? Number.NaN
      assert.isAtMost(Math.abs(magnitude(solution.current('h')) - printed), TOLERANCE)
    })
