import { assert, test } from 'vitest'
import { neutralAmps } from '../../engines/circuit/support/legs.ts'
import { titleOf } from '../../engines/circuit/support/printed.ts'
import { CASES } from './cases.ts'

// 0.01 A: ideal sources and conductors are 10 µΩ in the model, and the figures have 5 digits.
const TOLERANCE = 0.01
const DEGREES = [0, -120, 120]

for (const each of CASES)
  test(titleOf(each), () => {
    const legs = each.legAmps
      .map((amps, leg) => ({ amps, degrees: DEGREES[leg] ?? 0 }))
      .filter(({ amps }) => amps > 0)
    assert.isAtMost(Math.abs(neutralAmps(legs) - each.neutralAmps), TOLERANCE)
  })
