import { assert, test } from 'vitest'
import { neutralAmps } from '../../engines/circuit/support/legs.ts'
import { titleOf } from '../../engines/circuit/support/printed.ts'
import { CASES } from './cases.ts'

// Half a unit of the last printed digit, and as much for the ideal sources of the model.
const TOLERANCE = 0.01

for (const each of CASES)
  test(titleOf(each), () => {
    const amps = neutralAmps(each.legs)
    assert.isAtMost(Math.abs(amps - each.neutralAmps), TOLERANCE)
    if (each.neutralAmps !== each.wrongAmps) assert.isAbove(Math.abs(amps - each.wrongAmps), 1)
  })
