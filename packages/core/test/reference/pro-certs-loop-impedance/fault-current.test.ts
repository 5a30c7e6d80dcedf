import { assert, test } from 'vitest'
import { magnitude } from '../../../src/base/complex.ts'
import { netlist } from '../../engines/circuit/support/netlist.ts'
import { titleOf } from '../../engines/circuit/support/printed.ts'
import { solved } from '../../engines/circuit/support/solve.ts'
import { LOOP } from './cases.ts'

// The impedance is printed to 0.0005 Ω, which is 0.06 A here; the fault itself is 10 µΩ.
const TOLERANCE = 0.1

test(titleOf(LOOP), () => {
  const half = LOOP.ohms / 2
  const solution = solved(
    netlist(`
      source s l n ${LOOP.volts}
      impedance line l f ${half}
      impedance fault f e 1e-5
      impedance earth e n ${half}`),
  )
  assert.isAtMost(Math.abs(magnitude(solution.current('fault')) - LOOP.amps), TOLERANCE)
})
