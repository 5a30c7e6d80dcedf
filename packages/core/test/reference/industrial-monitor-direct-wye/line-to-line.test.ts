import { assert, test } from 'vitest'
import { magnitude } from '../../../src/base/complex.ts'
import { loadOhms, netlist } from '../../engines/circuit/support/netlist.ts'
import { titleOf } from '../../engines/circuit/support/printed.ts'
import { distance, solved } from '../../engines/circuit/support/solve.ts'
import { CASES, KILOVOLTAMPERES, LINE_VOLTS } from './cases.ts'

// Currents: the printed 0.01 A. Power: the page takes 208 V for 207.85 V, which is 0.0063 kVA, and
// rounds to 0.005 kVA.
const TOLERANCE = { amps: 0.01, volts: 0.05, kva: 0.0115 }
const LINE = 120 * Math.sqrt(3)
const PAIRS = [
  ['a', 'b'],
  ['b', 'c'],
  ['c', 'a'],
] as const

function wye({
  lineAmps,
  neutralLoadAmps,
}: Pick<(typeof CASES)[number], 'lineAmps' | 'neutralLoadAmps'>) {
  const lines = PAIRS.map(([first, second], index) => {
    const amps = lineAmps[index] ?? 0
    return amps > 0 ? `impedance z${index} ${first} ${second} ${loadOhms(LINE, amps)}` : ''
  })
  const toNeutral = neutralLoadAmps > 0 ? `impedance y a o ${loadOhms(120, neutralLoadAmps)}` : ''
  return solved(
    netlist(`
      source a a n 120
      source b b n 120<-120
      source c c n 120<120
      ${lines.join('\n')}
      ${toNeutral}
      impedance neutral o n 1e-5`),
  )
}

test(titleOf(LINE_VOLTS), () => {
  const solution = wye({ lineAmps: [14, 14, 14], neutralLoadAmps: 0 })
  const volts = distance(solution.volts('a'), solution.volts('b'))
  assert.isAtMost(Math.abs(volts - LINE_VOLTS.volts), TOLERANCE.volts)
})

for (const each of CASES)
  test(titleOf(each), () => {
    const solution = wye(each)
    const amps = ['a', 'b', 'c'].map(leg => magnitude(solution.current(leg)))
    for (const [leg, printed] of each.legAmps.entries())
      assert.isAtMost(Math.abs((amps[leg] ?? Number.NaN) - printed), TOLERANCE.amps)
    const neutral = magnitude(solution.current('neutral'))
    assert.isAtMost(Math.abs(neutral - each.neutralAmps), TOLERANCE.amps)
  })

test(titleOf(KILOVOLTAMPERES), () => {
  const solution = wye({ lineAmps: [14, 14, 14], neutralLoadAmps: 0 })
  const watts = ['z0', 'z1', 'z2'].reduce((sum, id) => sum + solution.power(id).re, 0)
  assert.isAtMost(Math.abs(watts / 1000 - KILOVOLTAMPERES.kva), TOLERANCE.kva)
})
