import { assert, test } from 'vitest'
import { cableDrop } from '../../engines/circuit/support/legs.ts'
import { titleOf } from '../../engines/circuit/support/printed.ts'
import { AMPS, CASES, FEET, K, VOLTS } from './cases.ts'

// Half a unit of the last printed digit of volts and of percent.
const TOLERANCE = 0.05

for (const each of CASES)
  test(titleOf(each), () => {
    const oneWayOhms = (K * FEET) / each.circularMils
    const drop = cableDrop({ volts: VOLTS, amps: AMPS, powerFactor: 1, oneWay: [oneWayOhms, 0] })
    assert.isAtMost(Math.abs(drop - each.dropVolts), TOLERANCE)
    assert.isAtMost(Math.abs((100 * drop) / VOLTS - each.dropPercent), TOLERANCE)
  })
