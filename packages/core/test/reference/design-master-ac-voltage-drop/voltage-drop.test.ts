import { assert, test } from 'vitest'
import { cableDrop } from '../../engines/circuit/support/legs.ts'
import { titleOf } from '../../engines/circuit/support/printed.ts'
import { CASES } from './cases.ts'

// The formula leaves out the drop at a right angle, (I·(X·cos − R·sin))²/2V: 0.1 V for the motor.
const TOLERANCE = 0.15

for (const each of CASES)
  test(titleOf(each), () => {
    const kilofeet = each.feet / 1000
    const drop = cableDrop({
      volts: each.volts,
      amps: each.amps,
      powerFactor: each.powerFactor,
      oneWay: [each.ohmsPerKilofoot * kilofeet, each.reactancePerKilofoot * kilofeet],
    })
    assert.isAtMost(Math.abs(drop - each.dropVolts), TOLERANCE)
  })
