import { assert, test } from 'vitest'
import { cableDrop } from '../../engines/circuit/support/legs.ts'
import { titleOf } from '../../engines/circuit/support/printed.ts'
import { CASES } from './cases.ts'

// Half a unit of the last printed digit.
const TOLERANCE = 0.005

for (const each of CASES)
  test(titleOf(each), () => {
    const oneWayOhms = (each.millivolts * each.metres) / 2000
    const drop = cableDrop({ volts: 230, amps: each.amps, powerFactor: 1, oneWay: [oneWayOhms, 0] })
    assert.isAtMost(Math.abs(drop - each.dropVolts), TOLERANCE)
  })
