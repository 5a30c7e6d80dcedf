import { assert, test } from 'vitest'
import { neutralAmps } from '../../engines/circuit/support/legs.ts'
import { titleOf } from '../../engines/circuit/support/printed.ts'
import { CASES } from './cases.ts'

// Half a unit of the last printed digit, 0.005 A, and as much for the ideal sources of the model.
const TOLERANCE = 0.01

for (const each of CASES)
  test(titleOf(each), () => {
    const legs = each.legAmps.map((amps, leg) => ({ amps, degrees: each.legDegrees[leg] ?? 0 }))
    assert.isAtMost(Math.abs(neutralAmps(legs) - each.neutralAmps), TOLERANCE)
  })
