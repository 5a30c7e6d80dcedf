import { assert, test } from 'vitest'
import { magnitude } from '../../../src/base/complex.ts'
import { resistanceBetween } from '../../../src/engines/circuit/resistance-between.ts'
import { netlist } from '../../engines/circuit/support/netlist.ts'
import { titleOf } from '../../engines/circuit/support/printed.ts'
import { solved } from '../../engines/circuit/support/solve.ts'
import { ELEMENT, PAIR } from './cases.ts'

const OHMS = 240 ** 2 / 4500

// Half a unit of the last printed digit of each figure.
test(titleOf(ELEMENT), () => {
  const at = (volts: number) => solved(netlist(`source s l n ${volts}\nimpedance h l n ${OHMS}`))
  assert.isAtMost(Math.abs(magnitude(at(240).current('h')) - ELEMENT.ratedAmps), 0.005)
  assert.isAtMost(Math.abs(magnitude(at(208).current('h')) - ELEMENT.amps), 0.005)
  assert.isAtMost(Math.abs(at(208).power('h').re - ELEMENT.watts), 0.5)
})

test(`${ELEMENT.id}: ohms`, () => {
  const ohms = resistanceBetween(netlist(`impedance h l n ${OHMS}`), 'l', 'n')
  assert(ohms.ok)
  assert.isAtMost(Math.abs(ohms.value - ELEMENT.ohms), 0.05)
})

test(titleOf(PAIR), () => {
  const pair = netlist(`
    contact k l m closed
    impedance p m n ${OHMS}
    impedance q l n ${OHMS}`)
  const read = (closed: ReadonlySet<string>): number => {
    const ohms = resistanceBetween(pair, 'l', 'n', { closedContacts: closed })
    assert(ohms.ok)
    return ohms.value
  }
  assert.isAtMost(Math.abs(read(new Set(['k'])) - PAIR.bothOhms), 0.01)
  assert.isAtMost(Math.abs(read(new Set()) - PAIR.oneOpenOhms), 0.01)
})
